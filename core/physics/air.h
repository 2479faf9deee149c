#pragma once
// The air over the pan: station pressure, which alone decides where water boils, from what is known of it.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// Pressure at an elevation in the standard atmosphere: what to expect there, not what is there today.
// Range      geopotential elevation -500 m to 5000 m (at 3000 m the geometric one is 1.4 m more)
// Outside    nullopt
// Accuracy   0.001 kPa of the source; real weather is within 4 kPa of it
// Source     ISO 2533:1975
[[nodiscard]] std::optional<Pressure> standardAtmosphere(Length elevation);

// Station pressure from the mean sea level pressure of a weather report, which was reduced with the air's real
// temperature.
// Range      85 to 110 kPa at sea level (records: 87.0 and 108.5), -500 m to 5000 m, air -50 to 50 degC; 0 degC without
//            it
// Outside    nullopt
// Accuracy   stationFromSeaLevelUncertainty. Not the same as an altimeter setting: in sugaring weather 0.10 to 0.24 kPa
//            apart at 300 m, up to 0.6 kPa at 1000 m
// Source     hypsometric equation, mean temperature of the column = air + 0.00325 K/m of elevation, dry air (the
//            practice of the national weather services); R 287.05287 J/(kg K), g 9.80665 m/s2 as in ISO 2533:1975
[[nodiscard]] std::optional<Pressure> stationFromSeaLevel(Pressure seaLevel, Length elevation,
                                                          std::optional<Temperature> air = std::nullopt);

// Standard uncertainty of stationFromSeaLevel: of the column's temperature, and of a report's 0.1 hPa and distance.
// Range      as stationFromSeaLevel
// Outside    nullopt
// Accuracy   an estimate: 4 K where the air is known (services take the mean of 12 h), 10 K where it is taken as 0
//            degC; 0.05 kPa for the report. At 300 m 0.07 and 0.14 kPa, which is 0.02 and 0.04 K of boiling point
// Source     derivative of the hypsometric equation; the sizes are our judgement
[[nodiscard]] std::optional<Pressure> stationFromSeaLevelUncertainty(Pressure seaLevel, Length elevation,
                                                                     std::optional<Temperature> air = std::nullopt);

// Station pressure from an altimeter setting (QNH), which was reduced by the standard atmosphere: no thermometer is
// needed.
// Range      85 to 110 kPa, -500 m to 5000 m
// Outside    nullopt
// Accuracy   exact by its definition; the older form with 0.3 hPa added and exponent 0.190284 is 0.03 kPa (0.008 K)
//            higher
// Source     ICAO Doc 7488/ISO 2533:1975, exponent R L / g = 0.190263
[[nodiscard]] std::optional<Pressure> stationFromAltimeter(Pressure setting, Length elevation);

} // namespace panside
