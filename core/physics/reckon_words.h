#pragma once
// Words of the sums. English with %1, %2 ... for the numbers, so that a screen can say the same in another language and
// in other units. A temperature is written °C, a difference of temperatures C°.
#include "core/quantity/quantity.h"
#include "core/words/sentence.h"

#include <string>

namespace panside::sums {

using panside::say;
using panside::Sentence;
std::string asRead(const Sentence& sentence); // in English, a difference of temperatures with °C as people read it

// A number with so many decimals and a point; never "-0.00".
std::string number(double value, int decimals);
// A number with so many significant digits at most, without trailing zeros.
std::string plain(double value, int digits = 6);

// An amount in the world's unit and in the trade's.
Sentence sayTemperature(Temperature t);
Sentence sayDifference(TemperatureDifference d);
Sentence sayPressure(Pressure p);
Sentence sayVolume(Volume v); // under a gallon in quarts, pints or cups, and under a quart in millilitres
Sentence sayMass(Mass m);
Sentence saySugar(Brix b);

Sentence meantInstead(Brix sap); // a point that was missed: 22 for 2.2

} // namespace panside::sums
