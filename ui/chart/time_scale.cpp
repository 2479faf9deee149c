#include "ui/chart/time_scale.h"

#include <algorithm>
#include <cmath>

namespace panside {

double TimeScale::x(Instant at) const {
    return left + static_cast<double>(at.time_since_epoch().count()) / static_cast<double>(column.count()) -
           static_cast<double>(firstColumn);
}

Instant TimeScale::at(double x) const {
    return Instant{} + std::chrono::microseconds{firstColumn * column.count() +
                                                 std::llround((x - left) * static_cast<double>(column.count()))};
}

TimeScale scaleFor(Instant now, Duration span, double nowAt, int left, int width) {
    TimeScale scale;
    scale.left = left;
    scale.width = std::max(1, width);
    const double perPixel = std::max(1e-3, span.count() / scale.width);
    scale.column = std::chrono::microseconds{std::llround(perPixel * 1e6)};
    const std::int64_t nowColumn = now.time_since_epoch().count() / scale.column.count();
    scale.firstColumn = nowColumn - std::llround(nowAt * scale.width);
    return scale;
}

Duration tickStep(const TimeScale& scale, int pixelsApart) {
    const double least = static_cast<double>(scale.column.count()) * 1e-6 * std::max(1, pixelsApart);
    for (const double step : {60.0, 120.0, 300.0, 600.0, 900.0, 1800.0, 3600.0, 7200.0, 10800.0, 21600.0, 43200.0})
        if (step >= least)
            return Duration{step};
    return Duration{86400};
}

std::vector<double> roundSteps(double from, double to, int most) {
    std::vector<double> values;
    if (!(to > from) || most < 1)
        return values;
    const double raw = (to - from) / most, power = std::pow(10.0, std::floor(std::log10(raw)));
    double step = 10 * power;
    for (const double times : {1.0, 2.0, 5.0})
        if (times * power >= raw) {
            step = times * power;
            break;
        }
    for (double value = std::ceil(from / step - 1e-9) * step; value <= to + 1e-9 * step; value += step)
        values.push_back(std::abs(value) < 1e-9 * step ? 0 : value);
    return values;
}

} // namespace panside
