#include "core/boil/draw_watch.h"

#include "core/boil/state.h"

#include <algorithm>
#include <utility>

namespace panside {
namespace {

// Common practice, no source: while a draw runs the reading heaves and a surge of the feed lifts it by tenths.
constexpr double climbed = 0.45;          // K over the lowest;
constexpr double climbedThin = 0.25;      // where it has thinned so far that nobody draws it,
constexpr double climbedLate = 0.2;       // and lasts far longer than this crew's draws do
constexpr float fades = 0.9F;             // a draw to the next
constexpr double times = 2, atLeast = 60; // of the longest; seconds
constexpr double climbsFor = 60;          // s since the lowest
constexpr double risesFor = 15;           // s that it has stood so far up,
constexpr std::uint16_t fewestHigher = 2; // in so many readings at the least
constexpr double longSilence = 600;       // s
constexpr double wellUnder = 0.5;         // K under the mark: nobody draws that
constexpr double wellOver = 0.2;          // K over the mark: drawing would have ended that
// A valve that is shut ends the fall within a minute or two, as what was drawn forward has mixed in.
constexpr double fallEvery = 10, fallOver = 55;     // s
constexpr double fallenAway = 2;                    // K under the mark: that pan is being emptied, or chased out
constexpr double hasFallen = 0.3, fallenThin = 0.2; // K, since its highest; under the mark: it is no syrup any more
constexpr float hardlyFalls = 1 / 3.0F;             // of the steepest minute of this draw

} // namespace

void DrawWatch::begin(Instant at) {
    const DrawWatch before = *this;
    *this = {};
    longest_ = before.longest_;
    keys_ = before.keys_;
    unkeyed_ = static_cast<std::uint8_t>(before.told_ ? 0 : std::min(before.unkeyed_ + 1, 100));
    told_ = false;
    openedAt_ = at;
}

// By how this crew's draws went.
bool DrawWatch::lastsTooLong(Instant at) const {
    return longest_ > 0 && secondsBetween(*openedAt_, at) > times * longest_ + atLeast;
}

bool DrawWatch::seesShut(const State& state, const Fact& fact) {
    if (std::holds_alternative<DrawClosed>(fact.what))
        keys_ = told_ = true;
    if (!state.course.openedAt) {
        if (openedAt_ && !state.course.shutUnkeyed)
            longest_ = std::max(fades * longest_, static_cast<float>(secondsBetween(*openedAt_, fact.at)));
        openedAt_.reset();
        return false;
    }
    if (openedAt_ != state.course.openedAt)
        begin(*state.course.openedAt);
    const auto* reading = std::get_if<Reading>(&fact.what);
    const Sensor& sensor = state.sensors.of(Series::syrup_pan);
    if (!reading || reading->series != Series::syrup_pan || fact.at <= *openedAt_)
        return false;
    const auto pan = sensor.value(fact.at);
    const auto water = state.weather.boiling(fact.at);
    const auto mark = water ? water->targetRise : std::nullopt;
    if (!pan || !mark || pan->at != fact.at || sensor.trust(fact.at) != Trust::good)
        return false;
    const double rise = pan->si - state.mark.offset(fact.at).kelvin() - water->waterBoils.kelvin();
    // Nobody draws on through a silence of the probe that is longer than any draw of this crew's.
    if (const Instant before = std::exchange(readAt_, fact.at);
        before != Instant{} && secondsBetween(before, fact.at) > longSilence && lastsTooLong(fact.at))
        return true;
    const bool ended = fallHasEnded(rise, mark->kelvin(), fact.at);
    const bool tooLong = lastsTooLong(fact.at) && rise > mark->kelvin() - fallenAway;
    return (ended && (isNeverKeyed() || tooLong)) || climbsAgain(rise, mark->kelvin(), fact.at);
}

bool DrawWatch::climbsAgain(double rise, double mark, Instant at) {
    if (lowAt_ == Instant{} || rise < low_) {
        low_ = rise;
        lowAt_ = at;
    }
    const bool thinned = low_ < mark - wellUnder;
    const double enough = !thinned ? climbed : lastsTooLong(at) ? climbedLate : climbedThin;
    const bool thinnedOrOver = thinned || rise > mark + wellOver;
    if (rise < low_ + enough || !thinnedOrOver || secondsBetween(lowAt_, at) < climbsFor) {
        climbsSince_.reset();
        higher_ = 0;
        return false;
    }
    climbsSince_ = climbsSince_.value_or(at);
    higher_ = static_cast<std::uint16_t>(std::min(higher_ + 1, 1000));
    return higher_ >= fewestHigher && secondsBetween(*climbsSince_, at) >= risesFor;
}

// Pans fall at different speeds: each is held against its own.
bool DrawWatch::fallHasEnded(double rise, double mark, Instant at) {
    if (levels_[0].at != Instant{} && secondsBetween(levels_[0].at, at) < fallEvery)
        return false;
    const auto level = static_cast<float>(rise);
    highest_ = levels_[0].at == Instant{} ? level : std::max(highest_, level);
    std::shift_right(levels_.begin(), levels_.end(), 1);
    levels_[0] = {at, level};
    const auto before = std::find_if(levels_.begin(), levels_.end(), [&](const Level& one) {
        return one.at != Instant{} && secondsBetween(one.at, at) >= fallOver;
    });
    if (before == levels_.end())
        return false;
    const float fell = before->rise - level;
    steepest_ = std::max(steepest_, fell);
    return highest_ - level > hasFallen && rise < mark - fallenThin && fell < hardlyFalls * steepest_;
}

} // namespace panside
