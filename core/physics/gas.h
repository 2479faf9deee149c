#pragma once
// Heat that air and flue gas carry.
#include "core/physics/wood.h"
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// Mass of water vapour for each kilogram of dry air.
// Range      -20 to 60 degC, relative humidity 0 to 1 (over water), 60 to 110 kPa
// Outside    nullopt
// Accuracy   0.5 percent; the small departure of moist air from an ideal gas is left out
// Source     ideal-gas mixture, ratio of molar masses 0.621945, ASHRAE Fundamentals (2009), chapter 1; vapour pressure
//            by IAPWS R7-97(2012), below 0 degC by Magnus's formula over water (WMO-No. 8)
[[nodiscard]] std::optional<double> humidityRatio(Temperature air, double relativeHumidity, Pressure pressure);

// Enthalpy of moist air for each kilogram of the dry air in it; zero is dry air and liquid water at 0 degC.
// Range      -20 to 900 degC, 0 to 1 kg of vapour
// Outside    nullopt
// Accuracy   0.3 percent of the tables for room air, 1 percent to 900 degC
// Source     gases of NIST Chemistry WebBook (Shomate equations, after the JANAF tables of 1998); 2501 kJ/kg of vapour
//            at 0 degC
[[nodiscard]] std::optional<SpecificEnergy> moistAirEnthalpy(Temperature air, double humidityRatio);

// Share of the wood's lower heating value that leaves by the stack as hot gas (smoke and soot come on top).
// Range      stack to 900 degC, not colder than the air; air -20 to 50 degC; moisture to 60 percent wet basis; excess
//            air 0 to 5
// Outside    nullopt
// Accuracy   0.02 with the excess air measured; assumed at 1.0 and known to 0.5, flueLossUncertainty: 0.07 at 400 degC
// Source     heat balance of dry wood of 50 percent carbon, 6 hydrogen, 43 oxygen; gases as moistAirEnthalpy; dry air
//            burnt
[[nodiscard]] std::optional<double> flueLoss(const Wood& wood, WetBasis moisture, Temperature stack, Temperature air,
                                             double excessAir);

// Standard uncertainty of flueLoss for an excess air known so well.
// Range      as flueLoss; uncertainty of the excess air 0 to 1
// Outside    nullopt
// Accuracy   an estimate: derivative by the excess air, with 0.02 for the rest
// Source     as flueLoss
[[nodiscard]] std::optional<double> flueLossUncertainty(const Wood& wood, WetBasis moisture, Temperature stack,
                                                        Temperature air, double excessAir, double uncertainty);

} // namespace panside
