#pragma once
// How urgent something is, told by ink and by shape. Colour means abnormal and nothing else.
#include "ui/look/inks.h"

class QPainter;
class QRectF;

namespace panside {

enum class Tone { calm, low, medium, high };

QColor inkOf(Tone tone, const Inks& inks);
Tone toneOf(Priority priority);
// The priority as a shape: a triangle for urgent, a diamond for soon, a disc for to know.
void drawPriority(QPainter& painter, const QRectF& place, Tone tone, const QColor& ink);

} // namespace panside
