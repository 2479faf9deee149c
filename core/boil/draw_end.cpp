#include "core/boil/draw_end.h"

#include "core/boil/square.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace panside {
namespace {

// Rates are measured by the usual one. Set once on a scratch plant of many random rigs, where all of them may be halved
// or doubled at a cost of a few percent of the score.
constexpr double flickerSeconds = 120, flickerSd = 0.3;
constexpr double leanSeconds = 1500, leanSd = 0.2, leanAfterDraw = 0.1;
constexpr double usualWalk = 0.1; // per square root of an hour
constexpr double answerFirst = 0.8, answerSd = 0.4, answerWalk = 0.1;
constexpr double sugarWalk = 0.015; // brix per square root of a second: level, mixing
// Before anything was seen: pans of all sizes climb by 0.1 to 0.6 brix a minute once they draw.
constexpr double firstRate = 0.35 / 60, firstRateSd = 0.25 / 60, leastRate = 0.03 / 60;
constexpr double otherNights = 0.3; // of the rate, from one night to another on one rig
constexpr double horizon = 4 * 3600;

// Of the integral of a rate that comes and goes with a time constant: its variance over the rate's; `left` is
// exp(-seconds / constant).
double wandered(double constant, double seconds, double left) {
    return 2 * constant * seconds - square(constant) * (3 - 4 * left + square(left));
}

} // namespace

// A time to come, with what hangs on it alone.
struct DrawEnd::Span {
    double seconds, flickerLeft = std::exp(-seconds / flickerSeconds), leanLeft = std::exp(-seconds / leanSeconds);
    double heatLeft = HeatAhead::left(seconds);
    double flickers = wandered(flickerSeconds, seconds, flickerLeft), leans = wandered(leanSeconds, seconds, leanLeft);
    // What each part of the state adds to the sugar by then.
    Vector by(double heatSeconds) const {
        return {1, flickerSeconds * (1 - flickerLeft), leanSeconds * (1 - leanLeft), seconds, heatSeconds};
    }
};

// Those at which a draw is looked for, up to the horizon: worked out once.
const std::vector<DrawEnd::Span>& DrawEnd::spans() {
    static const std::vector<Span> all = [] {
        std::vector<Span> made{{0}};
        for (double next = 30; next <= horizon; next += std::max(30.0, 0.4 * next))
            made.push_back({next});
        return made;
    }();
    return all;
}

double DrawEnd::scale() const { return std::max(mean_[3], leastRate); }

double DrawEnd::rate() const { return mean_[1] + mean_[2] + mean_[3] + mean_[4] * excess_; }

void DrawEnd::expect(double rate) {
    if (!at_)
        expected_ = std::max(rate, leastRate);
}

void DrawEnd::forget() {
    const auto expected = expected_;
    *this = {};
    expected_ = expected;
}

void DrawEnd::start(Instant at, double sugar, double sd) {
    if (!at_) {
        const double rate = expected_.value_or(firstRate);
        const double rateSd = expected_ ? otherNights * rate : firstRateSd;
        mean_ = {sugar, 0, 0, rate, answerFirst * rate};
        variance_ = {};
        variance_[1][1] = square(flickerSd * rate);
        variance_[2][2] = square(leanSd * rate);
        variance_[3][3] = square(rateSd);
        variance_[3][4] = variance_[4][3] = answerFirst * square(rateSd);
        variance_[4][4] = square(answerSd * rate) + square(answerFirst * rateSd);
    } else {
        passTo(at);
        variance_[2][2] += square(leanAfterDraw * scale());
    }
    mean_[0] = sugar;
    for (std::size_t i = 0; i < size; ++i)
        variance_[0][i] = variance_[i][0] = 0;
    variance_[0][0] = square(sd);
    at_ = at;
}

void DrawEnd::noise(Matrix& variance, double seconds) const {
    const double flicker = square(flickerSd * scale()), lean = square(leanSd * scale());
    const double walk = square(usualWalk * scale()) / 3600;
    const double flickerLeft = std::exp(-seconds / flickerSeconds), leanLeft = std::exp(-seconds / leanSeconds);
    const double withFlicker = flicker * flickerSeconds * square(1 - flickerLeft);
    const double withLean = lean * leanSeconds * square(1 - leanLeft), withUsual = walk * seconds * seconds / 2;
    variance[0][0] += square(sugarWalk) * seconds + flicker * wandered(flickerSeconds, seconds, flickerLeft) +
                      lean * wandered(leanSeconds, seconds, leanLeft) + walk * seconds * seconds * seconds / 3;
    variance[0][1] += withFlicker;
    variance[1][0] += withFlicker;
    variance[0][2] += withLean;
    variance[2][0] += withLean;
    variance[0][3] += withUsual;
    variance[3][0] += withUsual;
    variance[1][1] += flicker * (1 - square(flickerLeft));
    variance[2][2] += lean * (1 - square(leanLeft));
    variance[3][3] += walk * seconds;
    variance[4][4] += square(answerWalk * scale()) / 3600 * seconds;
}

void DrawEnd::hasten(double factor) {
    for (std::size_t i = 1; i < size; ++i)
        mean_[i] *= factor;
    for (std::size_t i = 0; i < size; ++i)
        for (std::size_t j = 0; j < size; ++j)
            variance_[i][j] *= (i > 0 ? factor : 1) * (j > 0 ? factor : 1);
}

void DrawEnd::passTo(Instant at) {
    const double dt = at_ ? secondsBetween(*at_, at) : 0;
    if (dt <= 0)
        return;
    const double flicker = std::exp(-dt / flickerSeconds), lean = std::exp(-dt / leanSeconds);
    // Only the first row of the transition has more than its own place in it.
    const Vector first = {1, flickerSeconds * (1 - flicker), leanSeconds * (1 - lean), dt, dt * excess_};
    const Vector own = {1, flicker, lean, 1, 1};
    double sugar = 0;
    Vector cross{};
    for (std::size_t i = 0; i < size; ++i) {
        sugar += first[i] * mean_[i];
        for (std::size_t j = 0; j < size; ++j)
            cross[i] += variance_[i][j] * first[j];
    }
    double spread = 0;
    for (std::size_t i = 0; i < size; ++i)
        spread += first[i] * cross[i];
    for (std::size_t i = 1; i < size; ++i) {
        mean_[i] *= own[i];
        variance_[0][i] = variance_[i][0] = cross[i] * own[i];
        for (std::size_t j = 1; j < size; ++j)
            variance_[i][j] *= own[i] * own[j];
    }
    mean_[0] = sugar;
    variance_[0][0] = spread;
    noise(variance_, dt);
    at_ = at;
}

void DrawEnd::read(Instant at, double sugar, double variance) {
    passTo(at);
    const double off = sugar - mean_[0];
    double spread = variance_[0][0] + variance;
    // A reading more than three deviations off counts less and less.
    if (const double wild = off * off / spread; wild > 9)
        spread = variance_[0][0] + variance * wild / 9;
    const Vector with = variance_[0];
    for (std::size_t i = 0; i < size; ++i) {
        mean_[i] += with[i] / spread * off;
        for (std::size_t j = 0; j < size; ++j)
            variance_[i][j] -= with[i] * with[j] / spread;
    }
    mean_[3] = std::max(mean_[3], leastRate);
    mean_[4] = std::max(mean_[4], 0.0);
}

double DrawEnd::spread(const Span& span, const Vector& by) const {
    const double seconds = span.seconds;
    double variance = 0;
    for (std::size_t i = 0; i < size; ++i) {
        double with = by[i] * variance_[i][i] / 2;
        for (std::size_t j = 0; j < i; ++j)
            with += by[j] * variance_[i][j];
        variance += 2 * by[i] * with;
    }
    const double rate = scale();
    variance += square(sugarWalk) * seconds + square(flickerSd * rate) * span.flickers +
                square(leanSd * rate) * span.leans + square(usualWalk * rate) / 3600 * seconds * seconds * seconds / 3;
    return variance;
}

std::optional<double> DrawEnd::until(double mark, double markVariance, double deviate, const HeatAhead& heat) const {
    const auto over = [&](const Span& span) {
        const Vector by = span.by(heat(span.seconds, span.heatLeft));
        const double mean = std::inner_product(by.begin(), by.end(), mean_.begin(), 0.0);
        return deviate == 0 ? mean - mark
                            : mean - deviate * std::sqrt(std::max(0.0, spread(span, by)) + markVariance) - mark;
    };
    const auto& all = spans();
    auto span = all.begin();
    double low = 0, high = 0, atLow = 0, atHigh = over(*span);
    if (atHigh >= 0)
        return 0;
    while (atHigh < 0) {
        low = high;
        atLow = atHigh;
        if (++span == all.end())
            return std::nullopt;
        high = span->seconds;
        atHigh = over(*span);
    }
    // Regula falsi with halving of the end that stays (Illinois).
    for (int i = 0; i < 20 && high - low > 0.5; ++i) {
        const double next = low + (high - low) * atLow / (atLow - atHigh);
        const double there = over(Span{next});
        if (std::abs(there) < 1e-4)
            return next;
        if (there < 0) {
            low = next;
            atLow = there;
            atHigh /= 2;
        } else {
            high = next;
            atHigh = there;
            atLow /= 2;
        }
    }
    return (low + high) / 2;
}

} // namespace panside
