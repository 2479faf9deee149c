#pragma once
#include "core/shift/session.h"

#include <filesystem>

namespace panside {

// A session on a journal that cannot be opened to write now, for the reason `why`. The fire burns all the same: what
// can be read of the journal is gone on from, the night is held in memory, and the journal is tried again by itself.
struct TakenUpWaiting {
    Session session;
    std::optional<Instant> latest; // the journal's last fact, as far as it can be read
};
TakenUpWaiting takeUpWaiting(const std::filesystem::path& place, const JournalError& why);

} // namespace panside
