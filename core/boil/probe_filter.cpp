// One probe's samples: gate against spikes, follow value and slope, watch silence and the last digit.
#include "core/boil/sensor.h"

#include "core/quantity/unit.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double shortestSilence = 10, implausibleFor = 5;
// What stands at a probe in its pocket changes within its lag, of seconds at the least (common practice, no source):
// the greater part of a kelvin and more, from one second to the next, is none of the pan's doing. After a freeze, as
// syrup is drawn and soon after, or with hands at the pan, it may be; and so it may in a log that no boil has written.
constexpr double leastLeap = 1.2, leapsWithin = 3, shareAtOnce = 0.7, overBoiling = 0.8; // K, s, K
constexpr double frozenFor = 60, knownFor = 1800;                                        // s
constexpr double leastStir = 0.015, coldPan = 5;                                         // K
constexpr double slowly = 20;                                                            // seconds between samples
constexpr double farApart = 120; // s: in so long a liquid changes as it likes, and the next sample is as far away

// How a reading behaves: below which step nothing is called a spike, how fast it may move on its own (SI/s), how
// quickly its slope can bend (SI/s2), and after how many seconds what was typed in is doubtful. Sizes are common
// practice, no source: boiling stirs a pan reading by tenths, a door lets the stack fall by a hundred.
struct Manner {
    double smallestSpike, moves, bend, typedHoldsFor;
};
Manner mannerOf(Series series) {
    switch (series) {
    case Series::syrup_pan:
    case Series::flue_pan:
        return {0.6, 0.015, 2e-4, 1200};
    case Series::stack:
        return {40, 3, 0.15, 3600};
    case Series::feed:
        return {3, 0.05, 1e-2, 7200};
    case Series::air:
        return {2, 0.01, 1e-4, 14400};
    case Series::pressure:
    case Series::sea_level_pressure:
        return {100, 0.3, 2e-3, 14400};
    case Series::pan_level:
    case Series::flue_level:
        return {8e-3, 2e-4, 2e-6, 1800};
    case Series::tank_level:
        return {20e-3, 2e-3, 5e-7, 7200};
    case Series::feed_flow:
        return {50 / 3.6e6, 1e-5, 2e-7, 7200};
    case Series::filter_pressure:
        return {30e3, 5e3, 3e3, 600};
    }
    return {1, 1, 1, 3600};
}

bool wrongUnitLikely(const ReadingRow& row, double si, Unit unit) {
    if (si >= row.lowest && si <= row.highest)
        return false;
    const double number = fromSi(si, unit);
    for (const Unit other : {Unit::degC, Unit::degF, Unit::kPa, Unit::hPa, Unit::inHg})
        if (other != unit && takesUnit(row.series, other) && toSi(number, other) >= row.lowest &&
            toSi(number, other) <= row.highest)
            return true;
    return false;
}

} // namespace

Probe::Probe(std::string name, Series series)
    : name_{std::move(name)}, byHand_{name_ == "hand"}, typedHoldsFor_{mannerOf(series).typedHoldsFor} {}

Instant Probe::silentAt() const {
    // One sample tells no spacing: what was written down once may never have been a probe.
    const double usual = samples_ < 2 ? 300 : spacing();
    return *last_ + Duration{std::max(shortestSilence, 3 * usual)};
}

double Probe::noise() const { return std::sqrt(variance_); }

void Probe::countGap(Instant at) {
    if (last_ && samples_ > 0) {
        pauses_ = secondsBetween(*last_, at) >= putBy ? pauses_ + 1 : pauses_;
        gaps_[(samples_ - 1) % gapCount] = static_cast<float>(secondsBetween(*last_, at));
        auto gaps = gaps_;
        const auto count = std::min<std::size_t>(samples_, gapCount);
        const auto middle = gaps.begin() + static_cast<std::ptrdiff_t>(count / 2);
        std::nth_element(gaps.begin(), middle, gaps.begin() + static_cast<std::ptrdiff_t>(count));
        spacing_ = *middle;
    }
    ++samples_;
    last_ = at;
}

void Probe::addSample(const ReadingRow& row, double si, Unit unit, Instant at, const Around& around) {
    const bool gap = last_ && !byHand() && at >= silentAt();
    if (!last_)
        first_ = at;
    countGap(at);
    const bool hasDigits =
        row.series == Series::syrup_pan || row.series == Series::flue_pan || row.series == Series::stack;
    held_ = static_cast<float>(secondsBetween(digit_.unchangedSince(), at));
    if (hasDigits && !byHand())
        digit_.addSample(fromSi(si, unit), at, spacing(),
                         {around.boiling, around.othersMove && around.firing, row.series == Series::stack});
    height_ = around.height;
    heightSince_ = height_ != Reason::none ? std::optional{heightSince_.value_or(at)} : std::nullopt;
    if (si < row.lowest || si > row.highest) {
        refuse(wrongUnitLikely(row, si, unit) ? Reason::wrongUnit : Reason::outsidePhysics, si, at);
        return;
    }
    if (refusal_ == Reason::wrongUnit || refusal_ == Reason::outsidePhysics) {
        refusal_ = Reason::none;
        implausibleSince_.reset();
        pendings_ = 0;
    }
    if (!started_ || gap || byHand()) {
        start(row, si, 0, at);
        watchPan(row, unit, at, around);
        return;
    }
    const Manner manner = mannerOf(row.series);
    const double dt = secondsBetween(believedAt_, at);
    const double gate = std::max(manner.smallestSpike, 6 * noise()) + manner.moves * dt;
    const double onward = v_ * std::min(dt, 60.0);
    const double off = si - (x_ + onward);
    // What climbs to the boil stops there: read each minute, that is neither noise nor a spike, and no slope carries
    // on.
    const bool bends = dt > slowly && std::abs(off) > manner.smallestSpike && (si - x_) * off < 0;
    const bool spike = !bends && std::abs(off) > gate;
    spikes_ += ((spike ? 1.0F : 0.0F) - spikes_) / 20;
    if (jumping_ ? spikes_ < 0.1F : spikes_ > 0.35F) {
        jumping_ = !jumping_;
        jumpingSince_ = at;
    }
    if (spike)
        pend(row, si, at, gate, around);
    else if (bends)
        start(row, si, (si - x_) / dt, at);
    else
        follow(row, si, at, around);
    watchSteam(row, at, around);
    watchPan(row, unit, at, around);
}

// What stands in a pan over a fire cannot be far under boiling water.
void Probe::watchPan(const ReadingRow& row, Unit unit, Instant at, const Around& around) {
    if (believedAt_ != at || (row.series != Series::syrup_pan && row.series != Series::flue_pan))
        return;
    const Unit other = unit == Unit::degC ? Unit::degF : Unit::degC;
    underBoiling_.addSample(x_, toSi(fromSi(x_, unit), other), at, implausibleSince_.has_value(), around.pan);
}

// A probe that stands in foam or above the liquid reads steam, which is boiling water; one that touches the pan reads
// metal.
void Probe::watchSteam(const ReadingRow& row, Instant at, const Around& around) {
    if (row.series != Series::syrup_pan)
        return;
    constexpr double fallsWithin = 30, fallen = 120; // seconds
    constexpr double sinking = 0.08;                 // K a second
    constexpr double climbs = 0.25;                  // K: steam does not
    if (at < highFrom_) { // another liquid, or another place: what it read before is no measure
        high_ = highSince_ = highBefore_ = x_;
        return;
    }
    if (secondsBetween(highFrom_, at) > fallsWithin) {
        highBefore_ = secondsBetween(highFrom_, at) > 2 * fallsWithin ? x_ : highSince_;
        highSince_ = x_;
        highFrom_ = at;
    }
    highSince_ = std::max(highSince_, x_);
    high_ = std::max(highSince_, highBefore_);
    highest_ = std::max(highest_, std::min(highSince_, highBefore_));
    if (touchingSince_ && x_ < touchedFrom_ + 1.2)
        touchingSince_.reset();
    if (!around.waterBoils)
        return;
    const double rise = x_ - *around.waterBoils;
    const double steam = std::max(0.6, 0.2 * (high_ - *around.waterBoils)); // the filter is not down yet
    // A probe that sinks into foam falls faster than thin sap drawn forward can make it; what stood at it is gone
    // before it reads steam.
    const bool sinks = v_ < -sinking && high_ - x_ > 1 && spacing() < 5;
    if (!steamSince_ && !around.drawing && (sinks || (rise < steam && high_ - x_ > 1.5))) {
        steamSince_ = at;
        steamLow_ = rise;
    }
    steamLow_ = std::min(steamLow_, rise);
    const bool out = rise > std::max(1.0, steam) && v_ > -sinking / 2;
    const bool liquid = steamSince_ && rise > steamLow_ + climbs && secondsBetween(*steamSince_, at) > fallen;
    if (out || liquid || rise < -2)
        steamSince_.reset();
}

void Probe::seenByHand() {
    if (leap_) {
        leap_.reset();
        implausibleSince_.reset();
        refusal_ = Reason::none;
    }
    touchingSince_.reset();
    steamSince_.reset();
    highest_ = 0;
    highFrom_ = believedAt_ + std::chrono::seconds{60};
}

void Probe::refuse(Reason reason, double si, Instant at) {
    if (refusal_ != reason) {
        refusal_ = reason;
        pendingSince_ = at;
    }
    if (!implausibleSince_)
        implausibleSince_ = at;
    pending_[0] = {si, at};
}

// A sample that does not fit: a spike if the next ones go back, a new level if they stay for five seconds.
void Probe::pend(const ReadingRow& row, double si, Instant at, double gate, const Around& around) {
    if (pendings_ > 0 && std::abs(si - pending_[(pendings_ - 1) % pendCount].si) > 2 * gate)
        pendings_ = 0;
    if (pendings_ == 0) {
        pendingSince_ = at;
        pendedFirst_ = held_ > frozenFor ? x_ : si;
    }
    if (pendings_ == pendCount) {
        std::rotate(pending_.begin(), pending_.begin() + 1, pending_.end());
        --pendings_;
    }
    pending_[pendings_++] = {si, at};
    const double since = secondsBetween(pendingSince_, at);
    const bool tooFast =
        row.fastest > 0 &&
        std::abs(si - x_) > row.fastest * (implausibleFor + secondsBetween(believedAt_, pendingSince_));
    if (tooFast && !implausibleSince_) {
        implausibleSince_ = pendingSince_;
        refusal_ = Reason::tooFast;
    }
    const bool isSeldom = secondsBetween(believedAt_, at) >= farApart;
    if (isSeldom ? tooFast && pendings_ < 2 : pendings_ < 2 || since < implausibleFor)
        return;
    // Out of foam it comes back up from steam to where it was: that is no metal.
    if (row.series == Series::syrup_pan && !isSeldom && !steamSince_ && !underBoiling_.stands() && !exchangedSince_ &&
        si - x_ > 2.5 && si > high_ + 1.2 && si > highest_ + 0.8 && std::abs(v_) < 0.05) {
        touchingSince_ = pendingSince_;
        touchedFrom_ = x_;
    } else
        watchLeap(row, si, around);
    jump_ = {pendingSince_, x_, si};
    const Sample first = pending_[0];
    const double over = secondsBetween(first.at, at);
    const double slope = over > 0 ? (si - first.si) / over : 0;
    if (implausibleSince_)
        settledAt_ = at;
    start(row, si, row.fastest > 0 ? std::clamp(slope, -row.fastest, row.fastest) : 0, at);
}

void Probe::watchLeap(const ReadingRow& row, double si, const Around& around) {
    if (row.series != Series::syrup_pan || !around.waterBoils || touchingSince_)
        return;
    const double by = si - x_;
    const bool isAtOnce = std::abs(pendedFirst_ - x_) >= shareAtOnce * std::abs(by) &&
                          secondsBetween(believedAt_, pendingSince_) <= leapsWithin;
    const bool isKnown = secondsBetween(first_, pendingSince_) > knownFor && noise() > leastStir;
    if (leap_ && by * leap_->by < 0 && std::abs(by + leap_->by) < std::abs(leap_->by) / 2)
        leap_.reset();
    else if (std::abs(by) >= leastLeap && isAtOnce && isKnown && !around.handsAtPan && !steamSince_ &&
             std::min(x_, si) > *around.waterBoils + overBoiling)
        leap_ = Leap{pendingSince_, leap_ ? leap_->by + by : by};
    else
        return;
    implausibleSince_ = leap_ ? leap_->at : pendingSince_;
    refusal_ = Reason::tooFast;
}

void Probe::start(const ReadingRow& row, double si, double slope, Instant at) {
    started_ = true;
    x_ = si;
    v_ = slope;
    followed_ = 0;
    drift_ = 0;
    accepted_ = si;
    believedAt_ = startedAt_ = at;
    pendings_ = 0;
    const double guess = mannerOf(row.series).smallestSpike / 3;
    variance_ = std::max(variance_, guess * guess);
}

// An alpha-beta filter whose gains follow from the noise seen, the spacing and how quickly a slope can bend (the
// steady-state gains of Kalata, IEEE Trans. AES-20, 1984): slow samples pass nearly as they are, quick ones are
// smoothed.
void Probe::follow(const ReadingRow& row, double si, Instant at, const Around& around) {
    pendings_ = 0;
    if (leap_ && around.waterBoils && x_ < *around.waterBoils - coldPan)
        leap_.reset(); // another boil
    if (implausibleSince_ && !leap_ && secondsBetween(settledAt_, at) >= 30) {
        implausibleSince_.reset();
        refusal_ = Reason::none;
    }
    const double dt = secondsBetween(believedAt_, at);
    if (dt < 1e-3) {
        x_ += (si - x_) / 2; // two at one moment: neither is later
        return;
    }
    const Manner manner = mannerOf(row.series);
    const double least = manner.smallestSpike * manner.smallestSpike / 1e4;
    ++followed_;
    // Noise is what one sample differs from the one before, apart from the slope: the filter's own lag is no noise.
    const double step = si - accepted_ - v_ * dt;
    const double share = 1 / std::min(60.0, followed_ + 1.0);
    variance_ += share * (std::min(step * step / 2, 9 * std::max(variance_, 25 * least)) - variance_);
    accepted_ = si;
    const double sd = std::sqrt(std::max(variance_, least));
    const double error = si - (x_ + v_ * dt);
    // When the errors keep to one side the slope has changed: begin again with a short memory.
    drift_ += 0.3 * (std::clamp(error / sd, -6.0, 6.0) - drift_);
    if (std::abs(drift_) > 1.8 && followed_ > 5) {
        followed_ = 5;
        drift_ = 0;
    }
    const double lambda = manner.bend * dt * dt / sd;
    const double root = (4 + lambda - std::sqrt(8 * lambda + lambda * lambda)) / 4;
    // The first samples weigh as in a straight line through all, until the steady gains are the larger ones.
    const double n = followed_ + 1;
    const double alpha = std::min(1.0, std::max(1 - root * root, 2 * (2 * n - 1) / (n * (n + 1))));
    const double beta = std::min(1.0, std::max(2 * (2 - alpha) - 4 * std::sqrt(1 - alpha), 6 / (n * (n + 1))));
    x_ += v_ * dt + alpha * error;
    v_ += beta * error / dt;
    believedAt_ = at;
}

ExchangedPlugs::Pan Probe::asPan(Instant at) const { return {x_, jump_, started_ && reason(at) == Reason::none}; }

void Probe::compare(const Probe& other) {
    if (!started_ || !other.started_ ||
        secondsBetween(other.believedAt_, believedAt_) > 3 * std::max(1.0, other.spacing()))
        return;
    compared_ = std::min(compared_ + 1, 300U);
    above_ += (x_ - other.x_ - above_) / compared_;
}

Reason Probe::reason(Instant now) const {
    if (!last_)
        return Reason::notYetRead;
    if (silent(now))
        return Reason::silent;
    const bool nowhere = refusal_ == Reason::outsidePhysics || refusal_ == Reason::wrongUnit;
    if (exchangedSince_ && !nowhere)
        return Reason::plugsExchanged;
    if (implausibleSince_ && refusal_ != Reason::none && (nowhere || !underBoiling_.stands()) &&
        secondsBetween(*implausibleSince_, now) >= implausibleFor)
        return refusal_;
    if (underBoiling_.stands())
        return underBoiling_.otherUnit() ? Reason::wrongUnit : Reason::outOfPan;
    if (stuck())
        return Reason::stuck;
    if (height_ != Reason::none)
        return height_;
    if (jumping_)
        return Reason::jumping;
    if (touchingSince_)
        return Reason::touchingPan;
    if (steamSince_)
        return Reason::inSteamOrFoam;
    if (byHand() && secondsBetween(*last_, now) > typedHoldsFor_)
        return Reason::silent;
    return Reason::none;
}

Trust Probe::trust(Instant now) const {
    switch (reason(now)) {
    case Reason::none:
        return Trust::good;
    case Reason::silent:
        return byHand() && secondsBetween(*last_, now) < 6 * typedHoldsFor_ ? Trust::doubtful : Trust::gone;
    case Reason::notYetRead:
    case Reason::outsidePhysics:
    case Reason::wrongUnit:
        return Trust::gone;
    default:
        return started_ ? Trust::doubtful : Trust::gone;
    }
}

Instant Probe::reasonSince(Instant now) const {
    switch (reason(now)) {
    case Reason::silent:
        return *last_;
    case Reason::stuck:
        return unchangedSince();
    case Reason::outOfPan:
        return *underBoiling_.since();
    case Reason::plugsExchanged:
        return *exchangedSince_;
    case Reason::otherHeight:
    case Reason::noWeather:
        return *heightSince_;
    case Reason::jumping:
        return jumpingSince_;
    case Reason::touchingPan:
        return *touchingSince_;
    case Reason::inSteamOrFoam:
        return *steamSince_;
    case Reason::wrongUnit:
        return underBoiling_.stands() ? *underBoiling_.since() : *implausibleSince_;
    case Reason::outsidePhysics:
    case Reason::tooFast:
        return *implausibleSince_;
    default:
        return now;
    }
}

} // namespace panside
