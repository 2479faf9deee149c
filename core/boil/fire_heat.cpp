#include "core/boil/fire_heat.h"

#include <cmath>

namespace panside {
namespace {

// Small split wood gives most of its heat as gas soon after it catches; coals glow on (common practice, no source).
constexpr double gasShare = 0.6, gasIntervals = 0.75, coalSeconds = 900, panSeconds = 75;
constexpr double fade = 240; // seconds
constexpr double shortestFiring = 90, longestFiring = 3600;

} // namespace

inline void FireHeat::burnFor(double seconds) {
    const double gasSeconds = gasIntervals * interval_;
    const double heat = gas_ / gasSeconds + coals_ / coalSeconds;
    gas_ -= gas_ * seconds / gasSeconds;
    coals_ -= coals_ * seconds / coalSeconds;
    pan_ += (heat - pan_) * seconds / panSeconds;
}

void FireHeat::burn(double seconds) {
    for (; seconds > 0; seconds -= step)
        burnFor(std::min(seconds, step));
}

void FireHeat::passTo(Instant at) {
    if (at_ && at > *at_)
        burn(std::min(secondsBetween(*at_, at), 4 * 3600.0));
    if (!at_ || at > *at_)
        at_ = at;
}

void FireHeat::learnGap(double gap) {
    if (gap < shortestFiring || gap > longestFiring)
        return;
    std::copy_backward(gaps_.begin(), gaps_.end() - 1, gaps_.end());
    gaps_[0] = static_cast<float>(gap);
    known_ = std::min(known_ + 1, gapCount);
    if (known_ < 2)
        return;
    auto sorted = gaps_;
    const auto end = sorted.begin() + static_cast<std::ptrdiff_t>(known_);
    std::sort(sorted.begin(), end);
    interval_ = (sorted[known_ / 2] + sorted[(known_ - 1) / 2]) / 2.0;
}

void FireHeat::fired(Instant at) {
    passTo(at);
    if (last_)
        learnGap(secondsBetween(*last_, at));
    last_ = at;
    ++loads_;
    gas_ += gasShare * interval_;
    coals_ += (1 - gasShare) * interval_;
}

Duration FireHeat::overdue(Instant now) const {
    return Duration{last_ && !stopped_ ? secondsBetween(*last_, now) - interval_ : -interval_};
}

FireHeat::Ahead FireHeat::ahead(Duration delay) const {
    Ahead sum{};
    if (!known()) {
        // Nothing is known of its loads; once nobody fires any more, it goes out as coals do.
        for (std::size_t i = 0; stopped_ && i < steps; ++i) {
            const double after = step * static_cast<double>(i);
            sum[i] = coalSeconds * (1 - std::exp(-after / coalSeconds)) - after;
        }
        return sum;
    }
    FireHeat then = *this;
    double next = seconds(delay), total = 0;
    for (std::size_t i = 0; i < steps; ++i) {
        sum[i] = total;
        if (!stopped_ && static_cast<double>(i) * step >= next) {
            then.gas_ += gasShare * interval_;
            then.coals_ += (1 - gasShare) * interval_;
            next += interval_;
        }
        total += step * then.excess();
        then.burnFor(step);
    }
    return sum;
}

double HeatAhead::left(double seconds) { return std::exp(-seconds / fade); }

double HeatAhead::operator()(double seconds, double left) const {
    constexpr double end = FireHeat::step * static_cast<double>(FireHeat::steps - 1);
    double loads = 0;
    if (seconds >= end) {
        loads = sum.back() + after * (seconds - end);
    } else {
        const double place = seconds / FireHeat::step;
        const auto i = static_cast<std::size_t>(place);
        loads = sum[i] + (sum[i + 1] - sum[i]) * (place - static_cast<double>(i));
    }
    if (beside != 0)
        loads += beside * fade * (1 - left);
    return scale * loads;
}

} // namespace panside
