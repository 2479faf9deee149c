#pragma once
// Degrees Baume, the hydrometer's other scale.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// The American scale for liquids heavier than water: 145 - 145/SG. It says nothing without the temperature of its
// scale.
struct Baume {
    double degrees;
    auto operator<=>(const Baume&) const = default;
};

// What a Baume scale made for a temperature shows in a solution of that temperature.
// Range      0 to 75 brix, scale made for 0 to 50 degC; SG is against water of the same temperature
// Outside    nullopt
// Accuracy   0.01 degrees; printed tables differ by 0.06, and the trade's pairs (36.0 for 66.9 brix at 60 degF) by 0.12
// Source     modulus 145 of the American scale; density from ICUMSA SPS-4 (1998)
[[nodiscard]] std::optional<Baume> baumeOf(Brix sugar, Temperature scale);

// The sugar that such a reading means: the inverse of baumeOf.
// Range      0 degrees to those of 75 brix, scale made for 0 to 50 degC
// Outside    nullopt
// Accuracy   1e-9 brix against baumeOf; 0.1 degree is 0.19 brix
// Source     as baumeOf
[[nodiscard]] std::optional<Brix> sugarOfBaume(Baume reading, Temperature scale);

} // namespace panside
