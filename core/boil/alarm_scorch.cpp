// Will the syrup pan run dry, or past 75 brix, within five minutes?
#include "core/boil/alarms.h"
#include "core/boil/state.h"
#include "core/physics/sugar.h"

#include <algorithm>

namespace panside {
namespace {

constexpr double soon = 300, calmAgain = 420; // seconds: where it begins, where it ends

// From the level and how it falls.
std::optional<double> dryIn(const State& state, Instant now) {
    const auto level = state.sensors.of(Series::pan_level).value(now);
    if (!level || level->slope >= -1e-6)
        return std::nullopt;
    return std::max(0.0, level->si / -level->slope);
}

// From the rise running away: when it passes that of 75 brix if it goes on as it does.
std::optional<double> tooDenseIn(const State& state, Instant now) {
    const auto pan = state.sensors.of(Series::syrup_pan).value(now);
    const auto water = state.weather.boiling(now);
    if (!pan || !water)
        return std::nullopt;
    const auto limit = boilingRise(Brix::degrees(75), water->forModel);
    const auto mark = boilingRise(state.settings.targetDensity(), water->forModel);
    if (!limit || !mark)
        return std::nullopt;
    const double rise = pan->si - state.mark.offset(now).kelvin() - water->waterBoils.kelvin();
    if (rise >= limit->kelvin())
        return 0.0;
    if (rise < mark->kelvin() || pan->slope <= 0)
        return std::nullopt;
    return (limit->kelvin() - rise) / pan->slope;
}

} // namespace

Condition scorchRisk(const State& state, Series, Instant now, bool standing) {
    std::optional<double> left;
    for (const auto& time : {dryIn(state, now), tooDenseIn(state, now)})
        if (time && (!left || *time < *left))
            left = time;
    if (!left || *left > (standing ? calmAgain : soon))
        return {};
    return {true, std::nullopt, Duration{*left}};
}

} // namespace panside
