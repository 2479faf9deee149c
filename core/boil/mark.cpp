#include "core/boil/mark.h"

#include "core/boil/height.h"
#include "core/boil/law_rules.h"
#include "core/boil/square.h"
#include "core/boil/state.h"
#include "core/physics/sugar.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

constexpr double waterCheckSd = 0.07; // K, a careful look at water at a full boil
constexpr double same = 0.2;          // K between two checks that bear each other out
constexpr double outlier = 3.5;       // standard deviations off: questioned
constexpr double far = 2;             // from here on a check counts less and less
constexpr double slow = 20;           // seconds between readings
constexpr double drifts = 0.003;      // K a second that a reading may move while nobody reads it: a draw is on
constexpr double dipSeconds = 15;     // between the moment noted and the one the sample was taken in
constexpr double readingSd = 0.045;   // K, of the smoothed reading that a check is held against
// What is in the cup the probe shows so much later: a probe in its pocket follows the pan some 8 s behind (common
// practice, no source). In a draw that thins by a kelvin a minute that is 0.13 K.
constexpr std::chrono::seconds cupLag{8};
// A cup is dipped, carried, read and typed: where nobody said when it was dipped, so many seconds before (common
// practice, no source), and how likely.
struct SampleAge {
    double seconds, share;
};
constexpr std::array<SampleAge, 5> sampleAges{{{25, 0.15}, {45, 0.25}, {65, 0.25}, {85, 0.2}, {110, 0.15}}};
// What stood at the probe while nobody looked at it is told by the model: in each cup alike, and it errs by so much
// (measured on another plant's boils, read each five minutes).
constexpr double unreadSd = 0.18;  // K
constexpr double leastTold = 0.15; // K over boiling water: under it what boils may be plain water
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

// What is in doubt no check is held against. Kelvin over boiling water, as it came: the sensor's filter would carry a
// slope across a draw.
std::optional<double> believed(const State& state, Instant at) {
    const Sensor& sensor = state.sensors.of(Series::syrup_pan);
    const auto water = state.weather.boiling(at);
    const auto pan = sensor.value(at);
    if (!water || !pan || pan->at != at || sensor.trust(at) != Trust::good)
        return std::nullopt;
    return pan->sample - water->waterBoils.kelvin();
}

} // namespace

void Mark::absorb(const State& state, const Fact& fact) {
    // Belief sampleAges by the clock of the facts.
    belief_.age(lastAged_ ? secondsBetween(*lastAged_, fact.at) : 0);
    lastAged_ = fact.at;
    creep(fact.at);
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
        }
    } else if (const auto* density = std::get_if<DensityCheck>(&fact.what)) {
        takeDensity(state, *density, fact.at);
    } else if (const auto* boiled = std::get_if<WaterCheck>(&fact.what)) {
        takeWater(state, *boiled, fact.at);
    } else if (std::holds_alternative<PanSwapped>(fact.what)) {
        belief_.swapPan();
        untold_ = {};
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
    otherHeight_ = water && water->pressure &&
                   (state.sensors.of(Series::pressure).reason(at) == Reason::otherHeight ||
                    (!state.sensors.of(Series::pressure).lastRead() &&
                     state.sensors.of(Series::sea_level_pressure).reason(at) == Reason::otherHeight));
    const auto elevation = state.settings.elevation();
    if (!otherHeight_ || was || !elevation)
        return;
    const auto here = boilingBand(*elevation), atSea = boilingBand(Length::metre(0));
    if (here && atSea)
        belief_.widen(std::abs((atSea->usual - here->usual).kelvin()) / 2);
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
    if (!state.weather.isNewCheck() || !water || !water->pressure)
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

// Between readings by hand the pan climbs on: the last one before a draw is too low for the syrup in the cup.
std::optional<Mark::Read> Mark::readAt(const State& state, Instant taken, Pressure pressure) const {
    const double away = trace_.away(taken);
    if (away > slow)
        if (const auto expected = state.forecast.expected(taken, pressure))
            return Read{expected->kelvin, std::hypot(expected->sd, unreadSd), square(unreadSd)};
    const auto read = trace_.smooth(std::min(state.now, taken + cupLag), state.course.openedAt);
    if (!read)
        return std::nullopt;
    return Read{*read, std::hypot(drifts * away, readingSd)};
}

// The sample is older than its row, nobody knows by how much: the mean of what it may have been, and how far apart.
std::optional<Mark::Read> Mark::readBefore(const State& state, Instant at, Pressure pressure) const {
    double share = 0, mean = 0, square2 = 0, variance = 0, unread = 0;
    for (const SampleAge& age : sampleAges) {
        const auto read =
            readAt(state, at - std::chrono::round<std::chrono::microseconds>(Duration{age.seconds}), pressure);
        if (!read)
            continue;
        share += age.share;
        mean += age.share * read->kelvin;
        square2 += age.share * square(read->kelvin);
        variance += age.share * square(read->sd);
        unread += age.share * read->alike;
    }
    if (share <= 0)
        return readAt(state, at, pressure);
    mean /= share;
    const double byAge = std::max(0.0, square2 / share - square(mean));
    return Read{mean, std::sqrt(variance / share + byAge), byAge + unread / share};
}

void Mark::Untold::add(double by, double byAge) {
    ofAll += by;
    weight += byAge > 0 ? by : 0;
    variance += by * byAge;
}

double Mark::Untold::common() const {
    constexpr double alike = 0.7;       // of the variance of all cups' ages, that is from crew to crew (no source)
    constexpr double before = 1 / 0.09; // what was known before any check: 0.3 K
    return weight > 0 ? alike * variance / weight * square(weight / (ofAll + before)) : 0;
}

namespace {

bool isLight(CheckWeight weight) {
    return weight == CheckWeight::underLegal || weight == CheckWeight::perhapsUnderLegal;
}
// A chart of the law decides, where the person set no least of their own.
bool isLegalHere(const Settings& settings, const DensityCheck& check) {
    const PlaceLaw* law = settings.wasSet(Setting::legal_minimum) ? nullptr : settings.law();
    return law && isLegalByChart(check, *law);
}

} // namespace

void Mark::takeDensity(const State& state, const DensityCheck& check, Instant at) {
    if (!repeated_.isFirst(check, at))
        return;
    const auto sugar = sugarOf(check, state.settings.targetDensity());
    came_ = CheckPicture{.at = at, .fate = CheckFate::unreadable};
    if (sugar) {
        const double before = belief_.offset(onWaterCheck_);
        came_->sugar = sugar->sugar;
        came_->error = Brix::degrees(std::hypot(glassBrix, sugar->scatter.degrees()));
        came_->remark = sugar->remark;
        came_->weight = weightOf(state.settings, sugar->sugar.degrees(), came_->error.degrees());
        if (isLight(came_->weight) && isLegalHere(state.settings, check))
            came_->weight = CheckWeight::right;
        came_->fate = learn(state, check, *sugar, at);
        came_->moved = TemperatureDifference::kelvin(belief_.offset(onWaterCheck_) - before);
    }
    if (came_->fate == CheckFate::unreadable || came_->fate == CheckFate::doubted)
        ++questioned_;
}

CheckFate Mark::learn(const State& state, const DensityCheck& check, const CheckedSugar& sugar, Instant at) {
    const auto water = state.weather.boiling(at);
    if (!water)
        return CheckFate::unplaced;
    const Instant taken = std::min(at, check.drawn.value_or(at));
    const auto read = check.drawn ? readAt(state, taken, water->forModel) : readBefore(state, at, water->forModel);
    if (!read)
        return CheckFate::unplaced;
    const auto rise = boilingRise(sugar.sugar, water->forModel);
    if (!rise)
        return CheckFate::unreadable;
    const double seen = read->kelvin - rise->kelvin();
    const double lag = check.drawn ? trace_.moved(taken) * dipSeconds / 60 : 0;
    double variance =
        square(sugar.scatter.degrees() * slopeAt(sugar.sugar, water->forModel)) + square(lag) + square(read->sd);
    came_->apart = TemperatureDifference::kelvin(seen);
    came_->apartSd = TemperatureDifference::kelvin(std::sqrt(variance));
    const auto weights = weightsOf(!water->pressure, check.with);
    const double surprise = belief_.surprise(weights, seen, variance);
    if (surprise > outlier) {
        // A second one that says the same is no slip: then the belief was wrong.
        if (!doubted_ || std::abs(*doubted_ - seen) > same) {
            doubted_ = seen;
            // Two that contradict each other: either may be the slip, the more so the fewer there were before.
            belief_.widen(std::abs(belief_.off(weights, seen)) / 2 / std::sqrt(std::max(1, checks_)));
            return CheckFate::doubted;
        }
        belief_.doubt();
    } else if (surprise > far) {
        // Half way to a contradiction: what it is over counts against the check, and against those few before it.
        const double over = square(belief_.off(weights, seen) / far) * (1 - square(far / surprise));
        const double before = checks_ > 0 ? over / (1 + checks_) : 0;
        belief_.widen(std::sqrt(before));
        variance += over - before;
    }
    doubted_.reset();
    belief_.learn(weights, seen, variance);
    untold_.add(1 / variance, read->alike);
    if (check.with == Instrument::hydrometer)
        creep_.addSample(seen);
    ++checks_;
    learntAt_ = at;
    return CheckFate::learnt;
}

TemperatureDifference Mark::offsetSd(Instant now) const {
    MarkBelief aged = belief_;
    aged.age(lastAged_ ? secondsBetween(*lastAged_, now) : 0);
    return TemperatureDifference::kelvin(std::sqrt(aged.variance(onWaterCheck_) + untold_.common()));
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
        for (const auto field : {Shown::riseC, Shown::targetRiseC, Shown::targetC, Shown::brix})
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
    // What is read on the bench has no rise; and so near boiling water none says how sweet it is.
    if (state.sensors.of(Series::syrup_pan).reason(now) == Reason::outOfPan) {
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
            picture.why.push_back({Shown::brix, Reason::notBoiling});
    } else {
        for (const auto field : {Shown::riseC, Shown::brix})
            picture.why.push_back({field, Reason::noPanReading});
    }
}

} // namespace panside
