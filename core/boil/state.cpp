// The fold: each part takes the fact in turn, and shows its own figures.
#include "core/boil/state.h"

#include "core/boil/boil.h"

namespace panside {
namespace {

void shutByThePan(State& state) {
    const Fact shut{state.now, DrawClosed{}};
    state.course.seenShut(state.now);
    state.climb.absorb(state, shut);
    state.forecast.absorb(state, shut);
}

// What a fact means, and how it was keyed: who counts draws hears the keys.
void absorbMeant(State& state, const Fact& fact, const Fact& keyed) {
    state.sensors.absorb(state, fact);
    state.weather.absorb(state, fact);
    state.trends.absorb(state, fact);
    state.mark.absorb(state, fact);
    state.ownDraw.absorb(state, fact);
    if (state.drawWatch.seesShut(state, fact))
        shutByThePan(state);
    // A key that comes after the pan has told of it brings the volume and no more.
    const bool late = std::holds_alternative<DrawClosed>(fact.what) && state.course.shutUnkeyed;
    if (!late)
        state.climb.absorb(state, fact);
    state.fire.absorb(state, fact);
    state.balance.absorb(state, keyed);
    state.store.absorb(state, fact);
    if (!late)
        state.forecast.absorb(state, fact);
    state.call.absorb(state, fact);
}

} // namespace

void absorb(State& state, const Fact& fact) {
    // What the clock brings at the very moment of the fact waits for the fact: it may be what was missed.
    state.watch.pass(state, fact.at - std::chrono::microseconds{1});
    absorbUnwatched(state, fact);
    if (!Loads::waits(fact))
        state.watch.absorb(state, fact);
}

void absorbUnwatched(State& state, const Fact& fact) {
    state.now = fact.at;
    // The record of what the stack shows by itself, later: it must not make another picture than the stack alone does.
    if (Loads::waits(fact))
        return state.fire.absorb(state, fact);
    if (const auto* set = std::get_if<Set>(&fact.what))
        state.settings.put(*set);
    state.course.absorb(fact);
    const bool otherKey = std::holds_alternative<DrawOpened>(fact.what) && state.course.meantShut();
    otherKey ? absorbMeant(state, {fact.at, DrawClosed{}}, fact) : absorbMeant(state, fact, fact);
}

State apply(State state, const Fact& fact) {
    absorb(state, fact);
    return state;
}

Picture picture(const State& state, Instant now) {
    Picture picture;
    picture.at = now;
    picture.why.reserve(16);
    state.course.show(state, now, picture);
    state.sensors.show(state, now, picture);
    state.weather.show(state, now, picture);
    state.mark.show(state, now, picture);
    state.fire.show(state, now, picture);
    state.balance.show(state, now, picture);
    state.store.show(state, now, picture);
    state.forecast.show(state, now, picture);
    if (state.trends.overfull(now) && state.sensors.of(Series::pan_level).trust(now) == Trust::good)
        picture.why.push_back({Series::pan_level, Reason::overfull});
    state.watch.show(state, now, picture);
    state.call.show(state, now, picture);
    return picture;
}

} // namespace panside
