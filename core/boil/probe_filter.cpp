// One probe's samples: gate against spikes, follow value and slope, watch silence and the last digit.
#include "core/boil/sensor.h"

#include "core/quantity/unit.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double shortestSilence = 10, implausibleFor = 5, stuckFor = 60;

// How a reading behaves: below which step nothing is called a spike, and how quickly its slope can bend (SI/s2).
// Sizes are common practice, no source: boiling stirs a pan reading by tenths, a door lets the stack fall by a hundred.
struct Manner {
    double smallestSpike, bend, handDoubtfulAfter;
};
Manner mannerOf(Series series) {
    switch (series) {
    case Series::syrup_pan:
    case Series::flue_pan:
        return {0.6, 2e-4, 1200};
    case Series::stack:
        return {40, 0.15, 3600};
    case Series::feed:
        return {3, 1e-2, 7200};
    case Series::air:
        return {2, 1e-4, 14400};
    case Series::pressure:
    case Series::sea_level_pressure:
        return {100, 2e-3, 14400};
    case Series::pan_level:
    case Series::flue_level:
        return {8e-3, 2e-6, 1800};
    case Series::tank_level:
        return {20e-3, 5e-7, 7200};
    case Series::feed_flow:
        return {50 / 3.6e6, 2e-7, 7200};
    case Series::filter_pressure:
        return {30e3, 3e3, 600};
    }
    return {1, 1, 3600};
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

double Probe::spacing() const {
    const auto count = std::min<std::size_t>(samples_ > 0 ? samples_ - 1 : 0, gapCount);
    if (count == 0)
        return 0;
    auto gaps = gaps_;
    const auto middle = gaps.begin() + static_cast<std::ptrdiff_t>(count / 2);
    std::nth_element(gaps.begin(), middle, gaps.begin() + static_cast<std::ptrdiff_t>(count));
    return *middle;
}

Instant Probe::silentAt() const {
    // One sample tells no spacing: a logger that writes once a minute is not silent after ten seconds.
    const double usual = samples_ < 2 ? 60 : spacing();
    return *last_ + Duration{std::max(shortestSilence, 3 * usual)};
}

double Probe::noise() const { return std::sqrt(variance_); }

void Probe::countGap(Instant at) {
    if (last_ && samples_ > 0)
        gaps_[(samples_ - 1) % gapCount] = static_cast<float>(secondsBetween(*last_, at));
    ++samples_;
    last_ = at;
}

void Probe::watchDigits(const ReadingRow& row, double si, Unit unit, Instant at, bool boiling, bool othersMove) {
    const double tenths = fromSi(si, unit) * 10;
    fine_ = fine_ || std::abs(tenths - std::round(tenths)) > 1e-6;
    if (unchanged_ == 0 || si != lastSi_) {
        if (unchanged_ > 0 && boiling && !stuck_)
            longestHold_ = std::max(longestHold_, static_cast<float>(secondsBetween(unchangedSince_, at)));
        unchangedSince_ = at;
        unchanged_ = 0;
        lastSi_ = si;
    }
    ++unchanged_;
    const bool hasDigits =
        row.series == Series::syrup_pan || row.series == Series::flue_pan || row.series == Series::stack;
    if (!hasDigits || byHand() || !boiling)
        unchangedSince_ = boiling ? unchangedSince_ : at;
    // With coarse steps a true reading may hold for long: three times as long as it ever did before.
    const double limit = fine_ ? stuckFor : std::max(stuckFor, longestHold_ > 0 ? 3.0 * longestHold_ : 5 * stuckFor);
    const double held = secondsBetween(unchangedSince_, at);
    constexpr std::uint32_t fewest = 6;
    stuck_ = hasDigits && !byHand() && boiling && unchanged_ >= fewest && held >= limit && (fine_ || othersMove);
}

void Probe::take(const ReadingRow& row, double si, Unit unit, Instant at, bool boiling, bool othersMove) {
    const bool gap = last_ && !byHand() && at >= silentAt();
    countGap(at);
    watchDigits(row, si, unit, at, boiling, othersMove);
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
        start(si, 0, at);
        return;
    }
    const double dt = secondsBetween(believedAt_, at);
    const double gate = std::max(mannerOf(row.series).smallestSpike, 6 * noise());
    const bool spike = std::abs(si - (x_ + v_ * dt)) > gate;
    spikes_ += ((spike ? 1.0F : 0.0F) - spikes_) / 20;
    if (jumping_ ? spikes_ < 0.1F : spikes_ > 0.35F) {
        jumping_ = !jumping_;
        jumpingSince_ = at;
    }
    if (spike)
        pend(row, si, at, gate);
    else
        follow(row, si, at);
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
void Probe::pend(const ReadingRow& row, double si, Instant at, double gate) {
    if (pendings_ > 0 && std::abs(si - pending_[(pendings_ - 1) % pendCount].si) > 2 * gate)
        pendings_ = 0;
    if (pendings_ == 0)
        pendingSince_ = at;
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
    if (pendings_ < 2 || since < implausibleFor)
        return;
    const Sample first = pending_[0];
    const double over = secondsBetween(first.at, at);
    const double slope = over > 0 ? (si - first.si) / over : 0;
    settledAt_ = at;
    start(si, row.fastest > 0 ? std::clamp(slope, -row.fastest, row.fastest) : 0, at);
}

void Probe::start(double si, double slope, Instant at) {
    if (!started_)
        settledAt_ = at;
    started_ = true;
    x_ = si;
    v_ = slope;
    followed_ = 0;
    believedAt_ = at;
    pendings_ = 0;
}

// An alpha-beta filter whose gains follow from the noise seen, the spacing and how quickly a slope can bend (the
// steady-state gains of Kalata, IEEE Trans. AES-20, 1984): slow samples pass nearly as they are, quick ones are
// smoothed.
void Probe::follow(const ReadingRow& row, double si, Instant at) {
    pendings_ = 0;
    if (implausibleSince_ && secondsBetween(settledAt_, at) >= 30) {
        implausibleSince_.reset();
        refusal_ = Reason::none;
    }
    const double dt = std::max(1e-3, secondsBetween(believedAt_, at));
    const Manner manner = mannerOf(row.series);
    const double least = manner.smallestSpike * manner.smallestSpike / 1e4;
    const double r = std::max(variance_, least);
    const double lambda = manner.bend * dt * dt / std::sqrt(r);
    const double root = (4 + lambda - std::sqrt(8 * lambda + lambda * lambda)) / 4;
    double alpha = 1 - root * root;
    double beta = 2 * (2 - alpha) - 4 * std::sqrt(1 - alpha);
    ++followed_;
    // The first samples weigh as in a straight mean, until the steady gains are the smaller ones.
    const double n = followed_ + 1;
    alpha = std::max(alpha, 2 * (2 * n - 1) / (n * (n + 1)));
    beta = std::max(beta, 6 / (n * (n + 1)));
    if (alpha >= 1) {
        alpha = 1;
        beta = std::min(beta, 1.0);
    }
    const double error = si - (x_ + v_ * dt);
    const double share = 1 / std::min(60.0, n + 1);
    variance_ +=
        share * (std::min(error * error, 9 * std::max(variance_, 25 * least)) * (1 - std::min(alpha, 0.7)) - variance_);
    x_ += v_ * dt + alpha * error;
    v_ += beta * error / dt;
    believedAt_ = at;
}

Reason Probe::reason(Instant now) const {
    if (!last_)
        return Reason::notYetRead;
    if (silent(now))
        return Reason::silent;
    if (implausibleSince_ && refusal_ != Reason::none && secondsBetween(*implausibleSince_, now) >= implausibleFor)
        return refusal_;
    if (stuck_)
        return Reason::stuck;
    if (jumping_)
        return Reason::jumping;
    if (byHand() && secondsBetween(*last_, now) > 1200)
        return Reason::silent;
    return Reason::none;
}

Trust Probe::trust(Instant now) const {
    switch (reason(now)) {
    case Reason::none:
        return Trust::good;
    case Reason::silent:
        return byHand() && secondsBetween(*last_, now) < 3 * 3600 ? Trust::doubtful : Trust::gone;
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
        return unchangedSince_;
    case Reason::jumping:
        return jumpingSince_;
    case Reason::outsidePhysics:
    case Reason::wrongUnit:
    case Reason::tooFast:
        return *implausibleSince_;
    default:
        return now;
    }
}

} // namespace panside
