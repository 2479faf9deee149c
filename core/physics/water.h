#pragma once
// Pure water: where it boils.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// Temperature at which pure water boils.
// Range      absolute pressure, as a barometer at the pan reads it, 611.213 Pa to 22.064 MPa
// Outside    nullopt
// Accuracy   every printed digit of the source's check values; the source itself 0.002 K. Near sea level a barometer
//            0.1 kPa wrong makes it 0.028 K wrong. Older tables take 100.00 degC at 101.325 kPa (here 99.974): 0.026 K
//            higher
// Source     IAPWS R7-97(2012), equation 31; check values in table 36
[[nodiscard]] std::optional<Temperature> waterBoilingPoint(Pressure pressure);

// Pressure at which pure water boils at a temperature: the inverse of waterBoilingPoint.
// Range      273.15 K to 647.096 K
// Outside    nullopt
// Accuracy   every printed digit of the source's check values; the source itself 0.025 percent
// Source     IAPWS R7-97(2012), equation 30; check values in table 35
[[nodiscard]] std::optional<Pressure> saturationPressure(Temperature temperature);

} // namespace panside
