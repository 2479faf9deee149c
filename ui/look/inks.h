#pragma once
// The colours, for a room with windows and for the night. Greys and one ink; a colour besides means something abnormal.
#include "core/boil/picture.h"

#include <QColor>
#include <QPalette>

namespace panside {

enum class Look { day, night, paper }; // paper: black on white

struct Inks {
    QColor ground;            // behind everything
    QColor panel;             // cards, bar, chart
    QColor key;               // what can be pressed
    QColor field;             // what is typed into; always with an edge of `line`
    QColor sel;               // what is chosen
    QColor word;              // words and digits
    QColor quiet;             // words that may be overlooked
    QColor line;              // frames and scales
    QColor faint;             // a grid one may lose without harm
    QColor trace;             // the one ink: what was measured, the focus, and what is called for
    QColor band;              // texture of the target band
    QColor shade;             // behind a draw
    QColor high, medium, low; // the three priorities of alarm
    QColor onAlarm;           // words upon those

    const QColor& of(Priority priority) const;
};

const Inks& inksOf(Look look);

// For everything that Qt draws itself: sheets, lists, menus.
QPalette paletteOf(Look look);

// Contrast ratio of two colours, 1 to 21, from their relative luminance (W3C, Web Content Accessibility
// Guidelines 2.1).
double contrast(const QColor& a, const QColor& b);
double luminance(const QColor& colour); // 0 black to 1 white

} // namespace panside
