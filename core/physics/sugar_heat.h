#pragma once
// What it takes to warm sap and to boil it away.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// Heat that warms a kilogram of solution by a kelvin.
// Range      0 to 75 brix, 0 to 110 degC
// Outside    nullopt
// Accuracy   1 percent to 10 brix; in syrup published formulas differ by 0.25 kJ/(kg K), 10 percent. The higher one was
//            taken: two independent families agree with it within 1 percent, and it meets water within 0.5 percent
// Source     Bubnik et al., Sugar Technologists Manual (1995), after Llano (2005), for pure sucrose
[[nodiscard]] std::optional<SpecificHeat> sugarHeatCapacity(Brix sugar, Temperature temperature);

// Heat that turns a kilogram of cold water into steam.
// Range      feed 0 degC to boiling, 60 to 110 kPa
// Outside    nullopt
// Accuracy   0.1 percent of IAPWS-95
// Source     IAPWS SR1-86(1992) for the steam, 4.184 kJ/(kg K) for the warming
[[nodiscard]] std::optional<SpecificEnergy> heatToBoilAway(Temperature feed, Pressure pressure);

} // namespace panside
