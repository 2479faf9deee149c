#include "ui/frame/rail_key.h"

#include <QPainter>
#include <QPainterPath>

namespace panside {
namespace {

// All pictures are drawn on a square of 24 by 24.
void drawSap(QPainter& painter) {
    QPainterPath drop{{12, 2.5}};
    drop.cubicTo(16, 8, 19, 11.5, 19, 15);
    drop.cubicTo(19, 19, 16, 21.5, 12, 21.5);
    drop.cubicTo(8, 21.5, 5, 19, 5, 15);
    drop.cubicTo(5, 11.5, 8, 8, 12, 2.5);
    painter.drawPath(drop);
}

void drawPan(QPainter& painter) {
    painter.drawPolyline(QPolygonF{{{2, 13}, {4, 20}, {20, 20}, {22, 13}}});
    painter.drawLine(QPointF{1, 13}, QPointF{23, 13});
    for (const double x : {7.0, 12.0, 17.0}) {
        QPainterPath steam{{x, 9.5}};
        steam.cubicTo(x - 2.5, 7, x + 2.5, 5.5, x, 3);
        painter.drawPath(steam);
    }
}

void drawBucket(QPainter& painter) {
    painter.drawPolyline(QPolygonF{{{5, 9}, {7, 21}, {17, 21}, {19, 9}}});
    painter.drawLine(QPointF{4, 9}, QPointF{20, 9});
    QPainterPath handle{{5, 9}};
    handle.cubicTo(6, 1.5, 18, 1.5, 19, 9);
    painter.drawPath(handle);
    painter.drawLine(QPointF{6, 14}, QPointF{18, 14});
}

void drawMoon(QPainter& painter) {
    QPainterPath moon{{18.5, 15.5}};
    moon.cubicTo(12, 18, 6, 12, 9.5, 4);
    moon.cubicTo(4.5, 5.5, 2, 11, 4, 15.5);
    moon.cubicTo(6.5, 21.5, 15, 22.5, 18.5, 15.5);
    painter.drawPath(moon);
}

void drawBars(QPainter& painter) {
    painter.drawLine(QPointF{2, 21}, QPointF{22, 21});
    const double heights[] = {8, 13, 17, 10};
    for (int i = 0; i < 4; ++i) {
        const double x = 5 + i * 4.7;
        painter.drawLine(QPointF{x, 20}, QPointF{x, 20 - heights[i]});
    }
}

void drawSliders(QPainter& painter) {
    const double knobs[] = {15, 7, 17};
    for (int i = 0; i < 3; ++i) {
        const double y = 5 + i * 7;
        painter.drawLine(QPointF{2, y}, QPointF{22, y});
        painter.drawEllipse(QPointF{knobs[i], y}, 2.4, 2.4);
    }
}

void drawSums(QPainter& painter) {
    const auto line = [&](double x1, double y1, double x2, double y2) {
        painter.drawLine(QPointF{x1, y1}, QPointF{x2, y2});
    };
    line(3, 7, 10, 7);
    line(6.5, 3.5, 6.5, 10.5);
    line(14, 7, 21, 7);
    line(4, 15, 9, 20);
    line(9, 15, 4, 20);
    line(14, 16, 21, 16);
    line(14, 19.5, 21, 19.5);
}

void drawHelp(QPainter& painter) {
    painter.drawEllipse(QPointF{12, 12}, 9.5, 9.5);
    QPainterPath mark{{9, 9.5}};
    mark.cubicTo(9, 5, 15.5, 5, 15.5, 9.5);
    mark.cubicTo(15.5, 12, 12, 12, 12, 14.5);
    painter.drawPath(mark);
    painter.drawPoint(QPointF{12, 18});
}

} // namespace

void drawPlace(QPainter& painter, const QRectF& square, Place place) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(square.topLeft());
    painter.scale(square.width() / 24, square.height() / 24);
    painter.setBrush(Qt::NoBrush);
    switch (place) {
    case Place::sap:
        drawSap(painter);
        break;
    case Place::boil:
        drawPan(painter);
        break;
    case Place::syrup:
        drawBucket(painter);
        break;
    case Place::nights:
        drawMoon(painter);
        break;
    case Place::season:
        drawBars(painter);
        break;
    case Place::rig:
        drawSliders(painter);
        break;
    case Place::sums:
        drawSums(painter);
        break;
    case Place::help:
        drawHelp(painter);
        break;
    }
    painter.restore();
}

RailKey::RailKey(Place place, QWidget* parent) : QAbstractButton{parent}, place_{place} {
    setObjectName(QStringLiteral("place%1").arg(keyOf(place)));
    setCheckable(true);
    setFocusPolicy(Qt::TabFocus);
    setCursor(Qt::PointingHandCursor);
    sayWord();
}

void RailKey::wear(const Dress& dress) {
    dress_ = dress;
    update();
}

void RailKey::sayWord() {
    setText(wordOf(place_));
    setAccessibleName(wordOf(place_));
    setAccessibleDescription(keyOf(place_));
    update();
}

void RailKey::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.fillRect(rect(), isChecked() ? inks.panel : inks.ground);
    if (isChecked())
        painter.fillRect(QRect{0, 0, dress_.px(1.3), height()}, inks.trace);
    if (hasFocus()) {
        painter.setPen(QPen{inks.trace, 2.5});
        painter.drawRect(rect().adjusted(2, 2, -3, -3));
    }
    const int picture = dress_.px(5.5), word = dress_.px(5.2), edge = dress_.px(1.5);
    const int top = (height() - picture - word - dress_.px(0.8)) / 2;
    const QFont cap = dress_.letters(mm::words * 0.85, true);
    const int capWide = QFontMetrics{cap}.horizontalAdvance(QStringLiteral("F8"));
    const int left = (width() - picture - capWide - dress_.px(2)) / 2;
    QPen pen{inks.word, 2};
    pen.setCapStyle(Qt::RoundCap);
    painter.setPen(pen);
    drawPlace(painter, QRectF{left * 1.0, top * 1.0, picture * 1.0, picture * 1.0}, place_);
    painter.setPen(inks.quiet);
    painter.setFont(cap);
    painter.drawText(QRect{left + picture + dress_.px(2), top, capWide + 4, picture}, Qt::AlignLeft | Qt::AlignVCenter,
                     keyOf(place_));
    painter.setPen(inks.word);
    drawFitted(painter, QRect{edge, top + picture + dress_.px(0.8), width() - 2 * edge, word}, Qt::AlignCenter,
               dress_.letters(mm::words, isChecked()), text());
}

} // namespace panside
