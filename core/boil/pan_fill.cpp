#include "core/boil/pan_fill.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double binWidth = 150, leastRead = 600; // s
constexpr double readTo = 0.001;                  // m, of the mean of a bin

} // namespace

void PanFill::addSample(Instant at, double metre) {
    if (count_ == 0 || secondsBetween(begun_, at) >= binWidth) {
        bins_[count_++ % kept] = {at, static_cast<float>(metre), 1};
        begun_ = at;
        return;
    }
    Bin& bin = bins_[(count_ - 1) % kept];
    ++bin.samples;
    bin.metre += (static_cast<float>(metre) - bin.metre) / static_cast<float>(bin.samples);
    bin.at = bin.at + Duration{secondsBetween(bin.at, at) / bin.samples};
}

std::optional<PanFill::Rate> PanFill::rate(Instant from, Instant now) const {
    double n = 0, meanX = 0, meanY = 0, xx = 0, xy = 0, yy = 0, span = 0;
    for (std::size_t i = 0; i < std::min(count_, kept) && back(i).at >= from; ++i) {
        const double x = secondsBetween(now, back(i).at) / 3600, dx = x - meanX, dy = back(i).metre - meanY;
        meanX += dx / ++n;
        meanY += dy / n;
        xx += dx * (x - meanX);
        xy += dx * (back(i).metre - meanY);
        yy += dy * (back(i).metre - meanY);
        span = secondsBetween(back(i).at, now);
    }
    if (n < 3 || span < leastRead || secondsBetween(back(0).at, now) > leastRead)
        return std::nullopt;
    const double slope = xy / xx, scatter = std::sqrt(std::max(0.0, yy - slope * xy) / std::max(1.0, n - 2));
    // Neighbouring bins share the float's cycle and the fire's, so they are not independent: twice the plain error.
    return Rate{slope, 2 * std::max(scatter, readTo) / std::sqrt(xx)};
}

} // namespace panside
