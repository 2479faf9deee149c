#include "core/boil/fire.h"

#include "core/boil/state.h"

namespace panside {
namespace {

constexpr Duration firstInterval{480}; // until one is set or learned

Duration interval(const State& state) { return state.settings.fireInterval().value_or(firstInterval); }

} // namespace

void Fire::take(const State&, const Fact& fact) {
    if (std::holds_alternative<Fired>(fact.what))
        lastFired_ = fact.at;
}

std::optional<Instant> Fire::due(const State& state) const {
    if (!state.course.firing())
        return std::nullopt;
    return std::max(*state.course.litAt, lastFired_.value_or(*state.course.litAt)) + interval(state);
}

void Fire::show(const State& state, Instant now, Picture& picture) const {
    picture.fireInterval = interval(state);
    picture.lastFired = lastFired_;
    if (const auto at = due(state))
        picture.fireDue = Duration{secondsBetween(now, *at)};
    else
        picture.why.push_back({"fireDueS", state.course.litAt ? Reason::stoppedFiring : Reason::notLit});
}

} // namespace panside
