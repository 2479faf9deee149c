#pragma once
#include "core/journal/journal.h"

namespace panside {

struct Salvaged {
    struct PartlyLost {
        ShiftId shift;
        std::int64_t facts = 0;     // altered: their sum is not what was written
        std::int64_t readings = 0;  // in blocks that were altered
        std::int64_t unreached = 0; // facts and readings that are gone, or on pages that cannot be read
        std::int64_t unproven = 0;  // withdrawals left out, and entries in the list of shifts, with another sum
    };
    std::vector<ShiftId> whole;           // shifts of which nothing is missing
    std::vector<PartlyLost> partly;       // shifts in the new journal of which something is
    std::int64_t facts = 0, readings = 0; // saved
    std::int64_t settings = 0;            // for shifts to come, left out since they were altered
    bool listLost = false;                // the list of shifts itself was hurt: there may have been more
};

// Saves all that can be read of a damaged journal into a new one; the damaged file is only read. `into` must not exist
// yet. Every fact is checked against the sum beside it: what was altered counts as lost, not as read.
Salvaged salvage(const std::filesystem::path& damaged, const std::filesystem::path& into);
// English: which shifts were saved and what was lost of each.
std::string sentence(const Salvaged& salvaged);

} // namespace panside
