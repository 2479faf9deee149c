#include "core/physics/law_chart.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

struct ChartLine {
    double fahrenheit, baume, brix;
};
constexpr std::array lines{ChartLine{50, 36.25, 67.4},  ChartLine{60, 36.0, 66.9},   ChartLine{70, 35.75, 66.4},
                           ChartLine{80, 35.5, 65.9},   ChartLine{90, 35.25, 65.4},  ChartLine{100, 35.0, 64.8},
                           ChartLine{110, 34.75, 64.3}, ChartLine{120, 34.5, 63.8},  ChartLine{130, 34.25, 63.3},
                           ChartLine{140, 34.0, 62.8},  ChartLine{149, 33.75, 62.3}, ChartLine{158, 33.5, 61.8},
                           ChartLine{167, 33.25, 61.4}, ChartLine{176, 33.0, 60.9},  ChartLine{185, 32.75, 60.4},
                           ChartLine{193, 32.5, 60.0},  ChartLine{202, 32.25, 59.6}, ChartLine{209, 32.0, 59.0}};

} // namespace

std::optional<ChartReading> vermontChart(Temperature cup) {
    constexpr double asRead = 0.5; // degF: the last digit of a cup's thermometer
    const double read = cup.fahrenheit(), at = std::clamp(read, lines.front().fahrenheit, lines.back().fahrenheit);
    if (std::abs(read - at) > asRead)
        return std::nullopt;
    for (std::size_t i = 1; i < lines.size(); ++i) {
        const ChartLine &low = lines[i - 1], &high = lines[i];
        if (at < low.fahrenheit || at > high.fahrenheit)
            continue;
        const double share = (at - low.fahrenheit) / (high.fahrenheit - low.fahrenheit);
        return ChartReading{low.baume + share * (high.baume - low.baume), low.brix + share * (high.brix - low.brix)};
    }
    return std::nullopt;
}

} // namespace panside
