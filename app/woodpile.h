#pragma once
// What the shifts of a journal burnt of the woodpile since it was measured.
#include "core/journal/journal.h"

#include <optional>

namespace panside {

// Full cords of the weighed loads after `since` in every shift but the one that is shown, which counts its own: about a
// millisecond a night. Throws JournalError.
double cordsBurntBeside(const Journal& journal, Instant since, std::optional<ShiftId> shown);

} // namespace panside
