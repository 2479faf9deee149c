#include "core/ledger/shift_aid.h"

#include "core/boil/cords.h"
#include "core/boil/repeated_draw.h"

#include <algorithm>

namespace panside {
namespace {

constexpr double levelWindow = 30;      // seconds either side over which a noisy gauge is meant
constexpr double longestFlowGap = 1800; // seconds for which a flow that was read is believed
// Sap that the gauge shows from the first and that is told within this time, while the level does not rise by a part of
// it, was there before (common practice, no source).
constexpr double toldWithin = 7200, riseWithin = 900, lateRead = 3600, sameMinute = 60, leastRise = 0.4,
                 leastFound = 0.6;
// A pail is poured out within so many seconds, and the gauge is read as near to it (common practice, no source).
constexpr double nearRead = 120, pourTakes = 300;
// A level that stands higher than the book by less is the gauge's noise (common practice, no source).
constexpr double gaugeShare = 0.01, gaugeLitres = 4;
// Seconds after a draw in which a check is of it, and before one that nobody told to be opened (common practice, no
// source).
constexpr double checkAfter = 2400, checkBefore = 300;

} // namespace

Volume gaugeNoise(Volume level) { return Volume::litre(gaugeLitres) + level * gaugeShare; }

void ShiftAid::add(const Fact& fact, std::size_t row) {
    if (LoadsOfShift::needs(fact))
        loads_.add(fact);
    if (std::holds_alternative<Lit>(fact.what) && lit_ == SIZE_MAX)
        lit_ = row;
    if (const auto* load = std::get_if<Fired>(&fact.what); load && !deniesLoad(*load))
        lastLoad_ = row;
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        if (reading->series == Series::tank_level && reading->si >= 0)
            levels_.push_back({fact.at, reading->si, row});
        if (reading->series == Series::feed_flow && reading->si >= 0) {
            double sum = flowSum_.empty() ? 0 : flowSum_.back();
            if (!flows_.empty())
                sum += (flows_.back().value + reading->si) / 2 *
                       std::min(longestFlowGap, secondsBetween(flows_.back().at, fact.at));
            flows_.push_back({fact.at, reading->si});
            flowSum_.push_back(sum);
        }
    } else if (const auto* sap = std::get_if<SapIn>(&fact.what)) {
        saps_.push_back({fact.at, row, sap->all ? 0 : sap->volume.value.si()}); // all of a vessel: see know()
        if (!sap->from.empty())
            poured_.push_back({fact.at, row, sap->from, sap->all ? std::nullopt : std::optional{sap->volume.value}});
    } else if (std::holds_alternative<DrawOpened>(fact.what)) {
        opened_ = fact.at;
        closes_.emplace_back(row, fact);
        closesOpened_.push_back(opened_);
    } else if (std::holds_alternative<DrawClosed>(fact.what)) {
        closes_.emplace_back(row, fact);
        closesOpened_.push_back(opened_);
        opened_.reset();
    } else if (const auto* check = std::get_if<DensityCheck>(&fact.what)) {
        const auto sugar = sugarOf(*check, wanted_);
        const auto cup = sugar ? std::optional{Cup{*sugar, check}} : std::nullopt;
        checks_.push_back({check->drawn.value_or(fact.at), row, cup});
        if (cup)
            cups_.push_back(*cup);
    } else if (const auto* set = std::get_if<Set>(&fact.what); set && set->key == Setting::target_density) {
        wanted_ = Brix::ofSi(set->si);
    }
}

// Does the gauge not rise by it when it is told? Two dips an hour apart hide what was boiled off between them: so much
// as leaves the tank afterwards is taken to have left it then too.
bool ShiftAid::stoodBefore(const Sap& sap) const {
    const auto after = std::lower_bound(levels_.begin(), levels_.end(), Point{sap.at, 0, sap.row});
    if (after == levels_.begin())
        return true;
    const Point& before = *(after - 1);
    double most = -1;
    auto last = after;
    for (; last != levels_.end() && secondsBetween(sap.at, last->at) <= riseWithin; ++last)
        most = std::max(most, last->value);
    if (last == after) {
        if (after == levels_.end() || secondsBetween(sap.at, after->at) > lateRead)
            return secondsBetween(before.at, sap.at) <= sameMinute; // no level says but one that was read with it
        most = after->value;
        ++last;
    }
    const Point& seen = *(last - 1);
    const auto next = std::find_if(
        last, levels_.end(), [&](const Point& point) { return secondsBetween(seen.at, point.at) >= riseWithin / 3; });
    const double rate =
        next == levels_.end() ? 0 : std::max(0.0, (seen.value - next->value) / secondsBetween(seen.at, next->at));
    return most - before.value + rate * secondsBetween(before.at, seen.at) <= leastRise * sap.volume;
}

void ShiftAid::findToldLater() {
    toldLater_.clear();
    if (levels_.empty())
        return;
    double found = levels_.front().value;
    for (const Sap& sap : saps_) {
        const double after = secondsBetween(levels_.front().at, sap.at);
        if (sap.volume <= 0 || after < 0 || after > toldWithin || found < leastFound * sap.volume || !stoodBefore(sap))
            continue;
        found -= sap.volume;
        toldLater_.push_back(sap.row);
        // What stood in the tank already does not come then.
        std::erase_if(came_, [&](const Point& one) { return one.row == sap.row; });
    }
}

bool ShiftAid::passedBy(const Poured& poured, Volume volume) const {
    const auto after = std::lower_bound(levels_.begin(), levels_.end(), Point{poured.at, 0, poured.row});
    if (after == levels_.begin() || after == levels_.end())
        return false;
    const Point& before = *(after - 1);
    if (secondsBetween(before.at, poured.at) > nearRead || secondsBetween(poured.at, after->at) > nearRead ||
        volume < gaugeNoise(Volume::ofSi(before.value)))
        return false;
    double most = after->value;
    for (auto level = after; level != levels_.end() && secondsBetween(poured.at, level->at) <= pourTakes; ++level)
        most = std::max(most, level->value);
    return most - before.value <= leastRise * volume.si();
}

void ShiftAid::know(std::size_t row, Volume volume) {
    const auto of = [row](auto& list) { // both are in the order of their rows
        const auto at = std::lower_bound(list.begin(), list.end(), row,
                                         [](const auto& one, std::size_t its) { return one.row < its; });
        return at != list.end() && at->row == row ? &*at : nullptr;
    };
    if (Point* came = of(came_))
        came->value = volume.si();
    if (Sap* sap = of(saps_))
        sap->volume = volume.si();
}

void ShiftAid::finish() {
    findToldLater();
    RepeatedDraw repeated;
    for (std::size_t i = 0; i < closes_.size(); ++i) {
        const auto& [row, fact] = closes_[i];
        const auto told = repeated.hear(fact);
        using Telling = RepeatedDraw::Telling;
        if (told == Telling::none)
            continue;
        if (told == Telling::first) {
            draws_.push_back({row, repeated.draw(), closesOpened_[i], {}});
            closedAt_.push_back(fact.at);
        } else if (!draws_.empty()) {
            draws_.back().told = repeated.draw();
            twice_.push_back(row);
        }
    }
    for (const Check& check : checks_) {
        // Of the draw that was open then; or of the last one before it that is not long past.
        std::size_t of = SIZE_MAX;
        for (std::size_t i = 0; i < draws_.size(); ++i) {
            const double after = secondsBetween(closedAt_[i], check.at);
            const bool during = after <= 0 && (draws_[i].opened ? secondsBetween(*draws_[i].opened, check.at) >= 0
                                                                : after >= -checkBefore);
            if (during || (after > 0 && after <= checkAfter))
                of = i;
        }
        if (of == SIZE_MAX)
            continue;
        drawOf_[check.row] = draws_[of].row;
        if (check.cup)
            draws_[of].cups.push_back(*check.cup);
    }
    closes_.clear();
    closesOpened_.clear();
    const auto loads = loads_.all();
    loadCount_ = static_cast<int>(loads.size());
    double cords = 0;
    std::map<std::string, double> kinds;
    bool allKnown = !loads.empty();
    for (const Load& load : loads) {
        const auto burnt = cordsOf(load);
        allKnown = allKnown && burnt;
        cords += burnt.value_or(0);
        wood_ += load.mass.value_or(Mass{}).kilogram();
        kinds[load.wood] += load.mass.value_or(Mass{}).kilogram();
    }
    wood_ = allKnown ? wood_ : 0;
    const auto most =
        std::ranges::max_element(kinds, [](const auto& one, const auto& other) { return one.second < other.second; });
    woodKind_ = most == kinds.end() ? std::string{} : most->first;
    cords_ = allKnown ? std::optional{cords} : std::nullopt;
    loads_ = {};
}

const ShiftAid::Draw* ShiftAid::drawAt(std::size_t row) const {
    const auto found = std::lower_bound(draws_.begin(), draws_.end(), row,
                                        [](const Draw& draw, std::size_t r) { return draw.row < r; });
    return found != draws_.end() && found->row == row ? &*found : nullptr;
}
bool ShiftAid::isTwice(std::size_t row) const { return std::ranges::find(twice_, row) != twice_.end(); }
std::optional<std::size_t> ShiftAid::drawOfCheck(std::size_t row) const {
    const auto found = drawOf_.find(row);
    return found == drawOf_.end() ? std::nullopt : std::optional{found->second};
}

std::optional<Volume> ShiftAid::levelAt(Instant at, std::size_t row) const {
    if (levels_.empty())
        return std::nullopt;
    const auto earlier = [](const Point& point, Instant t) { return point.at < t; };
    const auto from = std::lower_bound(levels_.begin(), levels_.end(), at + Duration{-levelWindow}, earlier);
    auto to = from;
    std::vector<double> near;
    for (; to != levels_.end() && to->at <= at + Duration{levelWindow}; ++to)
        near.push_back(to->value);
    if (near.size() >= 5) { // a gauge: the middle one
        std::nth_element(near.begin(), near.begin() + static_cast<std::ptrdiff_t>(near.size() / 2), near.end());
        return Volume::ofSi(near[near.size() / 2]);
    }
    const Point now{at, 0, row};
    const auto next = std::lower_bound(levels_.begin(), levels_.end(), now);
    if (next == levels_.end())
        return Volume::ofSi(levels_.back().value);
    // Between two dips what came in stands at its own time, and what left is spread evenly.
    const Point before = next == levels_.begin() ? now : *(next - 1);
    double until = 0, all = 0;
    for (const Point& came : came_)
        if (before < came && came < *next) {
            all += came.value;
            until += came < now ? came.value : 0;
        }
    if (next == levels_.begin()) // as it will be found, less what is still to come
        return Volume::ofSi(std::max(0.0, next->value - all));
    const double span = secondsBetween(before.at, next->at);
    const double share = span > 0 ? secondsBetween(before.at, at) / span : 0;
    const double left = before.value + all - next->value;
    return Volume::ofSi(left >= 0 ? std::max(0.0, before.value + until - share * left)
                                  : before.value + share * (next->value - before.value));
}

Volume ShiftAid::flowed(Instant to) const {
    const auto next =
        std::upper_bound(flows_.begin(), flows_.end(), to, [](Instant t, const Point& point) { return t < point.at; });
    if (next == flows_.begin())
        return Volume{};
    const auto i = static_cast<std::size_t>(next - flows_.begin()) - 1;
    const double since = std::min(longestFlowGap, secondsBetween(flows_[i].at, to));
    return Volume::ofSi(flowSum_[i] + flows_[i].value * since);
}

} // namespace panside
