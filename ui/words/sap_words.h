#pragma once
// What stands in the feed tank, in words: that it runs over, how old its sap is, what to boil first.
#include "core/boil/picture.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

// "The tank fills and is full in 25 min: …"; empty where it does not fill, or not within an hour.
QString tankFullWords(const SapPicture& store);
// How old the oldest sap is, and whether it is to be boiled first; empty where nobody knows.
QString sapAgeWords(const SapPicture& store, Units units);

} // namespace panside
