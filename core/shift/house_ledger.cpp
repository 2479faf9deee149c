#include "core/shift/house_ledger.h"

#include "core/journal/day_books.h"
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

} // namespace

std::chrono::year_month_day localDate(Instant at) {
    const std::time_t seconds = std::chrono::floor<std::chrono::seconds>(at).time_since_epoch().count();
    std::tm local{};
    localtime_r(&seconds, &local);
    return std::chrono::year{local.tm_year + 1900} / (local.tm_mon + 1) / local.tm_mday;
}

void HouseLedger::readShifts(const Journal& journal) {
    for (const Shift& shift : journal.shifts()) {
        auto& [id, facts] = shifts_.emplace_back(shift.id, std::vector<Boil::Entry>{});
        auto& densities = densities_.emplace_back();
        DrawDensities watch;
        Thinner pan{panEvery}, level{levelEvery};
        bool boiled = false;
        journal.visit(shift.id, [&](FactId number, const Fact& fact) {
            const auto* reading = std::get_if<Reading>(&fact.what);
            boiled |= reading && reading->series == Series::syrup_pan;
            if (pan.keeps(fact))
                watch.take(fact);
            if (isFeed(fact) && level.keeps(fact))
                facts.push_back({number, fact});
            return true;
        });
        if (boiled)
            for (const auto& found : watch.found())
                densities.emplace_back(found.closed, found.density);
    }
}

HouseLedger::HouseLedger(const Journal* journal, std::vector<Fact> more) {
    if (journal) {
        books_.push_back(bookFacts(*journal));
        readShifts(*journal);
    }
    auto& last = books_.emplace_back();
    for (Fact& fact : more)
        last.push_back({0, std::move(fact)});
    LedgerInput input = ledgerInput(books_, shifts_);
    rows_ = input.rows;
    input.dateOf = localDate;
    input.densityOf = [this](int shift, Instant closed) -> std::optional<DrawDensity> {
        for (const auto& [at, density] : densities_[static_cast<std::size_t>(shift)])
            if (at == closed)
                return density;
        return std::nullopt;
    };
    ledger_ = std::make_unique<Ledger>(std::move(input));
}

std::optional<std::size_t> HouseLedger::moreOf(std::size_t row) const {
    const auto& more = books_.back();
    const auto* fact = rows_[row].fact;
    if (more.empty())
        return std::nullopt;
    for (auto at = std::lower_bound(more.begin(), more.end(), fact->at,
                                    [](const Boil::Entry&entry, Instant t) { return entry.fact.at < t; });
         at != more.end() && at->fact.at == fact->at; ++at)
        if (&at->fact == fact)
            return static_cast<std::size_t>(at - more.begin());
    return std::nullopt;
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
