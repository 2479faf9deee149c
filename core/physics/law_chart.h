#pragma once
// A law's own chart of what a hydrometer must show at least in a cup of some temperature. Where a law has one, the
// chart decides and not what the float balance makes of the reading: a glass that reads the chart is legal.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

struct ChartReading {
    double baume, brix; // on one paper scale, made for 60 degF
};
// Vermont's: 36.0 degrees Baume or 66.9 Brix at 60 degF.
// Range   a cup of 50 to 209 degF; nullopt outside
// Source  the regulation as quoted ("minimum density matching its temperature, as indicated on the following chart");
//         the lines as an evaporator maker's manual of 2014 prints them. The regulation itself was not read in full.
//         The float balance makes 0.0 to 0.3 Brix less of the same readings.
[[nodiscard]] std::optional<ChartReading> vermontChart(Temperature cup);

} // namespace panside
