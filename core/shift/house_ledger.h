#pragma once
// The ledger of a journal: its day books and all its shifts, folded together.
#include "core/journal/journal.h"
#include "core/ledger/book_check.h"
#include "core/ledger/ledger.h"

#include <functional>
#include <memory>

namespace panside {

// The day by the clock of this machine's zone.
std::chrono::year_month_day localDate(Instant at);

// Is it one that the ledger reads? A mark may stand at any of them.
bool isOfTheHouse(const Fact& fact);

// What the ledger reads of one shift: its facts without the readings that tell it nothing, and what the boil engine
// knew of its draws.
struct HouseShift {
    ShiftId id{};
    std::vector<Boil::Entry> facts;
    std::vector<std::pair<Instant, DrawDensity>> densities; // by when the draw was closed
    std::vector<std::pair<Instant, CheckApart>> checks;     // hydrometer against physics
};
HouseShift houseShift(ShiftId id, const Facts& facts);

// Holds the facts that its ledger points to.
class HouseLedger {
public:
    struct Parts {
        std::shared_ptr<const std::vector<Boil::Entry>> book; // by time; none: there is none
        std::vector<std::shared_ptr<const HouseShift>> shifts;
    };
    // Of a journal; none: of the day book alone. `more` is a day book that is not in it (yet), by time.
    HouseLedger(const Journal* journal, std::vector<Fact> more = {});
    HouseLedger(Parts parts, std::vector<Fact> more);

    const Ledger& ledger() const { return *ledger_; }
    const std::vector<LedgerRow>& rows() const { return rows_; }
    const Parts& parts() const { return parts_; }
    const std::vector<Boil::Entry>& more() const { return more_; }
    // The row of `more` that a row of the ledger is; nullopt for one of the journal.
    std::optional<std::size_t> moreOf(std::size_t row) const;
    // The same house with these rows besides: what they would do to it.
    HouseLedger with(const std::vector<Fact>& facts) const;
    // Names and lots that there are.
    BookKnown known() const;

private:
    void fold();
    Parts parts_;
    std::vector<Boil::Entry> more_;
    std::vector<LedgerRow> rows_;
    std::unique_ptr<Ledger> ledger_;
};

class HouseShiftReader;

// Reads a journal again and again, and remembers of each shift what it read, so that only what has changed is read
// anew. One thread at a time.
class HouseReader {
public:
    // `more`: rows that are not in the journal. nullptr: told to stop. Where the journal may be written, what the
    // engine found of draws is kept in it, so that the next reader need not ask it again. Throws JournalError.
    std::shared_ptr<const HouseLedger> read(Journal& journal, std::vector<Fact> more,
                                            const std::function<bool()>& stop = {});

private:
    struct Read {
        FactId seen = 0; // what factsSeen gave before
        std::shared_ptr<const HouseShift> shift;
        std::shared_ptr<HouseShiftReader> reader; // of a shift that goes on
    };
    std::map<ShiftId, Read> read_;
};

// What a new day book is judged against: names and lots of the journal's books and shifts.
BookKnown bookKnown(const Journal* journal);

} // namespace panside
