#pragma once
// A fact as a person would say it: what a sheet is about to write, what undo takes back, what stands at a mark of the
// chart.
#include "core/boil/fact.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

QString factWords(const Fact& fact, Units units); // "fired, 40 lb oak"; without the time

// A reading's value and its unit: "218.3 °F".
QString readingValue(const Reading& reading, Units units);

} // namespace panside
