#pragma once
// The strips and the plan of the fuel page, drawn. Functions of what is shown and of where; they keep nothing.
#include "ui/chart/shift_trace.h"
#include "ui/fuel/fuel_view.h"
#include "ui/look/dress.h"

#include <QRect>

class QPainter;

namespace panside {

// Loads, stack and evaporation of the whole shift, beneath each other on one time, so that sag and load stand together.
void drawFuelStrips(QPainter& painter, const ShiftTrace& trace, Instant now, Units units, const Dress& dress,
                    const QRect& area);
// The tank falling, the last load as a range, the burn-out and what must be kept back.
void drawPlan(QPainter& painter, const PlanPicture& plan, const Dress& dress, const QRect& area);

} // namespace panside
