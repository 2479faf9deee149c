#pragma once
// A filter press: when its gauge will stand at the limit. Only the cake's resistance is modelled, for a pump that gives
// a steady flow: the cake grows with what goes through, and the pressure with the cake. What is a little compressible
// climbs steeper than a line; by how much is not known, so the range covers it. A bypass that opens, or an air pump
// whose flow falls instead, ends the forecast.
#include "core/quantity/quantity.h"

#include <optional>
#include <span>
#include <variant>

namespace panside {

struct CakeReading {
    double through;    // what has gone through since the run began; at a steady flow its time serves as well
    Pressure pressure; // gauge
};
struct CakeForecast {
    double p10, p50;           // of `through`, where the gauge stands at the limit
    std::optional<double> p90; // none: it may never get there
};
enum class CakeSilence : std::uint8_t {
    tooFew,      // fewer than three readings
    atLimit,     // it stands there already
    notClimbing, // nothing can be said of when it gets there
    bypass       // it climbed and stopped: a bypass has opened, or the flow falls
};
// Range      three readings or more by `through`, gauge and limit above 0
// Accuracy   the range holds the truth in 8 of 10 runs or more, for a cake whose resistance grows with the pressure to
// a
//            power of 0 to 0.3 and a gauge read to half a psi
// Source     filtration at a constant rate: pressure = viscosity * rate / area * (resistance * solids * volume / area +
//            that of the papers): Ruth 1935, as in McCabe, Smith and Harriott, Unit Operations (from memory)
[[nodiscard]] std::variant<CakeForecast, CakeSilence> cakeForecast(std::span<const CakeReading> readings,
                                                                   Pressure limit);

} // namespace panside
