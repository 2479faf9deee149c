// tank_overflow: the feed tank, by its gauge. Other tanks call by the day book (core/shift/rim_alarm.h).
#include "core/boil/alarms.h"

#include "core/boil/state.h"

#include <algorithm>

namespace panside {
namespace {

// Where nobody set a rim: long enough to walk to the tank and shut a valve or start a pump (common practice, no
// source).
constexpr Duration walkThere{15 * 60};
constexpr double nearlyFull = 0.02; // of the tank: one that was called and stands full may run over unseen

} // namespace

// With `overflow_rim` set, no more than that is left and the tank does not surely fall: a trickle is too slow for any
// gauge to show. Without it the tank must be seen to fill: a crew fills it to the brim before it lights.
Condition tankOverflow(const State& state, Series, Instant now, bool standing) {
    const auto tank = state.store.rim(state, now);
    if (!tank || tank->falls)
        return {};
    const Volume room = std::max(tank->room, Volume{});
    const auto fullIn = tank->filling ? std::optional{room / *tank->filling} : std::nullopt;
    Condition condition;
    condition.left = fullIn;
    const Volume full = state.settings.feedTankVolume().value_or(Volume{}) * nearlyFull;
    if (const auto rim = state.settings.overflowRim()) {
        condition.holds = room <= *rim * (standing ? 1.1 : 1);
        condition.grounds.add({GroundKind::tankNearRim, room, *rim});
    } else {
        condition.holds = fullIn ? *fullIn <= walkThere * (standing ? 1.25 : 1) : standing && room <= full;
    }
    if (fullIn)
        condition.grounds.add({GroundKind::tankFills, *fullIn});
    else if (condition.grounds.empty())
        condition.grounds.add({GroundKind::tankNearRim, room, full});
    if (const std::string& name = state.settings.overflowCalls(); !name.empty())
        condition.grounds.add({GroundKind::callsFor, name});
    return condition;
}

} // namespace panside
