#pragma once
// The rows of day books and shifts that a test holds, put together as the console does it.
#include "core/ledger/ledger.h"

#include <utility>
#include <vector>

namespace panside {

inline LedgerInput ledgerInput(const std::vector<std::vector<Boil::Entry>>& books,
                               const std::vector<std::pair<Instant, std::vector<Boil::Entry>>>& shifts) {
    const std::vector<std::span<const Boil::Entry>> rowsOfBooks(books.begin(), books.end());
    std::vector<LedgerShift> rowsOfShifts;
    for (const auto& [id, facts] : shifts)
        rowsOfShifts.push_back({id, facts});
    return ledgerInput(std::span{rowsOfBooks}, std::span<const LedgerShift>{rowsOfShifts});
}

} // namespace panside
