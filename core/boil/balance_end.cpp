// The end of the boil: how long the sap lasts, when the last load goes in, and what to watch after it.
#include "core/boil/all_syrup.h"
#include "core/boil/balance.h"
#include "core/boil/state.h"
#include "core/physics/sap.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr Duration usualBurnOut{45 * 60};
// A fire was found in a roof hours after its boil: they look again an hour after stopping (common practice, no source).
constexpr Duration lookAgainAfter{3600};
// How far the next hour of a crew differs from the ones before: loads and hands vary (measured by fire_table).
constexpr double unevenFiring = 0.08;
constexpr Temperature usualOutside = Temperature::celsius(4);
// How the heat into the pans falls with the stack's height over the air outside as a fire dies: faster than while it
// is fed, for the flame radiates less and less. Measured by fire_table, on made-up arches only.
constexpr double dyingFire = 1.6;
constexpr double nearlyOut = 0.1; // of its full heat
// Burn-outs that can be (common practice, no source).
constexpr Duration shortestBurnOut{10 * 60}, longestBurnOut{4 * 3600};

} // namespace

Duration Balance::burnOut(const State& state) const { return state.settings.burnOut().value_or(usualBurnOut); }

void Balance::showEnd(const State& state, Instant now, std::optional<Rate> use, std::optional<Rate> rate,
                      Picture& picture) const {
    const auto level = state.sensors.of(Series::tank_level).value(now);
    if (!use && rate)
        use = Rate{rate->litrePerHour / (1 - syrupShare(state, feedSugar_.pans(now))), rate->sd};
    // A tank that would last for days does not run into pans that boil.
    constexpr double longest = 72; // hours
    const bool falls = level && use && use->litrePerHour > std::max(1.0, Volume::ofSi(level->si).litre() / longest);
    if (!falls) {
        const Reason reason = !level                                          ? Reason::noTankLevel
                              : picture.fuel.doubt == Disagreement::tankRises ? Reason::tankRises
                              : use && !boilingSince_                         ? Reason::notBoiling
                                                                              : Reason::tooShort;
        for (const auto figure : {Shown::sapLeftS, Shown::lastLoadS})
            picture.why.push_back({figure, reason});
        showKeepBack(state, rate, picture);
        return;
    }
    // A level read a while ago has gone on falling since.
    const double hoursAgo = secondsBetween(level->at, now) / 3600;
    const double litre = std::max(Volume::ofSi(level->si).litre() - use->litrePerHour * hoursAgo, 0.0);
    // Sweeter sap gives more syrup for the same steam, and so much more of it runs in.
    const Brix past = feedSugar_.pansBetween(now + Duration{-Outflow::longestWindow}, now).value_or(Brix{});
    const Duration half{std::min(litre / use->litrePerHour * 1800, Outflow::longestWindow)};
    const auto coming = feedSugar_.pans(now + half);
    if (coming && *coming != past)
        use->litrePerHour *= (1 - syrupShare(state, past)) / (1 - syrupShare(state, coming));
    picture.sapLeft = Duration{litre / use->litrePerHour * 3600};
    picture.fuel.tank = Volume::litre(litre);

    const auto flue = state.settings.fluePanArea(), syrup = state.settings.syrupPanArea();
    const auto depth = state.settings.runningDepth();
    if (!rate || !depth || !(flue || syrup)) {
        for (const auto figure : {Shown::keepBackL, Shown::lastLoadS})
            picture.why.push_back({figure, rate ? Reason::noPanArea : Reason::tooShort});
        return;
    }
    // What boils off is taken over as long as the use: a crew's half hour is no measure of the one to come.
    const double steam = use->litrePerHour * (1 - syrupShare(state, coming));
    const EndBasis basis{.tank = Volume::litre(litre),
                         .use = VolumeFlow::litrePerHour(use->litrePerHour),
                         .useSd = VolumeFlow::litrePerHour(std::hypot(use->sd, unevenFiring * use->litrePerHour)),
                         .steam = VolumeFlow::litrePerHour(steam),
                         .pans = flue.value_or(Area{}) + syrup.value_or(Area{}),
                         .depth = *depth,
                         .burnOut = burnOut(state)};
    const auto plan = planEnd(basis);
    if (!plan)
        return;
    picture.keepBack = plan->keepBack;
    if (!state.course.firing()) {
        picture.why.push_back({Shown::lastLoadS, state.course.shutdownAt ? Reason::stoppedFiring : Reason::notLit});
        return;
    }
    picture.lastLoad = plan->lastLoad;
    picture.fuel.end = basis;
}

// From what the syrup pan holds at a running depth, and the sugar that comes in.
void Balance::showAllSyrup(const State& state, Instant now, std::optional<Rate> use, Picture& picture) const {
    const auto sap = feedSugar_.pans(now), coming = feedSugar_.pans(now + std::chrono::minutes{20});
    const auto syrup = state.settings.syrupPanArea();
    const auto depth = state.settings.runningDepth();
    if (use && sap && syrup && depth && state.course.firing())
        picture.fuel.allSyrup = untilAllSyrup({.flue = state.settings.fluePanArea().value_or(Area{}),
                                               .syrup = *syrup,
                                               .depth = *depth,
                                               .feed = VolumeFlow::litrePerHour(use->litrePerHour),
                                               .now = *sap,
                                               .coming = *coming,
                                               .wanted = state.settings.targetDensity()});
}

// What covers the pans needs no tank: only what boils off, however that is known.
void Balance::showKeepBack(const State& state, std::optional<Rate> rate, Picture& picture) const {
    const auto flue = state.settings.fluePanArea(), syrup = state.settings.syrupPanArea();
    const auto depth = state.settings.runningDepth();
    if (rate && depth && (flue || syrup)) {
        const auto keep = sapToKeepBack(flue.value_or(Area{}) + syrup.value_or(Area{}), *depth,
                                        VolumeFlow::litrePerHour(rate->litrePerHour), burnOut(state));
        if (keep)
            picture.keepBack = *keep;
    }
    if (!picture.keepBack)
        picture.why.push_back({Shown::keepBackL, rate ? Reason::noPanArea : Reason::tooShort});
}

// After the last load the stack says what is left of the fire: its heat into the pans, over that of a fed fire, summed
// up. A fire that dies away evenly gives half of its full heat until it is out.
void Balance::noteBurning(const State& state, Temperature stack, Instant at) {
    const auto usual = state.fire.usualStack();
    const auto fed = state.fire.lastFired();
    if (!usual || !fed)
        return;
    if (burning_.fed != fed)
        burning_ = Burning{.fed = fed};
    const auto air = state.sensors.of(Series::air).value(at);
    const Temperature outside = air ? Temperature::kelvin(air->si) : usualOutside;
    const double full = (*usual - outside).kelvin();
    if (full < 50)
        return;
    burning_.share = std::pow(std::max((stack - outside).kelvin(), 0.0) / full, dyingFire);
    const double passed = secondsBetween(burning_.at.value_or(*fed), at);
    burning_.whole = burning_.whole && passed < 120;
    burning_.at = at;
    if (burning_.share > 0.03)
        burning_.fullHeat += burning_.share * passed;
}

std::optional<Duration> Balance::burnOutSeen(const State& state) const {
    if (!state.course.shutdownAt || !burning_.whole || burning_.share > nearlyOut || burning_.fullHeat <= 0)
        return std::nullopt;
    const Duration took{2 * burning_.fullHeat};
    return took >= shortestBurnOut && took <= longestBurnOut ? std::optional{took} : std::nullopt;
}

void Balance::showAfter(const State& state, Instant now, Picture& picture) const {
    picture.fuel.burnOut = burnOut(state);
    if (!state.course.shutdownAt || state.course.endedAt)
        return;
    const Instant stopped = *state.course.shutdownAt;
    const Instant lastFed = std::max(state.fire.lastFired().value_or(stopped), stopped);
    const Instant cold = lastFed + burnOut(state);
    if (cold > now)
        picture.fuel.watchPans = Duration{secondsBetween(now, cold)};
    picture.fuel.lastLook = Duration{secondsBetween(now, std::max(cold, stopped + lookAgainAfter))};
}

} // namespace panside
