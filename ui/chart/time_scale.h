#pragma once
// Where a moment stands on the chart. Columns of pixels lie on a fixed grid of time, so that what is drawn does not
// swim.
#include "core/quantity/quantity.h"

#include <cstdint>
#include <vector>

namespace panside {

struct TimeScale {
    std::int64_t firstColumn = 0;                // its index on the grid
    std::chrono::microseconds column{1'000'000}; // what one pixel holds
    int left = 0, width = 1;                     // pixels

    double x(Instant at) const;
    double xOfColumn(std::int64_t index) const { return left + static_cast<double>(index - firstColumn) + 0.5; }
    Instant at(double x) const;
    Instant begin() const { return at(left); }
    Instant end() const { return at(left + width); }
    bool operator==(const TimeScale&) const = default;
};

// A scale on which `span` fills the width and `now` stands at that share of it.
TimeScale scaleFor(Instant now, Duration span, double nowAt, int left, int width);

// Steps of time that a person counts in, so wide that labels this many pixels apart do not touch.
Duration tickStep(const TimeScale& scale, int pixelsApart);

// Values worth a line between two: 1, 2 or 5 times a power of ten apart, at most so many.
std::vector<double> roundSteps(double from, double to, int most);

} // namespace panside
