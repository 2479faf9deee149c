#pragma once
// Letters of a physical height, and text that fits where it must: a word is made smaller before it is cut.
#include "ui/look/measure.h"

#include <QFont>
#include <QRect>
#include <QString>

class QPainter;

namespace panside {

// A font whose digits and capitals stand this high.
QFont lettering(const Measure& measure, double millimetres, bool bold = false);
// The same, for a height in pixels.
QFont letteringOfPixels(double capitalHeight, bool bold = false);

// The largest font not above `font` in which the text fits the size in at most so many lines; never under a third of
// it.
QFont fitted(const QFont& font, const QString& text, const QSize& size, int lines = 1);
// Draws it so. Wraps at words when it is given more lines than one.
void drawFitted(QPainter& painter, const QRect& place, int alignment, const QFont& font, const QString& text,
                int lines = 1);
// Does it fit as it is?
bool fits(const QFont& font, const QString& text, const QSize& size, int lines = 1);

} // namespace panside
