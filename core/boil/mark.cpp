#include "core/boil/mark.h"

#include "core/boil/height.h"
#include "core/boil/square.h"
#include "core/boil/state.h"
#include "core/physics/sugar.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double waterCheckSd = 0.07; // K, a careful look at water at a full boil
constexpr double leastTold = 0.15;    // K over boiling water: under it what boils may be plain water
// The reading at which syrup is reached creeps up by tenths of a kelvin in a boil, as scale grows (common practice, no
// source). Counted from a check on, for as long as one can be believed to stand for the pan.
constexpr double creepPerHour = 0.015, creepStep = 600, creepFor = 3 * 3600;
// A lead that takes water, or much niter, creeps by several times as much: what no check has borne out for hours is so
// much in doubt.
constexpr double uncheckedPerHour = 0.06; // K

// What is in doubt no check is held against, but for what leapt: the check tells where it stands. Kelvin over boiling
// water, as it came: the sensor's filter would carry a slope across a draw.
std::optional<double> believed(const State& state, Instant at) {
    const Sensor& sensor = state.sensors.of(Series::syrup_pan);
    const auto water = state.weather.boiling(at);
    const auto pan = sensor.value(at);
    const Probe* probe = sensor.active(at);
    const bool leapt = probe && probe->leap() && sensor.reason(at) == Reason::tooFast;
    if (!water || !pan || pan->at != at || (sensor.trust(at) != Trust::good && !leapt))
        return std::nullopt;
    return pan->sample - water->waterBoils.kelvin();
}

} // namespace

void Mark::absorb(const State& state, const Fact& fact) {
    // Belief sampleAges by the clock of the facts.
    belief_.age(lastAged_ ? secondsBetween(*lastAged_, fact.at) : 0);
    lastAged_ = fact.at;
    creep(fact.at);
    followLeap(state, fact);
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        if (reading->series == Series::pressure || reading->series == Series::sea_level_pressure)
            watchHeight(state, fact.at);
        if (reading->series == Series::syrup_pan)
            if (const auto seen = believed(state, fact.at))
                trace_.add(fact.at, *seen);
    } else if (const auto* set = std::get_if<Set>(&fact.what)) {
        if (set->key == Setting::probe_offset || set->key == Setting::probe_offset_sd) {
            belief_.start(state.settings.probeOffset().kelvin(), state.settings.probeOffsetSd().kelvin());
            untold_ = {};
            same_ = {};
            slip_ = 0;
        }
    } else if (const auto* density = std::get_if<DensityCheck>(&fact.what)) {
        takeDensity(state, *density, fact.at);
    } else if (const auto* boiled = std::get_if<WaterCheck>(&fact.what)) {
        takeWater(state, *boiled, fact.at);
    } else if (std::holds_alternative<DrawOpened>(fact.what)) {
        if (openings_[0] != state.course.openedAt) {
            std::shift_right(openings_.begin(), openings_.end(), 1);
            openings_[0] = state.course.openedAt;
        }
    } else if (std::holds_alternative<PanSwapped>(fact.what)) {
        belief_.swapPan();
        untold_ = {};
        same_ = {};
        lean_ = slip_ = 0;
        creep_.forget();
        checks_ = 0;
        learntAt_.reset();
        doubted_.reset();
    }
    if (const auto water = state.weather.boiling(fact.at)) {
        if (onWaterCheck_ == water->pressure.has_value())
            creep_.forget();
        onWaterCheck_ = !water->pressure;
    }
}

// A pressure that no weather makes here puts water's boiling point off by as much as the height is worth, and the mark
// with it, until a check tells.
void Mark::watchHeight(const State& state, Instant at) {
    const bool was = otherHeight_;
    const auto water = state.weather.boiling(at);
    otherHeight_ = water && water->doubted;
    const auto elevation = state.settings.elevation();
    if (!otherHeight_ || was || !elevation)
        return;
    const auto here = boilingBand(*elevation), atSea = boilingBand(Length::metre(0));
    if (here && atSea)
        belief_.widen(std::abs((atSea->usual - here->usual).kelvin()) / 2);
}

// A probe that leapt, or another in its place, is off by as much more as it leapt. If it leaps back, nothing was.
void Mark::followLeap(const State& state, const Fact& fact) {
    const Probe* probe = state.sensors.of(Series::syrup_pan).active(fact.at);
    const auto leap = probe ? probe->leap() : std::nullopt;
    if (leap && leap->at != leaptAt_) {
        if (!leaptAt_)
            beforeLeap_ = belief_;
        belief_.widen(std::abs(leap->by));
        creep_.forget();
        trace_ = {};
        leaptAt_ = leap->at;
    } else if (!leap && leaptAt_) {
        if (std::holds_alternative<Reading>(fact.what)) {
            belief_ = *beforeLeap_;
            trace_ = {};
        }
        beforeLeap_.reset();
        leaptAt_.reset();
    }
}

// In steps, so that not every reading moves the mark by a hair.
void Mark::creep(Instant at) {
    if (!learntAt_ || secondsBetween(*learntAt_, at) > creepFor)
        return;
    const double since = secondsBetween(std::max(*learntAt_, creptAt_.value_or(*learntAt_)), at);
    if (since < creepStep)
        return;
    const auto seen = creep_.perHour();
    belief_.creep(seen.value_or(creepPerHour) * since / 3600);
    if (seen) // nothing says that it goes on so
        belief_.widen(*seen * since / 3600 / 2);
    creptAt_ = at;
}

void Mark::takeWater(const State& state, const WaterCheck& check, Instant at) {
    const auto water = state.weather.boiling(at);
    if (!state.weather.isNewCheck() || !water || !water->pressure)
        return;
    // Another thermometer in boiling water says nothing of the one in the pan.
    const Probe* pan = state.sensors.of(Series::syrup_pan).active(at);
    if (!check.probe.empty() && pan && !pan->name().empty() && pan->name() != check.probe)
        return;
    const double seen = (check.boiledAt.value - water->waterBoils).kelvin();
    const double variance = square(waterCheckSd) + square(water->uncertainty().kelvin());
    const MarkBelief::Weights weights = {1, -1, 0, 0};
    if (belief_.surprise(weights, seen, variance) > MarkBelief::outlier) {
        // One look may be at water that did not boil; a second that says the same is no slip: then both count.
        if (!doubted_ || !MarkBelief::bearsOut(*doubted_, seen, seen - belief_.off(weights, seen))) {
            doubted_ = seen;
            return;
        }
        belief_.doubtProbe();
    }
    doubted_.reset();
    belief_.learn(weights, seen, variance);
}

TemperatureDifference Mark::offsetSd(Instant now) const {
    MarkBelief aged = belief_;
    aged.age(lastAged_ ? secondsBetween(*lastAged_, now) : 0);
    const double unchecked = learntAt_ ? uncheckedPerHour * std::max(0.0, secondsBetween(*learntAt_, now)) / 3600 : 0;
    const double crept = creep_.leaves(aged.offset(onWaterCheck_), now);
    return TemperatureDifference::kelvin(
        std::sqrt(aged.variance(onWaterCheck_) + untold_.common() + square(slip_) + square(unchecked) + crept));
}

double Mark::sdAfterCheck(Instant now) const {
    MarkBelief then = belief_;
    then.age(lastAged_ ? secondsBetween(*lastAged_, now) : 0);
    constexpr double hotCup = 0.25 * 0.23; // scatter of a careful check in a hot cup, K
    then.learn(MarkBelief::ofCheck(onWaterCheck_, MarkBelief::hydrometer), 0, square(hotCup));
    return std::sqrt(then.variance(onWaterCheck_));
}

void Mark::show(const State& state, Instant now, Picture& picture) const {
    picture.probeOffset = offset(now);
    picture.checks = checks_;
    picture.questionedChecks = questioned_;
    picture.lastCheck = learntAt_;
    picture.check = came_;
    picture.markCrept = creep_.crept();
    const auto water = state.weather.boiling(now);
    if (!water) {
        for (const auto field : {Shown::riseC, Shown::targetRiseC, Shown::targetC, Shown::brix})
            picture.why.push_back({field, state.weather.why()});
        return;
    }
    picture.targetRise = water->targetRise;
    picture.legalRise = boilingRise(state.settings.legalMinimum(), water->forModel);
    picture.heavyRise = boilingRise(state.settings.tooHeavy(), water->forModel);
    if (picture.targetRise) {
        const auto with = [&](double sd) {
            return TemperatureDifference::kelvin(std::hypot(sd, water->uncertainty().kelvin()));
        };
        picture.target = water->waterBoils + *picture.targetRise + picture.probeOffset;
        picture.targetUncertainty = with(offsetSd(now).kelvin());
        picture.targetUncertaintyAfterCheck = with(sdAfterCheck(now));
    }
    // What is read on the bench, or in the other pan, has no rise here; so near boiling water none says how sweet it
    // is.
    const Reason reason = state.sensors.of(Series::syrup_pan).reason(now);
    if (reason == Reason::outOfPan || reason == Reason::plugsExchanged) {
        for (const Shown field : {Shown::riseC, Shown::brix})
            picture.why.push_back({field, Reason::panReadingDoubtful});
    } else if (picture.syrupPan) {
        picture.rise = *picture.syrupPan - picture.probeOffset - water->waterBoils;
        picture.brix = sugarAtRise(*picture.rise, water->forModel);
        if (const auto followed = state.forecast.sugar(now); followed && picture.brix)
            picture.brix = followed;
        const double least = std::max(leastTold, state.mark.offsetSd(now).kelvin());
        if (picture.brix && picture.rise->kelvin() < least) {
            picture.brix.reset();
            picture.why.push_back({Shown::brix, Reason::nearWater});
            return;
        }
        if (!picture.brix)
            picture.why.push_back(
                {Shown::brix, picture.rise->kelvin() > leastTold ? Reason::pastTables : Reason::notBoiling});
    } else {
        for (const auto field : {Shown::riseC, Shown::brix})
            picture.why.push_back({field, Reason::noPanReading});
    }
}

} // namespace panside
