#include "core/boil/chart_traces.h"

#include "core/boil/state.h"

#include <algorithm>

namespace panside {
namespace {

constexpr double steamJoins = 150; // seconds between two of its points, across which a line may be drawn

std::optional<RisePoint> risePoint(const State& state, const Fact& fact, const std::vector<RisePoint>& before) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    if (!reading || reading->series != Series::syrup_pan)
        return std::nullopt;
    const Sensor& pan = state.sensors.of(Series::syrup_pan);
    const auto value = pan.value(fact.at);
    const auto water = state.weather.boiling(fact.at);
    if (!value || !water || value->at != fact.at)
        return std::nullopt;
    const double rise = value->si - state.mark.offset(fact.at).kelvin() - water->waterBoils.kelvin();
    const bool gap = before.empty() ||
                     secondsBetween(before.back().at, fact.at) > std::max(30.0, 3.5 * pan.active(fact.at)->spacing());
    return RisePoint{fact.at, static_cast<float>(rise), pan.trust(fact.at), gap};
}

} // namespace

void ChartTraces::absorb(const State& state, const Fact& fact) {
    if (const auto point = risePoint(state, fact, rise))
        rise.push_back(*point);
    const auto minute = state.balance.lastMinute();
    if (!minute || !minute->steam || (!steam.empty() && steam.back().at == minute->at))
        return;
    const bool gap = !steam.empty() && secondsBetween(steam.back().at, minute->at) > steamJoins;
    steam.push_back({minute->at, static_cast<float>(minute->steam->si()), gap});
}

} // namespace panside
