#pragma once
// Pure water: where it boils, what it weighs, what it takes to boil it off.
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

// Mass of a volume of liquid water under about one atmosphere.
// Range      0 to 110 degC (above its boiling point at sea level: as liquid under its own pressure)
// Outside    nullopt
// Accuracy   0.007 kg/m3 of IAPWS-95 to 100 degC, 0.05 to 110 degC
// Source     G. S. Kell, J. Chem. Eng. Data 20 (1975) 97, as carried to ITS-90 in the ICUMSA density equation
[[nodiscard]] std::optional<Density> waterDensity(Temperature temperature);

// Heat that turns a kilogram of boiling water into steam of the same temperature.
// Range      0 to 110 degC
// Outside    nullopt
// Accuracy   0.25 kJ/kg (0.01 percent) of IAPWS-95. From syrup it is dearer by the heat of dilution, less than 0.5
//            percent
// Source     Clapeyron's equation with IAPWS SR1-86(1992) for the volumes and the slope of the vapour pressure
[[nodiscard]] std::optional<SpecificEnergy> latentHeat(Temperature temperature);

} // namespace panside
