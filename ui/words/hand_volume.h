#pragma once
// Volumes as a hand pours them: gallons, then quarts, pints, cups and spoons; litres, then millilitres.
#include "ui/look/units.h"

#include <QString>

namespace panside {

QString handVolume(Volume volume, Units units);

// The same, in as fine a measure as it takes to be no further off than `within`, where a kitchen has one that fine.
struct HandAmount {
    QString text;
    Volume said; // what the text says
};
HandAmount handAmount(Volume volume, Units units, Volume within);

} // namespace panside
