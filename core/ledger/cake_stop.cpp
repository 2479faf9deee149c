// Whether the climb of a filter press has stopped.
#include "core/ledger/cake_law.h"

#include <cmath>

namespace panside {
namespace {

// Our judgement: a pump's flow, and with it the gauge, is no steadier than this share of it.
constexpr double unsteady = 0.08;
constexpr double surelySlower = 0.7, certain = 4.5; // of the climb before, by so many standard errors
// A climb that stopped shows within so many readings: of a run that nobody ended each more would cost them all anew.
constexpr std::size_t longestLook = 180;
constexpr double stays = 0.8; // of where it stopped: a gauge that falls deeper is of a pump that is off

// Straight lines through stretches of the gauge.
class Stretches {
public:
    explicit Stretches(std::span<const CakeReading> readings) : sums_(1) {
        for (const CakeReading& one : readings) {
            const double x = one.through, y = barOf(one);
            const Sums& last = sums_.back();
            sums_.push_back({last.x + x, last.y + y, last.xx + x * x, last.xy + x * y, last.yy + y * y});
        }
    }
    struct Straight {
        double slope, mean, spread, residue;
    };
    Straight of(std::size_t first, std::size_t last) const { // both belong to it
        const Sums &to = sums_[last + 1], &from = sums_[first];
        const double n = static_cast<double>(last - first + 1), x = (to.x - from.x) / n, y = (to.y - from.y) / n;
        const double xx = to.xx - from.xx - n * x * x, xy = to.xy - from.xy - n * x * y;
        const double slope = xx > 0 ? xy / xx : 0;
        return {slope, y, xx, std::max(0.0, to.yy - from.yy - n * y * y - slope * xy)};
    }

private:
    struct Sums {
        double x = 0, y = 0, xx = 0, xy = 0, yy = 0;
    };
    std::vector<Sums> sums_;
};

} // namespace

bool hasStopped(std::span<const CakeReading> readings) {
    const Stretches stretches{readings};
    const auto stopsAt = [&](std::size_t middle, std::size_t end) {
        const std::size_t count = end - middle, before = std::min(middle, 2 * count);
        const auto was = stretches.of(middle - before, middle), is = stretches.of(middle, end);
        if (was.spread <= 0 || is.spread <= 0 || is.slope >= stoppedShare * was.slope)
            return false;
        const double freedom = gaugeWeight + static_cast<double>(before + count) - 2;
        const double sum = gaugeWeight * std::pow(gaugeSd / 1e5, 2) + was.residue + is.residue;
        const double sd = std::sqrt(sum / freedom), level = barOf(readings[middle]);
        if (was.slope * (readings[end].through - readings[middle].through) < std::max(3 * sd, unsteady * level))
            return false;
        const double error = sd * std::sqrt(surelySlower * surelySlower / was.spread + 1 / is.spread);
        return surelySlower * was.slope - is.slope > certain * error && is.mean > stays * level &&
               barOf(readings[end]) > stays * level;
    };
    for (std::size_t end = 4; end < readings.size(); ++end)
        for (std::size_t middle = std::max<std::size_t>(2, end - std::min(end, longestLook)); middle + 2 <= end;
             ++middle)
            if (stopsAt(middle, end))
                return true;
    return false;
}

} // namespace panside
