#include "ui/look/urgency.h"

#include <QPainter>

namespace panside {

QColor inkOf(Tone tone, const Inks& inks) {
    switch (tone) {
    case Tone::high:
        return inks.high;
    case Tone::medium:
        return inks.medium;
    case Tone::low:
        return inks.low;
    case Tone::calm:
        break;
    }
    return inks.word;
}

Tone toneOf(Priority priority) {
    switch (priority) {
    case Priority::high:
        return Tone::high;
    case Priority::medium:
        return Tone::medium;
    case Priority::low:
        break;
    }
    return Tone::low;
}

void drawPriority(QPainter& painter, const QRectF& place, Tone tone, const QColor& ink) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    const QPointF middle = place.center();
    switch (tone) {
    case Tone::high:
        painter.drawPolygon(QPolygonF{{middle.x(), place.top()}, place.bottomRight(), place.bottomLeft()});
        break;
    case Tone::medium:
        painter.drawPolygon(QPolygonF{{middle.x(), place.top()},
                                      {place.right(), middle.y()},
                                      {middle.x(), place.bottom()},
                                      {place.left(), middle.y()}});
        break;
    case Tone::low:
        painter.drawEllipse(
            place.adjusted(place.width() * 0.1, place.height() * 0.1, -place.width() * 0.1, -place.height() * 0.1));
        break;
    case Tone::calm:
        break;
    }
    painter.restore();
}

} // namespace panside
