#include "core/shift/house_ledger.h"

#include "core/journal/day_books.h"
#include "core/journal/kept_figures.h"
#include "core/ledger/draw_density.h"

#include <algorithm>
#include <ctime>

namespace panside {
namespace {

constexpr Duration levelEvery{10}, panEvery{2}; // readings closer than that tell the ledger nothing more

// Keeps every fact but readings that come thick.
class Thinner {
public:
    explicit Thinner(Duration every) : every_{every} {}
    bool keeps(const Fact& fact) {
        const auto* reading = std::get_if<Reading>(&fact.what);
        if (!reading)
            return true;
        auto& last = last_[static_cast<std::size_t>(reading->series)];
        if (last && secondsBetween(*last, fact.at) < every_.count())
            return false;
        last = fact.at;
        return true;
    }

private:
    Duration every_;
    std::array<std::optional<Instant>, seriesCount> last_{};
};

bool isFeed(const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    return !reading || reading->series == Series::tank_level || reading->series == Series::feed_flow;
}

// Takes a shift's facts one by one, by time.
class ShiftReader {
public:
    explicit ShiftReader(ShiftId id) { shift_.id = id; }
    void take(FactId number, const Fact& fact) {
        const auto* reading = std::get_if<Reading>(&fact.what);
        boiled_ |= reading && reading->series == Series::syrup_pan;
        if (pan_.keeps(fact))
            watch_.take(fact);
        if (isFeed(fact) && level_.keeps(fact))
            shift_.facts.push_back({number, fact});
    }
    HouseShift done() {
        if (boiled_)
            for (const auto& found : watch_.found())
                shift_.densities.emplace_back(found.closed, found.density);
        return std::move(shift_);
    }

private:
    HouseShift shift_;
    DrawDensities watch_;
    Thinner pan_{panEvery}, level_{levelEvery};
    bool boiled_ = false;
};

std::optional<HouseShift> shiftIn(const Journal& journal, ShiftId id, const std::function<bool()>& stop = {}) {
    ShiftReader reader{id};
    bool stopped = false;
    int count = 0;
    journal.visit(id, [&](FactId number, const Fact& fact) {
        reader.take(number, fact);
        stopped = ++count % 1024 == 0 && stop && stop();
        return !stopped;
    });
    return stopped ? std::nullopt : std::optional{reader.done()};
}

HouseLedger::Parts partsOf(const Journal* journal) {
    HouseLedger::Parts parts;
    if (!journal)
        return parts;
    parts.book = std::make_shared<const std::vector<Boil::Entry>>(bookFacts(*journal));
    for (const Shift& shift : journal->shifts())
        parts.shifts.push_back(std::make_shared<const HouseShift>(shiftIn(*journal, shift.id).value()));
    return parts;
}

} // namespace

std::chrono::year_month_day localDate(Instant at) {
    const std::time_t seconds = std::chrono::floor<std::chrono::seconds>(at).time_since_epoch().count();
    std::tm local{};
    localtime_r(&seconds, &local);
    return std::chrono::year{local.tm_year + 1900} / (local.tm_mon + 1) / local.tm_mday;
}

HouseShift houseShift(ShiftId id, const std::vector<Boil::Entry>& facts) {
    ShiftReader reader{id};
    for (const auto& [number, fact] : facts)
        reader.take(number, fact);
    return reader.done();
}

HouseLedger::HouseLedger(const Journal* journal, std::vector<Fact> more)
    : HouseLedger{partsOf(journal), std::move(more)} {}

HouseLedger::HouseLedger(Parts parts, std::vector<Fact> more) : parts_{std::move(parts)} {
    for (Fact& fact : more)
        more_.push_back({0, std::move(fact)});
    fold();
}

void HouseLedger::fold() {
    std::vector<std::span<const Boil::Entry>> books;
    if (parts_.book)
        books.emplace_back(*parts_.book);
    books.emplace_back(more_);
    std::vector<LedgerShift> shifts;
    for (const auto& shift : parts_.shifts)
        shifts.push_back({shift->id, shift->facts});
    LedgerInput input = ledgerInput(books, shifts);
    rows_ = input.rows;
    input.dateOf = localDate;
    input.densityOf = [kept = parts_.shifts](int shift, Instant closed) -> std::optional<DrawDensity> {
        for (const auto& [at, density] : kept[static_cast<std::size_t>(shift)]->densities)
            if (at == closed)
                return density;
        return std::nullopt;
    };
    ledger_ = std::make_unique<Ledger>(std::move(input));
}

std::optional<std::size_t> HouseLedger::moreOf(std::size_t row) const {
    const auto* fact = rows_[row].fact;
    if (more_.empty())
        return std::nullopt;
    for (auto at = std::lower_bound(more_.begin(), more_.end(), fact->at,
                                    [](const Boil::Entry&entry, Instant t) { return entry.fact.at < t; });
         at != more_.end() && at->fact.at == fact->at; ++at)
        if (&at->fact == fact)
            return static_cast<std::size_t>(at - more_.begin());
    return std::nullopt;
}

HouseLedger HouseLedger::with(const std::vector<Fact>& facts) const {
    std::vector<Fact> more;
    for (const auto& entry : more_)
        more.push_back(entry.fact);
    more.insert(more.end(), facts.begin(), facts.end());
    std::stable_sort(more.begin(), more.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    return {parts_, std::move(more)};
}

BookKnown HouseLedger::known() const {
    BookKnown known;
    known.dateOf = localDate;
    for (const LedgerRow& row : rows_)
        known.take(*row.fact);
    return known;
}

std::shared_ptr<const HouseLedger> HouseReader::read(const Journal& journal, std::vector<Fact> more,
                                                     const std::function<bool()>& stop) {
    HouseLedger::Parts parts;
    parts.book = std::make_shared<const std::vector<Boil::Entry>>(bookFacts(journal));
    std::map<ShiftId, Read> now;
    for (const Shift& shift : journal.shifts()) {
        Read& one = now[shift.id];
        one.seen = factsSeen(journal, shift.id);
        const auto before = read_.find(shift.id);
        if (before != read_.end() && before->second.seen == one.seen) {
            one.shift = before->second.shift;
        } else {
            auto read = shiftIn(journal, shift.id, stop);
            if (!read)
                return nullptr;
            one.shift = std::make_shared<const HouseShift>(std::move(*read));
            read_[shift.id] = one; // also where the next one is stopped
        }
        parts.shifts.push_back(one.shift);
    }
    read_ = std::move(now);
    return std::make_shared<const HouseLedger>(std::move(parts), std::move(more));
}

BookKnown bookKnown(const Journal* journal) {
    BookKnown known;
    known.dateOf = localDate;
    if (!journal)
        return known;
    for (const auto& entry : bookFacts(*journal))
        known.take(entry.fact);
    for (const Shift& shift : journal->shifts())
        for (const auto& entry : journal->deeds(shift.id))
            known.take(entry.fact);
    return known;
}

} // namespace panside
