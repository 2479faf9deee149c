#pragma once
// Thermocouples of types K, J and T: what their voltage means. Emfs add, temperatures do not.
#include "core/quantity/quantity.h"

#include <cstdint>
#include <optional>

namespace panside {

enum class Thermocouple : std::uint8_t { K, J, T };

// Voltage of a thermocouple whose measuring junction is hot and whose other end is at the junction's temperature.
// Range      K -200 to 1372 degC, J -210 to 760, T -200 to 400; the junction -40 to 125 degC
// Outside    nullopt
// Accuracy   every printed digit (0.001 mV) of the standard's tables. Wire of class 2 is within 2.2 K (T: 1.0 K) near
//            100 degC, so a thermocouple that has not been trimmed in boiling water cannot finish syrup
// Source     reference functions of IEC 60584-1:2013, which are those of NIST Monograph 175 (1993), on ITS-90
[[nodiscard]] std::optional<Voltage> thermocoupleVoltage(Thermocouple type, Temperature hot,
                                                         Temperature junction = Temperature::celsius(0));

// Temperature of the measuring junction, from the voltage and the temperature of the other end (cold-junction
// compensation).
// Range      voltages of the temperatures above; the junction -40 to 125 degC. An open or reversed pair usually falls
//            outside
// Outside    nullopt
// Accuracy   0.001 K of the reference functions over the whole range: the standard's inverse polynomials (0.06 K) are
//            only the start, two Newton steps on the reference function follow
// Source     as thermocoupleVoltage
[[nodiscard]] std::optional<Temperature> thermocoupleTemperature(Thermocouple type, Voltage measured,
                                                                 Temperature junction = Temperature::celsius(0));

} // namespace panside
