#include "core/ledger/ledger.h"

#include "core/ledger/book_rows.h"
#include "core/ledger/fold.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

std::chrono::year_month_day utcDate(Instant at) {
    return std::chrono::year_month_day{std::chrono::floor<std::chrono::days>(at)};
}

} // namespace

Volume Lot::volume() const {
    Volume all;
    for (const LotSize& size : sizes)
        all += size.size * static_cast<double>(size.made);
    return all;
}
double Lot::sugar() const {
    double all = 0;
    for (const LotSize& size : sizes)
        all += size.sugar;
    return all;
}

Ledger::Fold::Fold(LedgerInput given) : in{std::move(given)} {}

void Ledger::Fold::mark(MarkKind kind, std::string name, std::optional<double> amount, std::optional<double> limit,
                        std::optional<Instant> before, std::string more) {
    marks.push_back({kind, line, std::move(name), amount, limit, before, std::move(more)});
}

void Ledger::Fold::markTaint(const std::string& name, const Taint& taint) {
    if (taint.milk)
        mark(MarkKind::milk, name, {}, {}, {}, taint.milkOf);
    if (taint.lead)
        mark(MarkKind::lead, name, {}, leadLimit(tables.law()).partsPerBillion);
    if (taint.ropy)
        mark(MarkKind::ropy, name);
}

void Ledger::Fold::set(const Set& set) {
    tables.settings.put(set);
    switch (set.key) {
    case Setting::place: {
        tables.place = static_cast<std::size_t>(set.si);
        const PlaceLaw& law = allPlaces()[*tables.place];
        tables.least = law.least;
        tables.most = law.most.value_or(Brix::degrees(68.9));
        break;
    }
    case Setting::legal_minimum:
        leastSet = Brix::ofSi(set.si);
        break;
    case Setting::too_heavy:
        mostSet = Brix::ofSi(set.si);
        break;
    case Setting::capped_least:
        tables.cappedLeast = Temperature::kelvin(set.si);
        break;
    case Setting::lot_scheme:
        tables.lotScheme = set.text;
        break;
    default:
        break;
    }
}

// What must be known of all rows before the first is folded.
void Ledger::Fold::prepare() {
    aids.resize(in.shifts.size());
    ends.assign(in.shifts.size(), SIZE_MAX);
    nightOf.assign(in.shifts.size(), -1);
    for (std::size_t i = 0; i < in.rows.size(); ++i) {
        const auto& [fact, shift, id] = in.rows[i];
        if (shift >= 0)
            ends[static_cast<std::size_t>(shift)] = i;
        const auto* day = std::get_if<DayRow>(&fact->what);
        const auto* draw = std::get_if<DrawClosed>(&fact->what);
        press.told |= day && day->deed == Deed::press_on;
        if ((!day || day->deed != Deed::vessel) && (!draw || draw->to.empty()))
            continue;
        // Whoever is named anywhere is known from the first row on: a row written in the wrong order moves nothing.
        const std::string_view name = day ? day->text(Key::name) : std::string_view{draw->to};
        const auto [at, fresh] = names.emplace(nameKey(name), vessels.size());
        if (fresh) {
            vessels.emplace_back();
            vessels.back().name = name;
        }
        if (day && day->text(Key::kind) == "feed")
            feedTank.first(name);
        if (day && day->of(Key::kind) && vessels[at->second].kind == VesselKind::unknown)
            vessels[at->second].kind = vesselKindNamed(day->text(Key::kind));
    }
    if (!feedTank.key().empty())
        feedVessel = known(feedTank.key());
    const FeedTank atFirst = feedTank;
    // What comes into the feed tank while a shift watches its level.
    for (std::size_t i = 0; i < in.rows.size(); ++i) {
        const auto& [fact, shift, id] = in.rows[i];
        const auto* sap = std::get_if<SapIn>(&fact->what);
        if (shift >= 0 && !(sap && isOfFeed(*sap)))
            aids[static_cast<std::size_t>(shift)].add(*fact, i);
        if (sap && shift >= 0 && !isOfFeed(*sap)) {
            if (sap->all)
                aids[static_cast<std::size_t>(shift)].cameWhole(fact->at, i, sap->from);
            else
                aids[static_cast<std::size_t>(shift)].came(fact->at, i, sap->volume.value);
        }
        const auto* day = std::get_if<DayRow>(&fact->what);
        if (day)
            feedTank.see(*day);
        const int way = day && shift < 0 && !feedTank.key().empty() ? wayOf(*day, feedTank.key()) : 0;
        const bool whole = way > 0 && day->deed == Deed::moved && !day->value;
        if (way == 0 || (!whole && !day->volume()))
            continue;
        for (std::size_t s = 0; s < aids.size(); ++s) {
            if (ends[s] == SIZE_MAX || fact->at < in.shifts[s] || in.rows[ends[s]].fact->at < fact->at)
                continue;
            if (whole)
                aids[s].cameWhole(fact->at, i, std::string{day->text(Key::from)});
            else
                aids[s].came(fact->at, i, *day->volume() * way);
        }
    }
    feedTank = atFirst;
    for (ShiftAid& aid : aids)
        aid.finish();
}

void Ledger::Fold::dayRow(const DayRow& day) {
    switch (day.deed) {
    case Deed::vessel:
        return declare(day);
    case Deed::gathered:
        return gathered(day);
    case Deed::moved:
        return moved(day);
    case Deed::dipped:
        return dipped(day);
    case Deed::concentrated:
        return concentrated(day);
    case Deed::bought:
        return bought(day);
    case Deed::sold:
        return sold(day);
    case Deed::lost:
        return lost(day);
    case Deed::pans_emptied:
        return pansEmptied(day);
    case Deed::press_on:
        return pressOn(day);
    case Deed::press_off:
        return pressOff(day);
    case Deed::graded:
        return graded(day);
    case Deed::packed:
        return packed(day);
    case Deed::shipped:
    case Deed::came_back:
    case Deed::destroyed:
        return shipped(day);
    case Deed::cleaned:
        return cleaned(day);
    case Deed::tested:
        return tested(day);
    }
}

// The same row twice counts once.
bool Ledger::Fold::isTold(std::size_t index) const {
    const Fact& fact = *in.rows[index].fact;
    for (std::size_t i = index; i-- > 0 && in.rows[i].fact->at == fact.at;)
        if (in.rows[i].shift < 0 && isSameRow(*in.rows[i].fact, fact))
            return true;
    return false;
}

void Ledger::Fold::run() {
    prepare();
    findSilences();
    for (line = 0; line < in.rows.size(); ++line) {
        const Fact& fact = *in.rows[line].fact;
        now = fact.at;
        passSilence();
        if (in.rows[line].shift < 0 && isTold(line))
            continue;
        const auto* set = std::get_if<Set>(&fact.what);
        const auto* day = std::get_if<DayRow>(&fact.what);
        if (set) {
            this->set(*set);
        } else if (day) {
            const std::string feedKey = current >= 0 && feedVessel ? nameKey(vessels[*feedVessel].name) : std::string{};
            if (!feedKey.empty() && touches(*day, feedKey))
                sync();
            dayRow(*day);
        }
        if (in.rows[line].shift >= 0)
            shiftRow(fact);
    }
    finish();
}

void Ledger::Fold::finish() {
    for (const FoundSilence& silence : silences)
        tables.holes.push_back({silence.span.from, silence.span.to, false, {}});
    // Checks know their draws by row until here.
    std::map<std::size_t, std::size_t> drawOfRow;
    std::size_t counted = 0;
    for (std::size_t i = 0; i < in.rows.size() && counted < tables.draws.size(); ++i)
        if (const int shift = in.rows[i].shift; shift >= 0 && aids[static_cast<std::size_t>(shift)].drawAt(i))
            drawOfRow[i] = counted++;
    for (CheckRow& check : tables.checks)
        if (check.draw != SIZE_MAX) {
            const auto found = drawOfRow.find(check.draw);
            check.draw = found == drawOfRow.end() ? SIZE_MAX : found->second;
        }
    for (const Vessel& vessel : vessels)
        balance.inVessels += vessel.content.sugar;
    balance.inVessels += press.heel.sugar;
    balance.inPans = pans.sugar;
    // What came in after more was drawn than the book had is known; what it is short of may be in them all the same.
    const double sd = std::hypot(pansInSd, pansOutSd, pansOwed);
    tables.pans = {pans, pansShort || pansOwed > pans.sugar, pansOldest, pansSince, sd, pansMost(), pansUnwritten};
    balance.doesNotCloseSd = std::sqrt(closeVariance);
}

Ledger::Ledger(LedgerInput input) {
    if (!input.dateOf)
        input.dateOf = utcDate;
    fold_ = std::make_unique<Fold>(std::move(input));
    fold_->run();
}
Ledger::~Ledger() = default;
Ledger::Ledger(Ledger&&) noexcept = default;
Ledger& Ledger::operator=(Ledger&&) noexcept = default;

const Thread& Ledger::thread() const { return fold_->thread; }
const std::vector<Vessel>& Ledger::vessels() const { return fold_->vessels; }
const std::vector<Lot>& Ledger::lots() const { return fold_->lots; }
const std::vector<Night>& Ledger::nights() const { return fold_->nights; }
const LedgerTables& Ledger::tables() const { return fold_->tables; }
const std::vector<LedgerMark>& Ledger::marks() const { return fold_->marks; }
const Balance20& Ledger::balance() const { return fold_->balance; }
std::chrono::year_month_day Ledger::dateOf(Instant at) const { return fold_->in.dateOf(at); }
std::optional<std::size_t> Ledger::vesselNamed(std::string_view name) const { return fold_->known(name); }
std::optional<std::size_t> Ledger::lotNamed(std::string_view code) const {
    const auto found = fold_->codes.find(nameKey(code));
    return found == fold_->codes.end() ? std::nullopt : std::optional{found->second};
}

LedgerInput ledgerInput(std::span<const std::span<const Boil::Entry>> books, std::span<const LedgerShift> shifts) {
    LedgerInput input;
    for (const auto& book : books)
        for (const Boil::Entry& entry : book)
            input.rows.push_back({&entry.fact, -1, entry.id});
    for (const auto& [id, rows] : shifts) {
        for (const Boil::Entry& entry : rows)
            input.rows.push_back({&entry.fact, static_cast<int>(input.shifts.size()), entry.id});
        input.shifts.push_back(id);
    }
    const auto earlier = [](const LedgerRow& a, const LedgerRow& b) { return a.fact->at < b.fact->at; };
    if (!std::ranges::is_sorted(input.rows, earlier))
        std::ranges::stable_sort(input.rows, earlier);
    return input;
}

} // namespace panside
