#pragma once
// What a widget says when it is painted: each text with its color and place, and where each curve lies. Nothing of it
// depends on how letters and lines are rasterised, so it can be kept beside a picture and tell when that is out of
// date.
#include <QRectF>
#include <QStringList>
#include <vector>

class QWidget;

namespace panside {

struct Painted {
    QString color; // "#17485c"
    QString text;  // empty: a curve
    QRectF place;  // percent of the widget's width and height; of a text its left end on the base line
    bool operator==(const Painted&) const = default;
};
std::vector<Painted> saidBy(QWidget& widget);

// Each text as it stands there: its box about the capitals, in pixels, and how high they are.
struct Word {
    QString text;
    QRectF box;
    double capital;
};
std::vector<Word> wordsOn(QWidget& widget);

// A line each, to be kept; and read back.
QStringList linesOf(const std::vector<Painted>& painted);
std::vector<Painted> paintedIn(const QStringList& lines);

// What differs beyond what another version of Qt may make of the same screen; empty: nothing.
QString differenceOf(const std::vector<Painted>& kept, const std::vector<Painted>& now);

} // namespace panside
