#pragma once
// The hydrometer in a hot cup: it shows too little, because hot syrup is thinner. A float balance says by how much.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// The sugar behind a reading, taken in a sample of one temperature on a scale made for another.
// Range      sample 0 to 105 degC, scale made for 0 to 50 degC, reading and sugar 0 to 75 brix
// Outside    nullopt
// Accuracy   hydrometerUncertainty. Printed hot charts are 0.35 brix lower to 0.10 higher than this: by 0.3 from 40 to
//            70 degC, within 0.2 above 75 degC. The charts round and differ among themselves by 0.2, so the physics was
//            taken
// Source     float balance: shown density = density (1 + 25e-6/K (sample - scale)), soda-lime glass of ISO 1768:1975;
//            densities of ICUMSA SPS-4 (1998)
[[nodiscard]] std::optional<Brix> sugarByHydrometer(Brix reading, Temperature sample, Temperature scale);

// What the hydrometer shows in a solution: the inverse of sugarByHydrometer.
// Range      as sugarByHydrometer
// Outside    nullopt
// Accuracy   1e-8 brix against sugarByHydrometer
// Source     as sugarByHydrometer
[[nodiscard]] std::optional<Brix> hydrometerReading(Brix sugar, Temperature sample, Temperature scale);

// Standard uncertainty of sugarByHydrometer.
// Range      as sugarByHydrometer; the thermometer's own uncertainty from 0 to 20 K
// Outside    nullopt
// Accuracy   an estimate: 0.15 brix of the instrument (half of those tested are within 0.2), the slope times the
//            thermometer's uncertainty, and up to 0.18 brix for glass and charts, growing over the first 20 K between
//            sample and scale
// Source     spread of the charts named at sugarByHydrometer; test of producers' hydrometers, Ohio State University
//            Extension 2023
[[nodiscard]] std::optional<Brix>
hydrometerUncertainty(Brix reading, Temperature sample, Temperature scale,
                      TemperatureDifference thermometer = TemperatureDifference::kelvin(1));

} // namespace panside
