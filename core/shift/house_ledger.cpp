#include "core/shift/house_ledger.h"

#include "core/journal/day_books.h"
#include "core/journal/hash.h"
#include "core/journal/kept_figures.h"
#include "core/ledger/draw_density.h"
#include "core/season/shift_account.h"

#include <algorithm>
#include <ctime>
#include <fmt/format.h>

namespace panside {
namespace {

constexpr Duration levelEvery{10}, panEvery{2}; // readings closer than that tell the ledger nothing more
// Keeps every fact but readings that come thick. Two close together are kept: a tank read, filled and read again.
class Thinner {
public:
    explicit Thinner(Duration every) : every_{every} {}
    bool keeps(const Fact& fact) {
        const auto* reading = std::get_if<Reading>(&fact.what);
        if (!reading)
            return true;
        Seen& seen = seen_[static_cast<std::size_t>(reading->series)];
        const auto isClose = [&](const std::optional<Instant>& at) {
            return at && secondsBetween(*at, fact.at) < every_.count();
        };
        seen.close = isClose(seen.last) ? seen.close + 1 : 0;
        seen.last = fact.at;
        if (seen.close > 1 && isClose(seen.kept))
            return false;
        seen.kept = fact.at;
        return true;
    }

private:
    struct Seen {
        std::optional<Instant> last, kept;
        int close = 0; // readings in a row, each soon after the one before
    };
    Duration every_;
    std::array<Seen, seriesCount> seen_{};
};

// What the engine found of a shift's draws and checks is kept in the journal: reading a season anew would take it a
// second a night. Another engine may find something else, and the account of a shift says which one it is.
constexpr const char* drawFigures = "draws";
constexpr int drawForm = accountForm * 1000 + drawDensityForm;

double microsOf(Instant at) { return static_cast<double>(at.time_since_epoch().count()); }
Instant instantOf(double micros) { return Instant{std::chrono::microseconds{static_cast<std::int64_t>(micros)}}; }

Figures figuresOf(const HouseShift& shift) {
    Figures figures;
    for (std::size_t i = 0; i < shift.densities.size(); ++i) {
        const std::string which = std::to_string(i);
        const auto& [closed, density] = shift.densities[i];
        figures["at " + which] = microsOf(closed);
        figures["sugar " + which] = density.sugar.si();
        figures["sd " + which] = density.sd.si();
    }
    for (std::size_t i = 0; i < shift.checks.size(); ++i) {
        const std::string which = std::to_string(i);
        const auto& [at, checked] = shift.checks[i];
        figures["checked " + which] = microsOf(at);
        figures["apart " + which] = checked.apart.kelvin();
        figures["apart sd " + which] = checked.sd.kelvin();
    }
    return figures;
}

// Three figures of one number each, from 0 on; those of which one is missing end it.
template <class Each>
void forEachOf(const Figures& figures, std::string_view first, std::string_view second, std::string_view third,
               Each each) {
    for (int i = 0;; ++i) {
        const auto figure = [&](std::string_view name) { return figures.find(fmt::format("{} {}", name, i)); };
        const auto a = figure(first), b = figure(second), c = figure(third);
        if (a == figures.end() || b == figures.end() || c == figures.end())
            return;
        each(a->second, b->second, c->second);
    }
}

void fillFrom(const Figures& figures, HouseShift& shift) {
    forEachOf(figures, "at", "sugar", "sd", [&](double at, double sugar, double sd) {
        shift.densities.emplace_back(instantOf(at), DrawDensity{Brix::ofSi(sugar), Brix::ofSi(sd)});
    });
    forEachOf(figures, "checked", "apart", "apart sd", [&](double at, double apart, double sd) {
        shift.checks.emplace_back(instantOf(at),
                                  CheckApart{TemperatureDifference::kelvin(apart), TemperatureDifference::kelvin(sd)});
    });
}

const Figures* figuresAt(const std::map<ShiftId, Figures>& kept, ShiftId shift) {
    const auto found = kept.find(shift);
    return found == kept.end() ? nullptr : &found->second;
}

template <class What>
std::optional<What> foundAt(const std::vector<std::pair<Instant, What>>& all, Instant wanted) {
    for (const auto& [at, what] : all)
        if (at == wanted)
            return what;
    return std::nullopt;
}

} // namespace

// Takes a shift's facts one by one, by time. Of a journal it reads on where it ended, so that of a shift that goes on
// the engine works out only what is new; from the beginning where something came in between or was taken back.
class HouseShiftReader {
public:
    // `kept`: what was found of it before; none: the engine works it out.
    explicit HouseShiftReader(ShiftId id, const Figures* kept = nullptr) : worksOut_{!kept} {
        shift_.id = id;
        if (kept)
            fillFrom(*kept, shift_);
    }
    // False: told to stop.
    bool read(const Journal& journal, const std::function<bool()>& stop = {}) {
        if (readOn(journal, stop))
            return !stopped_;
        *this = HouseShiftReader{shift_.id};
        readOn(journal, stop);
        return !stopped_;
    }
    void add(FactId number, const Fact& fact) {
        const auto* reading = std::get_if<Reading>(&fact.what);
        boiled_ |= reading && reading->series == Series::syrup_pan;
        if (worksOut_ && pan_.keeps(fact))
            watch_.add(fact);
        if (isOfTheHouse(fact) && level_.keeps(fact))
            shift_.facts.push_back({number, fact});
    }
    HouseShift found() const {
        HouseShift shift = shift_;
        if (worksOut_ && boiled_) {
            for (const auto& draw : watch_.found())
                shift.densities.emplace_back(draw.closed, draw.density);
            for (const auto& checked : watch_.checked())
                shift.checks.emplace_back(checked.at, checked.apart);
        }
        return shift;
    }

private:
    // Which facts were read, in their order.
    struct Read {
        std::size_t count = 0;
        std::uint64_t sum = 0;
        void add(FactId number, Instant at) {
            ++count;
            sum = mixed(sum ^ static_cast<std::uint64_t>(number));
            sum = mixed(sum ^ static_cast<std::uint64_t>(at.time_since_epoch().count()));
        }
        bool operator==(const Read&) const = default;
    };
    // False: what was read before is not what stands there now.
    bool readOn(const Journal& journal, const std::function<bool()>& stop) {
        stopped_ = false;
        Read now;
        bool same = true;
        journal.visit(shift_.id, [&](FactId number, const Fact& fact) {
            const bool isNew = now.count >= read_.count;
            now.add(number, fact.at);
            if (isNew) {
                add(number, fact);
                read_ = now;
                stopped_ = now.count % 1024 == 0 && stop && stop();
            } else {
                same = now.count < read_.count || now == read_;
            }
            return same && !stopped_;
        });
        return same && now.count >= read_.count;
    }

    HouseShift shift_;
    DrawDensities watch_;
    Thinner pan_{panEvery}, level_{levelEvery};
    Read read_;
    bool worksOut_, boiled_ = false, stopped_ = false;
};

namespace {

HouseLedger::Parts partsOf(const Journal* journal) {
    HouseLedger::Parts parts;
    if (!journal)
        return parts;
    parts.book = std::make_shared<const std::vector<Boil::Entry>>(bookFacts(*journal));
    const auto kept = keptFiguresOf(*journal, drawFigures, drawForm);
    for (const Shift& shift : journal->shifts()) {
        HouseShiftReader reader{shift.id, figuresAt(kept, shift.id)};
        reader.read(*journal);
        parts.shifts.push_back(std::make_shared<const HouseShift>(reader.found()));
    }
    return parts;
}

} // namespace

// Of readings the feed tank's, and the gauge of the press.
bool isOfTheHouse(const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    return !reading || reading->series == Series::tank_level || reading->series == Series::feed_flow ||
           reading->series == Series::filter_pressure;
}

std::chrono::year_month_day localDate(Instant at) {
    const std::time_t seconds = std::chrono::floor<std::chrono::seconds>(at).time_since_epoch().count();
    std::tm local{};
    localtime_r(&seconds, &local);
    return std::chrono::year{local.tm_year + 1900} / (local.tm_mon + 1) / local.tm_mday;
}

HouseShift houseShift(ShiftId id, const Facts& facts) {
    HouseShiftReader reader{id};
    for (const auto& [number, fact] : facts)
        reader.add(number, fact);
    return reader.found();
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
    input.densityOf = [kept = parts_.shifts](int shift, Instant closed) {
        return foundAt(kept[static_cast<std::size_t>(shift)]->densities, closed);
    };
    input.apartOf = [kept = parts_.shifts](int shift, Instant checked) {
        return foundAt(kept[static_cast<std::size_t>(shift)]->checks, checked);
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
    std::ranges::stable_sort(more, {}, &Fact::at);
    return {parts_, std::move(more)};
}

BookKnown HouseLedger::known() const {
    BookKnown known;
    known.dateOf = localDate;
    for (const LedgerRow& row : rows_)
        known.add(*row.fact);
    return known;
}

std::shared_ptr<const HouseLedger> HouseReader::read(Journal& journal, std::vector<Fact> more,
                                                     const std::function<bool()>& stop) {
    HouseLedger::Parts parts;
    parts.book = std::make_shared<const std::vector<Boil::Entry>>(bookFacts(journal));
    std::map<ShiftId, Read> now;
    const auto kept = keptFiguresOf(journal, drawFigures, drawForm);
    for (const Shift& shift : journal.shifts()) {
        Read& one = now[shift.id];
        one.seen = factsSeen(journal, shift.id);
        const auto before = read_.find(shift.id);
        if (before != read_.end() && before->second.seen == one.seen) {
            one.shift = before->second.shift;
        } else {
            const Figures* known = figuresAt(kept, shift.id);
            one.reader = before != read_.end() && before->second.reader
                             ? before->second.reader
                             : std::make_shared<HouseShiftReader>(shift.id, known);
            if (!one.reader->read(journal, stop))
                return nullptr;
            one.shift = std::make_shared<const HouseShift>(one.reader->found());
            if (!known && !shift.open)
                keepFiguresOf(journal, shift.id, drawFigures, drawForm, one.seen, figuresOf(*one.shift));
            if (known || !shift.open)
                one.reader.reset();
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
        known.add(entry.fact);
    for (const Shift& shift : journal->shifts())
        for (const auto& entry : journal->deeds(shift.id))
            known.add(entry.fact);
    return known;
}

} // namespace panside
