#pragma once
// A unit's way to SI, for whoever converts very many numbers of one unit.
#include "core/quantity/unit.h"

namespace panside {

// SI = (number + shift) * scale / divisor: a divisor where one is exact and its inverse is not, so that 45.4 mm is the
// same double here as by Length::millimetre.
struct Conversion {
    double scale = 1, divisor = 1, shift = 0;
    constexpr double toSi(double number) const { return (number + shift) * scale / divisor; }
    constexpr double fromSi(double si) const { return si * divisor / scale - shift; }
};

Conversion conversionOf(Unit unit);

} // namespace panside
