#pragma once
// A place whose law is known, and what its law says, in words.
#include "core/boil/place.h"
#include "ui/look/units.h"

namespace panside {

QString placeName(const PlaceLaw& place);
// "at least 66.9 °Brix (36 °Bé), at most 68.9 °Brix, stated at 60 °F"
QString placeNumbers(const PlaceLaw& place, Units units);
// Where a figure is from, and whether that was read itself.
QString sourceText(const Source& source);

// Class by the light let through, 0 to 1, in the words of the place.
QString classOf(double light, const PlaceLaw& place);

// What the law of a place asks (core/boil: place, law_rules).
QString ruleWords(std::string_view text);

} // namespace panside
