#include "core/boil/own_draw.h"

#include "core/boil/state.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// Common practice, no source: a draw takes the reading down by a kelvin within two minutes; a door or a surge of the
// feed by less. A pan that is let alone climbs by as much within ten minutes.
constexpr double farOver = 0.3;                                       // K: no valve trickles so far over
constexpr double nearMark = 0.2, panFalls = 0.6, panStays = 0.25;     // K
constexpr double panFallsWithin = 240, standsFor = 600, listens = 60; // seconds

} // namespace

void OwnDraw::absorb(const State& state, const Fact& fact) {
    if (std::holds_alternative<DrawOpened>(fact.what) || std::holds_alternative<DrawClosed>(fact.what)) {
        *this = {};
        keyed_ = true;
        return;
    }
    const auto* reading = std::get_if<Reading>(&fact.what);
    if (!reading || reading->series != Series::syrup_pan || reading->byHand())
        return;
    const Sensor& sensor = state.sensors.of(Series::syrup_pan);
    const auto pan = sensor.value(fact.at);
    const auto water = state.weather.boiling(fact.at);
    const auto mark = water ? water->targetRise : std::nullopt;
    if (!pan || !mark || pan->at != fact.at)
        return;
    if (sensor.trust(fact.at) != Trust::good || state.course.drawing() || !state.course.firing()) {
        high_.reset();
        standsFrom_ = fact.at;
        return;
    }
    follow(pan->si - state.mark.offset(fact.at).kelvin() - water->waterBoils.kelvin() - mark->kelvin(), fact.at);
}

void OwnDraw::follow(double over, Instant at) {
    readAt_ = at;
    if (std::abs(over - anchor_) > panStays || over > farOver) {
        anchor_ = over;
        standsFrom_ = at;
    }
    if (high_ && secondsBetween(highAt_, at) > panFallsWithin)
        high_.reset();
    if (over > std::max(-nearMark, high_.value_or(-nearMark))) {
        high_ = over;
        highAt_ = at;
    } else if (high_ && over < *high_ - panFalls) {
        crests_[seen_++ % enough] = static_cast<float>(*high_);
        high_.reset();
    }
}

std::optional<double> OwnDraw::opensAt() const {
    return seen_ < enough ? std::nullopt : std::optional{double{*std::max_element(crests_.begin(), crests_.end())}};
}

bool OwnDraw::hangs(Instant now) const {
    return !keyed_ && anchor_ > -nearMark && secondsBetween(readAt_, now) < listens &&
           secondsBetween(standsFrom_, now) >= standsFor;
}

} // namespace panside
