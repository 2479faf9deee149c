#include "core/boil/past_waits.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double forgets = 0.85;    // weight that is left of a wait when the next comes
constexpr double shortestWait = 60; // seconds: less is a draw that was opened twice
constexpr double usualSpread = 0.35,
                 worth = 2; // spread of the logarithms before it was seen, and how many it counts for

double below(double deviate) { return 0.5 * std::erfc(-deviate / std::sqrt(2.0)); }

// Deviate with so much of a normal distribution below it, from 0.0001 to 0.9999 within 0.0005 (Abramowitz and Stegun,
// 26.2.23).
double deviateOf(double share) {
    const double p = std::clamp(std::min(share, 1 - share), 1e-9, 0.5), t = std::sqrt(-2 * std::log(p));
    const double z =
        t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
    return share < 0.5 ? -z : z;
}

} // namespace

void PastWaits::add(double seconds) {
    if (seconds < shortestWait)
        return;
    ++seen_;
    const double wait = std::log(seconds);
    count_ = forgets * count_ + 1;
    squares_ *= forgets;
    const double step = wait - mean_;
    mean_ += step / count_;
    squares_ += step * (wait - mean_);
}

void PastWaits::hasten(double factor) { mean_ -= std::log(factor); }

// Other nights' sap and fire are others: they count as much as a wait and a half of this one.
void PastWaits::expect(double seconds) {
    constexpr double counts = 1.5;
    if (any() || seconds < shortestWait)
        return;
    count_ = counts;
    mean_ = std::log(seconds);
    squares_ = counts * usualSpread * usualSpread;
}

std::optional<double> PastWaits::usual() const { return any() ? std::optional{std::exp(mean_)} : std::nullopt; }

std::optional<Quantiles> PastWaits::rest(double lasted) const {
    if (!any())
        return std::nullopt;
    const double spread =
        std::sqrt((squares_ + worth * usualSpread * usualSpread) / (count_ + worth) * (1 + 1 / count_));
    const double gone = lasted > 1 ? below((std::log(lasted) - mean_) / spread) : 0;
    if (gone > 0.999) // longer than any
        return Quantiles{0.05 * lasted, 0.3 * lasted, lasted};
    const auto rest = [&](double share) {
        return std::max(0.0, std::exp(mean_ + spread * deviateOf(gone + (1 - gone) * share)) - lasted);
    };
    return Quantiles{rest(0.1), rest(0.5), rest(0.9)};
}

double lossOf(const Quantiles& forecast, double came) {
    const auto loss = [came](double share, double said) {
        return came >= said ? share * (came - said) : (1 - share) * (said - came);
    };
    return loss(0.1, forecast.p10) + loss(0.5, forecast.p50) + loss(0.9, forecast.p90.value_or(4 * 3600));
}

} // namespace panside
