#pragma once
// What the shifts of a journal burnt of the woodpile since it was measured.
#include "core/boil/boil.h"
#include "core/boil/cords.h"
#include "core/journal/journal.h"

#include <optional>

namespace panside {

// Full cords of the weighed loads after `since` in every shift but the one that is shown, which counts its own: some
// milliseconds a night. Throws JournalError.
double cordsBurntBeside(const Journal& journal, Instant since, std::optional<ShiftId> shown);

// The same of one shift that grows, asked for again and again: only the facts that came since are looked at, all of
// them where an earlier one has changed.
class CordsOfShift {
public:
    explicit CordsOfShift(Instant since) : since_{since}, sum_{since} {}
    double of(const Boil& boil); // that has been folded

private:
    Instant since_;
    CordSum sum_;
    std::size_t taken_ = 0;
    std::uint64_t rewritten_ = 0;
};

} // namespace panside
