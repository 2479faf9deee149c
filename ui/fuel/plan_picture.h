#pragma once
// The end of the boil, drawn: the tank falling, the last load as a range, the burn-out, what is kept back, and when the
// tank were empty. Keeps nothing.
#include "ui/fuel/plan_view.h"
#include "ui/look/dress.h"

#include <QRect>

class QPainter;

namespace panside {

// Volume over the clock's time, lettered so many millimetres high. `changes`: what more sap or more fire would make of
// it is drawn in, dotted.
void drawPlan(QPainter& painter, const PlanView& view, const Dress& dress, double letters, const QRect& area,
              bool changes);

} // namespace panside
