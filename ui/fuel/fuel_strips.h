#pragma once
// The strips of the fuel page, drawn: a function of what is shown and of where, which keeps nothing.
#include "ui/chart/shift_trace.h"
#include "ui/look/dress.h"
#include "ui/look/units.h"

#include <QRect>

class QPainter;

namespace panside {

// Loads, stack and evaporation of the whole shift, beneath each other on one time, so that sag and load stand together;
// lettered so many millimetres high.
void drawFuelStrips(QPainter& painter, const ShiftTrace& trace, Instant now, const Dress& dress, double letters,
                    const QRect& area);

} // namespace panside
