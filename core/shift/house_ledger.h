#pragma once
// The ledger of a journal: its day books and all its shifts, folded together.
#include "core/journal/journal.h"
#include "core/ledger/book_check.h"
#include "core/ledger/ledger.h"

#include <memory>

namespace panside {

// The day by the clock of this machine's zone.
std::chrono::year_month_day localDate(Instant at);

// Holds the facts that its ledger points to.
class HouseLedger {
public:
    // Of a journal; none: of the day book alone. `more` is a day book that is not in it (yet), by time.
    HouseLedger(const Journal* journal, std::vector<Fact> more = {});

    const Ledger& ledger() const { return *ledger_; }
    const std::vector<LedgerRow>& rows() const { return rows_; }
    // The row of `more` that a row of the ledger is; nullopt for one of the journal.
    std::optional<std::size_t> moreOf(std::size_t row) const;

private:
    void readShifts(const Journal& journal);
    std::vector<std::vector<Boil::Entry>> books_;
    std::vector<std::pair<Instant, std::vector<Boil::Entry>>> shifts_;
    std::vector<std::vector<std::pair<Instant, DrawDensity>>> densities_; // by shift
    std::vector<LedgerRow> rows_;
    std::unique_ptr<Ledger> ledger_;
};

// What a new day book is judged against: names and lots of the journal's books and shifts.
BookKnown bookKnown(const Journal* journal);

} // namespace panside
