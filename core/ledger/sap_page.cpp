#include "core/ledger/sap_page.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr Brix concentrateFrom = Brix::degrees(4);
constexpr double tenth = 1.2816;
constexpr double dayLong = 86400;     // seconds
constexpr double rimPlay = 0.005;     // of what it holds, as a mark over the rim has it
constexpr Duration walkToIt{15 * 60}; // common practice, no source

// How fast it fills: what came in within the last day, from the first of it on; the first came before that time.
std::optional<TankPicture::Filling> fillingOf(const Vessel& vessel, Volume room, Instant now) {
    std::vector<std::pair<Instant, double>> came;
    for (auto at = vessel.cameIn.rbegin(); at != vessel.cameIn.rend() && secondsBetween(at->first, now) <= 86400; ++at)
        if (at->first <= now)
            came.push_back(*at);
    if (came.size() < 3)
        return std::nullopt;
    const double span = secondsBetween(came.back().first, came.front().first);
    const double pause = secondsBetween(came.front().first, now);
    const auto gaps = static_cast<double>(came.size() - 1);
    if (span < 600 || pause > 2 * span / gaps + 1800)
        return std::nullopt; // it has stopped
    double sum = 0, squares = 0;
    for (std::size_t i = 0; i + 1 < came.size(); ++i) {
        sum += came[i].second;
        squares += came[i].second * came[i].second;
    }
    const double mean = sum / gaps, spread = std::max(0.0, squares / gaps - mean * mean);
    const double rate = sum / span; // litres a second
    const double share = std::clamp(std::sqrt((spread + 0.04 * mean * mean) / gaps) / mean, 0.05, 0.6);
    const double left = std::max(0.0, room.litre());
    return TankPicture::Filling{VolumeFlow::litrePerHour(rate * 3600), Duration{left / (rate * (1 + tenth * share))},
                                Duration{left / rate}, static_cast<int>(came.size())};
}

TankPicture tankOf(const Vessel& vessel, std::size_t index, Instant now) {
    TankPicture tank{};
    tank.vessel = index;
    tank.volume = vessel.content.volume();
    tank.sugar = vessel.content.brix();
    tank.sugarSd = Brix::ofSi(std::max(vessel.content.error().si(), vessel.sugarAssumed ? 0.01 : 0.001));
    tank.sugarAssumed = vessel.sugarAssumed;
    tank.concentrate = vessel.kind == VesselKind::concentrate || tank.sugar > concentrateFrom;
    if (vessel.capacity)
        tank.room = *vessel.capacity - tank.volume;
    const auto since = [now](Instant at) { return Duration{std::max(0.0, secondsBetween(at, now))}; };
    if (vessel.oldest)
        tank.oldest = since(*vessel.oldest);
    tank.now = vessel.temperature;
    tank.coldest = vessel.coldest;
    tank.warmest = vessel.warmest;
    tank.over40F = vessel.over40F;
    tank.over50F = vessel.over50F;
    if (vessel.temperature) {
        const Duration rest = since(vessel.touched);
        if (vessel.temperatureTold)
            tank.toldAgo = since(*vessel.temperatureTold);
        if (*vessel.temperature > Temperature::fahrenheit(40))
            tank.over40F += rest;
        if (*vessel.temperature > Temperature::fahrenheit(50))
            tank.over50F += rest;
    }
    tank.atFreezing = vessel.coldest && *vessel.coldest <= Temperature::celsius(0.05);
    tank.ropy = vessel.taint.ropy;
    if (tank.room)
        tank.filling = fillingOf(vessel, *tank.room, now);
    return tank;
}

// Which of two to boil first, and why; nullopt: no difference that matters.
struct Why {
    bool first;
    BoilReason reason;
};
std::optional<Why> rank(const TankPicture& a, const TankPicture& b) {
    if (a.ropy != b.ropy)
        return Why{b.ropy, BoilReason::ropy};
    if (a.concentrate != b.concentrate)
        return Why{a.concentrate, BoilReason::concentrate};
    constexpr double hour = 3600; // less than that is no difference (our judgement)
    for (const auto& [mine, its] : {std::pair{a.over50F, b.over50F}, std::pair{a.over40F, b.over40F}})
        if (std::abs((mine - its).count()) >= hour)
            return Why{mine > its, BoilReason::warm};
    if (a.warmest && b.warmest && std::abs((*a.warmest - *b.warmest).kelvin()) >= 3)
        return Why{*a.warmest > *b.warmest, BoilReason::warm};
    if (a.oldest && b.oldest && std::abs((*a.oldest - *b.oldest).count()) >= hour)
        return Why{*a.oldest > *b.oldest, BoilReason::old};
    return std::nullopt;
}

// What sets it apart from the next that is not like it, or from the last before it: ropy sap is not boiled at all.
BoilReason reasonOf(std::span<const BoilFirst> order, std::size_t place, const std::vector<TankPicture>& tanks) {
    const TankPicture& tank = tanks[order[place].tank];
    if (tank.ropy)
        return BoilReason::ropy;
    bool alone = true;
    const auto apart = [&](std::size_t other) {
        alone = alone && tanks[order[other].tank].ropy;
        const auto why = rank(tank, tanks[order[other].tank]);
        return why && why->reason != BoilReason::ropy ? std::optional{why->reason} : std::nullopt;
    };
    for (std::size_t other = place + 1; other < order.size(); ++other)
        if (const auto why = apart(other))
            return *why;
    for (std::size_t other = place; other-- > 0;)
        if (const auto why = apart(other))
            return *why;
    return alone ? BoilReason::onlyOne : BoilReason::like;
}

// Rank is no strict order where differences are just under an hour: each goes before as many as it beats.
std::vector<BoilFirst> orderOf(const std::vector<TankPicture>& tanks) {
    std::vector<std::size_t> beats(tanks.size());
    std::vector<BoilFirst> order;
    for (std::size_t i = 0; i < tanks.size(); ++i) {
        order.push_back({i, BoilReason::like});
        for (std::size_t j = 0; j < tanks.size(); ++j)
            if (const auto why = i == j ? std::nullopt : rank(tanks[i], tanks[j]))
                beats[i] += why->first;
    }
    std::ranges::stable_sort(order,
                             [&](const BoilFirst& a, const BoilFirst& b) { return beats[a.tank] > beats[b.tank]; });
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i].reason = reasonOf(order, i, tanks);
    return order;
}

} // namespace

SapPage sapPage(const Ledger& ledger, Instant now) {
    SapPage page;
    for (std::size_t i = 0; i < ledger.vessels().size(); ++i) {
        const Vessel& vessel = ledger.vessels()[i];
        if (!isTankKind(vessel.kind) || vessel.out || vessel.content.isEmpty())
            continue;
        page.tanks.push_back(tankOf(vessel, i, now));
        (page.tanks.back().concentrate ? page.concentrate : page.sap) += page.tanks.back().volume;
        page.sugar += Mass::kilogram(vessel.content.sugar);
    }
    page.order = orderOf(page.tanks);
    return page;
}

std::vector<RimCall> rimCalls(const Ledger& ledger, Instant now) {
    const auto rim = ledger.tables().settings.overflowRim();
    std::vector<RimCall> calls;
    for (std::size_t i = 0; i < ledger.vessels().size(); ++i) {
        const Vessel& vessel = ledger.vessels()[i];
        if (!isTankKind(vessel.kind) || vessel.out || vessel.content.isEmpty() || !vessel.capacity)
            continue;
        if (vessel.cameIn.empty() || secondsBetween(vessel.cameIn.back().first, now) > dayLong)
            continue;
        RimCall call{i, *vessel.capacity - vessel.content.volume(), rim, {}};
        if (const auto filling = fillingOf(vessel, call.room, now)) {
            // What has come in since the last delivery that was told stands in it already.
            const Duration since{std::max(0.0, secondsBetween(vessel.cameIn.back().first, now))};
            call.fullIn = std::max(Duration{0}, filling->likely - since);
        }
        const bool over = call.room < *vessel.capacity * -rimPlay;
        if (over || (rim ? call.room <= *rim : call.fullIn && *call.fullIn <= walkToIt))
            calls.push_back(call);
    }
    return calls;
}

std::optional<SweetInPans> sweetInPans(const Ledger& ledger, Instant now) {
    const PansNow& pans = ledger.tables().pans;
    if (pans.content.isEmpty() && !pans.isShort)
        return std::nullopt;
    SweetInPans sweet;
    sweet.sugar = Mass::kilogram(std::max(0.0, pans.content.sugar));
    sweet.sd = Mass::kilogram(pans.sugarSd);
    sweet.unknown = pans.isShort || pans.unwritten;
    if (pans.since)
        sweet.since = Duration{std::max(0.0, secondsBetween(*pans.since, now))};
    if (pans.oldest)
        sweet.oldest = Duration{std::max(0.0, secondsBetween(*pans.oldest, now))};
    return sweet;
}

} // namespace panside
