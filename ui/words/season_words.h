#pragma once
// The season's figures in words: their names, units and numbers, and what a shift is called.
#include "core/season/season.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

QString headingOf(SeasonFigure figure);               // "syrup a cord"
QString unitWordOf(SeasonFigure figure, Units units); // "L"; empty where there is none
double inUnits(SeasonFigure figure, double si, Units units);
QString numberOf(SeasonFigure figure, const Told& told, Units units); // "≥ 12.3", without the unit
QString seasonShiftName(Instant shift);                               // "Sat 14 Mar 2026, 18:05"

} // namespace panside
