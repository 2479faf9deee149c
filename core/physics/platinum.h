#pragma once
// Platinum resistance thermometer, 100 ohm at 0 degC.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// Resistance of the element at a temperature.
// Range      -200 to 850 degC
// Outside    nullopt
// Accuracy   every printed digit (0.01 ohm) of the standard's table. An element of class A is within 0.35 K at 100
//            degC, of class B within 0.80 K; the leads come on top of it: 0.38 ohm more reads 1 K too high
// Source     IEC 60751:2008, the Callendar-Van Dusen equation
[[nodiscard]] std::optional<Resistance> platinumResistance(Temperature temperature);

// Temperature of the element from its resistance: the inverse of platinumResistance.
// Range      18.52 to 390.48 ohm
// Outside    nullopt
// Accuracy   1e-6 K against platinumResistance
// Source     as platinumResistance
[[nodiscard]] std::optional<Temperature> platinumTemperature(Resistance resistance);

} // namespace panside
