// A density check: what stood at the probe when its cup was dipped, whether it can be believed, and what it teaches.
#include "core/boil/law_rules.h"
#include "core/boil/mark.h"
#include "core/boil/square.h"
#include "core/boil/state.h"
#include "core/physics/sugar.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

constexpr double far = 2;     // from here on a check counts less and less
constexpr double mostOff = 3; // K: no sound thermometer reads further off (IEC 60584-1, class 2: 2.5 K)
// Each ohm of lead puts a Pt100 of two wires 2.6 K high, and none puts it low (IEC 60751: 0.385 ohm a kelvin). What two
// checks read as syrup was drawn as syrup: then it is no slip of either.
constexpr double asSyrup = 4;       // brix from the density wanted
constexpr double hotCup = 60;       // degC
constexpr double leans = 1.1;       // standard deviations, over some checks: what is measured moves
constexpr double slow = 20;         // seconds between readings
constexpr double drifts = 0.003;    // K a second that a reading may move while nobody reads it: a draw is on
constexpr double dipSeconds = 15;   // between the moment noted and the one the sample was taken in
constexpr double readingSd = 0.045; // K, of the smoothed reading that a check is held against
// A boil stirs a reading by hundredths of a kelvin at the least (common practice, no source): one that is smoother is
// damped, deep in its pocket or in its own sums, and follows by anything up to a minute and more. One that is read
// seldom may be a mean of what lies between.
constexpr double smooth = 0.008, dampedLag = 45; // K, s
// A cup is dipped, carried, read and typed: where nobody said when it was dipped, so many seconds before (common
// practice, no source), and how likely.
struct SampleAge {
    double seconds, share;
};
constexpr std::array<SampleAge, 5> sampleAges{{{25, 0.15}, {45, 0.25}, {65, 0.25}, {85, 0.2}, {110, 0.15}}};
// What stood at the probe while nobody looked at it is told by the model: in each cup alike, and it errs by so much
// (measured on another plant's boils, read each five minutes).
constexpr double unreadSd = 0.18; // K

MarkBelief::Weights weightsOf(bool onWaterCheck, Instrument with) {
    return MarkBelief::ofCheck(onWaterCheck,
                               with == Instrument::hydrometer ? MarkBelief::hydrometer : MarkBelief::refractometer);
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

bool isLight(CheckWeight weight) {
    return weight == CheckWeight::underLegal || weight == CheckWeight::perhapsUnderLegal;
}
// A chart of the law decides, where the person set no least of their own.
bool isLegalHere(const Settings& settings, const DensityCheck& check) {
    const PlaceLaw* law = settings.wasSet(Setting::legal_minimum) ? nullptr : settings.law();
    return law && isLegalByChart(check, *law);
}

// No probe is so far off; one that was seen to be in water is expected to.
bool isImpossible(double seen, double off) { return std::abs(seen) > mostOff && std::abs(off) > mostOff / 3; }

} // namespace

// Between readings by hand the pan climbs on: the last one before a draw is too low for the syrup in the cup.
std::optional<Mark::Read> Mark::readAt(const State& state, Instant taken, Pressure pressure) const {
    const double away = trace_.away(taken);
    // Where its probe is in doubt nobody knows what stood there: what the model goes on from is old.
    const Sensor& sensor = state.sensors.of(Series::syrup_pan);
    if (away > slow && sensor.trust(state.now) == Trust::doubtful && !sensor.byHand(state.now))
        return std::nullopt;
    if (away > slow)
        if (const auto expected = state.forecast.expected(taken, pressure))
            return Read{expected->rise.kelvin(), std::hypot(expected->sd.kelvin(), unreadSd), square(unreadSd)};
    const Instant shown = std::min(state.now, taken + probeLag);
    const auto draw = std::ranges::find_if(
        openings_, [&](const auto& opened) { return opened && *opened < shown + PanTrace::bendsOver; });
    const auto read = trace_.smooth(shown, draw != openings_.end() ? *draw : std::nullopt);
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
    constexpr double alike = 0.7; // of the variance of all cups' ages, that is from crew to crew (no source)
    constexpr double before = 1 / square(uncheckedSd); // what was known before any check
    return weight > 0 ? alike * variance / weight * square(weight / (ofAll + before)) : 0;
}

void Mark::takeDensity(const State& state, const DensityCheck& check, Instant at) {
    if (!repeated_.isFirst(check, at))
        return;
    const auto sugar = sugarOf(check, state.settings.targetDensity());
    came_ = CheckPicture{.at = at, .fate = CheckFate::unreadable};
    if (sugar) {
        const double before = belief_.offset(onWaterCheck_);
        came_->sugar = sugar->sugar;
        came_->error = Brix::degrees(std::hypot(glassError.degrees(), sugar->scatter.degrees()));
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

// A glass of another scale is off by the same each time: it bears itself out, and not the probe. What the check would
// be if it were read so, where that fits.
CheckRemark Mark::slipOf(const State& state, const DensityCheck& check, double kelvin, double variance,
                         double surprise) const {
    const auto water = state.weather.boiling(state.now);
    const auto fits = [&](const DensityCheck& other, Brix wanted) {
        const auto sugar = sugarOf(other, wanted);
        const auto rise = sugar ? boilingRise(sugar->sugar, water->forModel) : std::nullopt;
        return rise && belief_.surprise(weightsOf(!water->pressure, check.with), kelvin - rise->kelvin(), variance) <
                           std::min(MarkBelief::outlier, surprise / 2);
    };
    if (!water || check.with != Instrument::hydrometer || check.unit != Unit::brix)
        return CheckRemark::none;
    DensityCheck other = check;
    other.unit = Unit::baume;
    if (fits(other, state.settings.targetDensity()))
        return CheckRemark::inBaume;
    other = check;
    other.cup.reset();
    const bool hot = check.cup && check.cup->value.celsius() > hotCup;
    return hot && fits(other, Brix::degrees(check.reading)) ? CheckRemark::hotScale : CheckRemark::none;
}

// Far off what is believed: a slip, or was the belief wrong?
bool Mark::isDisbelieved(const State& state, const DensityCheck& check, Brix sugar, const Read& read, double seen,
                         double variance) {
    const auto weights = weightsOf(onWaterCheck_, check.with);
    const double off = belief_.off(weights, seen);
    came_->remark =
        std::max(came_->remark, slipOf(state, check, read.kelvin, variance, belief_.surprise(weights, seen, variance)));
    // A figure of the Baumé scale is no syrup in Brix; but which is off, a hot glass or the probe?
    if (came_->remark == CheckRemark::inBaume)
        return true;
    const bool isSyrup = std::abs((sugar - state.settings.targetDensity()).degrees()) <= asSyrup;
    const bool impossible = isImpossible(seen, off), byWires = seen > 0 && isSyrup;
    if (came_->remark == CheckRemark::hotScale || (impossible && !byWires)) {
        slip_ = std::abs(off) / 2;
        return true;
    }
    // A second one that says the same is no slip: then the belief was wrong.
    if (doubted_ && MarkBelief::bearsOut(*doubted_, seen, seen - off))
        return false;
    doubted_ = seen;
    if (impossible) {
        slip_ = std::abs(off) / 2;
        return true;
    }
    // Two that contradict each other: either may be the slip, the more so the fewer there were before.
    belief_.widen(std::abs(off) / 2 / std::sqrt(std::max(1, checks_)));
    return true;
}

// By how much a probe that lags may show another liquid than the cup's, kelvin; the same with each cup.
double Mark::fallsBehind(const State& state, Instant taken) const {
    const Probe* probe = state.sensors.of(Series::syrup_pan).active(state.now);
    if (!probe || probe->byHand())
        return 0;
    const double spacing = probe->spacing();
    const double lag = spacing > slow ? spacing / 2 : probe->noise() < smooth ? dampedLag : 0;
    const Instant later = std::min(state.now, taken + std::chrono::seconds{60});
    return lag * std::max(std::abs(trace_.slope(taken)), std::abs(trace_.slope(later)));
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
    const double dip = check.drawn ? trace_.slope(taken) * dipSeconds : 0;
    const double behind = fallsBehind(state, taken);
    double variance = square(sugar.scatter.degrees() * slopeAt(sugar.sugar, water->forModel)) + square(dip) +
                      square(behind) + square(read->sd);
    came_->apart = TemperatureDifference::kelvin(seen);
    came_->apartSd = TemperatureDifference::kelvin(std::sqrt(variance));
    if (isOfNoPan(sugar.sugar.degrees(), seen, variance, at))
        return CheckFate::doubted;
    const auto weights = weightsOf(!water->pressure, check.with);
    const double surprise = belief_.surprise(weights, seen, variance);
    if (surprise > MarkBelief::outlier || isImpossible(seen, belief_.off(weights, seen))) {
        if (isDisbelieved(state, check, sugar.sugar, *read, seen, variance))
            return CheckFate::doubted;
        belief_.doubt();
    } else if (surprise > far) {
        // Half way to a contradiction: what it is over counts against the check, and against those few before it.
        const double over = square(belief_.off(weights, seen) / far) * (1 - square(far / surprise));
        const double before = checks_ > 0 ? over / (1 + checks_) : 0;
        belief_.widen(std::sqrt(before));
        variance += over - before;
    }
    doubted_.reset();
    slip_ = 0;
    lean(belief_.off(weights, seen), belief_.spread(weights, variance));
    belief_.learn(weights, seen, variance);
    untold_.add(1 / variance, read->alike + square(behind));
    if (check.with == Instrument::hydrometer)
        creep_.addSample(at, seen, std::sqrt(variance));
    ++checks_;
    learntAt_ = at;
    return CheckFate::learnt;
}

// What the same sample taught before it was seen through is taken back: as if nobody had checked.
bool Mark::isOfNoPan(double brix, double seen, double variance, Instant at) {
    if (same_.isOther(brix))
        beforeSame_ = Before{belief_, untold_, checks_, learntAt_, at};
    same_.addSample(brix, seen, variance);
    if (beforeSame_ && !same_.isNotThePans())
        return false;
    if (beforeSame_) {
        belief_ = beforeSame_->belief;
        belief_.age(secondsBetween(beforeSame_->at, at));
        untold_ = beforeSame_->untold;
        checks_ = beforeSame_->checks;
        learntAt_ = beforeSame_->learntAt;
        creep_.forget();
        lean_ = slip_ = 0;
        doubted_.reset();
        beforeSame_.reset();
    }
    return true;
}

// Checks that keep to one side tell of a mark that moves faster than marks do: a lead that creeps. What was believed is
// to give way the faster.
void Mark::lean(double off, double sd) {
    lean_ += 0.4 * (std::clamp(off / sd, -3.0, 3.0) - lean_);
    if (std::abs(lean_) < leans)
        return;
    belief_.widen(std::abs(lean_) * sd);
    lean_ = 0;
}

} // namespace panside
