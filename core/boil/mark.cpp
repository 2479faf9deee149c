#include "core/boil/mark.h"

#include "core/boil/square.h"
#include "core/boil/state.h"
#include "core/physics/sugar.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double waterCheckSd = 0.07; // K, a careful look at water at a full boil
constexpr double same = 0.2;          // K between two checks that bear each other out
constexpr double twiceWithin = 600;   // seconds in which the same figures are one check entered twice
constexpr double outlier = 3.5;       // standard deviations off: questioned
constexpr double far = 2;             // from here on a check counts less and less
constexpr double slow = 20;           // seconds between readings
constexpr double drifts = 0.003;      // K a second that a reading may move while nobody reads it: a draw is on
constexpr double dipSeconds = 15;     // between the moment noted and the one the sample was taken in
constexpr double readingSd = 0.045;   // K, of the smoothed reading that a check is held against
// The reading at which syrup is reached creeps up by tenths of a kelvin in a boil, as scale grows (common practice, no
// source). Counted from a check on, for as long as one can be believed to stand for the pan.
constexpr double creepPerHour = 0.015, creepStep = 600, creepFor = 3 * 3600;

MarkBelief::Weights weightsOf(bool onWaterCheck, Instrument with) {
    MarkBelief::Weights weights{};
    weights[onWaterCheck ? MarkBelief::pan : MarkBelief::total] = 1;
    weights[with == Instrument::hydrometer ? MarkBelief::hydrometer : MarkBelief::refractometer] = 1;
    return weights;
}

// Kelvin a brix near a density.
double slopeAt(Brix sugar, Pressure pressure) {
    const auto over = boilingRise(sugar + Brix::degrees(0.5), pressure);
    const auto under = boilingRise(sugar - Brix::degrees(0.5), pressure);
    return over && under ? (*over - *under).kelvin() : 0.23;
}

CheckWeight weightOf(const Settings& settings, double brix, double deviation) {
    const double mayErr = 2 * deviation, legal = settings.legalMinimum().degrees();
    if (brix < legal)
        return brix < legal - mayErr ? CheckWeight::underLegal : CheckWeight::perhapsUnderLegal;
    if (brix > settings.tooHeavy().degrees() + mayErr)
        return CheckWeight::tooHeavy;
    const double over = brix - settings.targetDensity().degrees();
    return over < -mayErr ? CheckWeight::light : over > mayErr ? CheckWeight::heavy : CheckWeight::right;
}

} // namespace

void Mark::take(const State& state, const Fact& fact) {
    // Belief ages by the clock of the facts.
    belief_.age(lastAged_ ? secondsBetween(*lastAged_, fact.at) : 0);
    lastAged_ = fact.at;
    creep(fact.at);
    if (const auto* reading = std::get_if<Reading>(&fact.what)) {
        if (reading->series == Series::syrup_pan)
            if (const auto water = state.weather.boiling(fact.at))
                if (const auto pan = state.sensors.of(Series::syrup_pan).value(fact.at); pan && pan->at == fact.at)
                    // As it came: the sensor's filter would carry a slope across a draw.
                    trace_.add(fact.at, pan->sample - water->waterBoils.kelvin());
    } else if (const auto* set = std::get_if<Set>(&fact.what)) {
        if (set->key == Setting::probe_offset || set->key == Setting::probe_offset_sd)
            belief_.start(state.settings.probeOffset().kelvin(), state.settings.probeOffsetSd().kelvin());
    } else if (const auto* density = std::get_if<DensityCheck>(&fact.what)) {
        takeDensity(state, *density, fact.at);
    } else if (const auto* boiled = std::get_if<WaterCheck>(&fact.what)) {
        takeWater(state, *boiled, fact.at);
    } else if (std::holds_alternative<PanSwapped>(fact.what)) {
        belief_.swapPan();
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

// In steps, so that not every reading moves the mark by a hair.
void Mark::creep(Instant at) {
    if (!learntAt_ || secondsBetween(*learntAt_, at) > creepFor)
        return;
    const double since = secondsBetween(std::max(*learntAt_, creptAt_.value_or(*learntAt_)), at);
    if (since < creepStep)
        return;
    belief_.creep(creepPerHour * since / 3600);
    creptAt_ = at;
}

void Mark::takeWater(const State& state, const WaterCheck& check, Instant at) {
    const auto water = state.weather.boiling(at);
    if (!water || !water->pressure)
        return;
    // Another thermometer in boiling water says nothing of the one in the pan.
    const Probe* pan = state.sensors.of(Series::syrup_pan).active(at);
    if (!check.probe.empty() && pan && !pan->name().empty() && pan->name() != check.probe)
        return;
    const double seen = (check.boiledAt.value - water->waterBoils).kelvin();
    const double variance = square(waterCheckSd) + square(water->uncertainty.kelvin());
    const MarkBelief::Weights weights = {1, -1, 0, 0};
    if (belief_.surprise(weights, seen, variance) > outlier) {
        // One look may be at water that did not boil; a second that says the same is no slip: then both count.
        if (!doubted_ || std::abs(*doubted_ - seen) > same) {
            doubted_ = seen;
            return;
        }
        belief_.learn(weights, *doubted_, variance);
    }
    doubted_.reset();
    belief_.learn(weights, seen, variance);
}

bool Mark::entersTwice(const DensityCheck& check, Instant at) {
    const bool same = last_ && *last_ == check && secondsBetween(*lastAt_, at) < twiceWithin;
    last_ = check;
    if (!same)
        lastAt_ = at;
    return same;
}

// Between readings by hand the pan climbs on: the last one before a draw is too low for the syrup in the cup.
std::optional<Mark::Read> Mark::readAt(const State& state, Instant taken, Pressure pressure) const {
    const double away = trace_.away(taken);
    if (away > slow)
        if (const auto expected = state.forecast.expected(taken, pressure))
            return Read{expected->kelvin, std::hypot(expected->sd, readingSd)};
    const auto read = trace_.smooth(taken);
    if (!read)
        return std::nullopt;
    return Read{*read, std::hypot(drifts * away, readingSd)};
}

void Mark::takeDensity(const State& state, const DensityCheck& check, Instant at) {
    if (entersTwice(check, at))
        return;
    const auto sugar = sugarOf(check, state.settings.targetDensity());
    came_ = CheckPicture{.at = at, .fate = CheckFate::unreadable};
    if (sugar) {
        const double before = belief_.offset(onWaterCheck_);
        came_->sugar = sugar->sugar;
        came_->error = Brix::degrees(std::hypot(glassBrix, sugar->scatter.degrees()));
        came_->weight = weightOf(state.settings, sugar->sugar.degrees(), came_->error.degrees());
        came_->fate = learn(state, check, *sugar, at);
        came_->moved = TemperatureDifference::kelvin(belief_.offset(onWaterCheck_) - before);
    }
    if (came_->fate == CheckFate::unreadable || came_->fate == CheckFate::doubted)
        ++questioned_;
}

CheckFate Mark::learn(const State& state, const DensityCheck& check, const CheckedSugar& sugar, Instant at) {
    const auto water = state.weather.boiling(at);
    const Instant taken = std::min(at, check.drawn.value_or(at));
    if (!water)
        return CheckFate::unplaced;
    const auto read = readAt(state, taken, water->forModel);
    if (!read)
        return CheckFate::unplaced;
    const auto rise = boilingRise(sugar.sugar, water->forModel);
    if (!rise)
        return CheckFate::unreadable;
    const double seen = read->kelvin - rise->kelvin();
    const double lag = trace_.moved(taken) * dipSeconds / 60 + (check.drawn ? 0 : 0.5 * trace_.moved(at));
    double variance =
        square(sugar.scatter.degrees() * slopeAt(sugar.sugar, water->forModel)) + square(lag) + square(read->sd);
    const auto weights = weightsOf(!water->pressure, check.with);
    const double surprise = belief_.surprise(weights, seen, variance);
    if (surprise > outlier) {
        // A second one that says the same is no slip: then the belief was wrong.
        if (!doubted_ || std::abs(*doubted_ - seen) > same) {
            doubted_ = seen;
            return CheckFate::doubted;
        }
        belief_.doubt();
    } else if (surprise > far) {
        variance *= square(surprise / far);
    }
    doubted_.reset();
    belief_.learn(weights, seen, variance);
    if (check.with == Instrument::hydrometer)
        creep_.take(seen);
    ++checks_;
    learntAt_ = at;
    return CheckFate::learnt;
}

TemperatureDifference Mark::offsetSd(Instant now) const {
    MarkBelief aged = belief_;
    aged.age(lastAged_ ? secondsBetween(*lastAged_, now) : 0);
    return TemperatureDifference::kelvin(std::sqrt(aged.variance(onWaterCheck_)));
}

double Mark::sdAfterCheck(Instant now) const {
    MarkBelief then = belief_;
    then.age(lastAged_ ? secondsBetween(*lastAged_, now) : 0);
    constexpr double hotCup = 0.25 * 0.23; // scatter of a careful check in a hot cup, K
    then.learn(weightsOf(onWaterCheck_, Instrument::hydrometer), 0, square(hotCup));
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
        for (const auto* field : {"riseC", "targetRiseC", "targetC", "brix"})
            picture.why.push_back({field, state.weather.why()});
        return;
    }
    picture.targetRise = boilingRise(state.settings.targetDensity(), water->forModel);
    picture.legalRise = boilingRise(state.settings.legalMinimum(), water->forModel);
    picture.heavyRise = boilingRise(state.settings.tooHeavy(), water->forModel);
    if (picture.targetRise) {
        const auto with = [&](double sd) {
            return TemperatureDifference::kelvin(std::hypot(sd, water->uncertainty.kelvin()));
        };
        picture.target = water->waterBoils + *picture.targetRise + picture.probeOffset;
        picture.targetUncertainty = with(offsetSd(now).kelvin());
        picture.targetUncertaintyAfterCheck = with(sdAfterCheck(now));
    }
    if (picture.syrupPan) {
        picture.rise = *picture.syrupPan - picture.probeOffset - water->waterBoils;
        picture.brix = sugarAtRise(*picture.rise, water->forModel);
        if (const auto followed = state.forecast.sugar(now); followed && picture.brix)
            picture.brix = followed;
        if (!picture.brix)
            picture.why.push_back({"brix", Reason::notBoiling});
    } else {
        for (const auto* field : {"riseC", "brix"})
            picture.why.push_back({field, Reason::noPanReading});
    }
}

} // namespace panside
