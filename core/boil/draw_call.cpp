#include "core/boil/draw_call.h"

#include "core/boil/calls.h"
#include "core/boil/state.h"

#include <algorithm>

namespace panside {
namespace {

// A boil's noise passes the target and comes back within seconds: what counts is a straight line through the last half
// minute, which lags behind no climb. It has to stand there a few seconds (measured on made-up boils and on those of
// another plant: fewer call a crest, more call late); over by three of the noise's standard deviations not as long.
constexpr double stands = 8, standsSurely = 4, deviations = 3;
constexpr double lull = 0.06; // K under the target that do not end it
constexpr double sparse = 20; // seconds between readings: a line through those is of long ago

// Kelvin, as read. A line through a bend shoots over it, as when a pan that warms begins to boil: it counts as far as
// noise and the filter's lag account for.
double atDrawOff(const State& state, const Sensor::Believed& pan) {
    const Probe* probe = state.sensors.of(Series::syrup_pan).active(pan.at);
    const auto line = state.trends.of(Series::syrup_pan, pan.at);
    if (!line || line->at != pan.at || !probe || probe->spacing() > sparse)
        return pan.si;
    return std::min(line->value, pan.si + deviations * pan.noise + lull);
}

} // namespace

void DrawCall::absorb(const State& state, const Fact& fact) {
    const auto* reading = std::get_if<Reading>(&fact.what);
    if (!reading) {
        if (std::holds_alternative<DrawOpened>(fact.what) || std::holds_alternative<DrawClosed>(fact.what) ||
            std::holds_alternative<PanSwapped>(fact.what))
            over_.reset();
        return;
    }
    if (reading->series != Series::syrup_pan)
        return;
    const Sensor& sensor = state.sensors.of(Series::syrup_pan);
    const auto pan = sensor.value(fact.at);
    const auto water = state.weather.boiling(fact.at);
    if (!pan || pan->at != fact.at || !water || !water->targetRise || sensor.trust(fact.at) != Trust::good ||
        state.course.drawing()) {
        if (!pan || sensor.trust(fact.at) != Trust::good)
            over_.reset();
        return;
    }
    // Who tells a value now and then tells what was since the last: of the time before the draw was shut.
    const Probe* probe = sensor.active(fact.at);
    const auto& shut = state.course.closedAt;
    if (!reading->byHand() && probe && shut && secondsBetween(*shut, fact.at) < probe->spacing()) {
        over_.reset();
        return;
    }
    const double mark = water->waterBoils.kelvin() + water->targetRise->kelvin() + state.mark.offset(fact.at).kelvin();
    const double over = atDrawOff(state, *pan) - mark;
    if (over < (over_ ? -lull : 0)) {
        over_.reset();
        return;
    }
    if (!over_)
        over_ = fact.at;
    typed_ = reading->byHand();
    surely_ = over > deviations * pan->noise;
}

bool DrawCall::due(const State& state, Instant now) const {
    if (!over_ || state.course.drawing() || state.course.endedAt ||
        state.sensors.of(Series::syrup_pan).trust(now) != Trust::good)
        return false;
    return typed_ || secondsBetween(*over_, now) >= (surely_ ? standsSurely : stands);
}

void DrawCall::show(const State& state, Instant now, Picture& picture) const {
    // Who reads by hand is called by the climb since the last reading, to look again.
    const auto& pan = picture.reading(Series::syrup_pan);
    const bool byTheClimb = pan && pan->byHand && pan->trust == Trust::good && !picture.drawing && !picture.endedAt &&
                            picture.drawEta && picture.drawEta->p50.count() <= 0;
    picture.drawDue = (due(state, now) || byTheClimb) && !forbids(picture, Call::draw);
}

} // namespace panside
