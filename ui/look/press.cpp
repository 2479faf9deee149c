#include "ui/look/press.h"

#include <QFontMetrics>
#include <QPainter>
#include <algorithm>

namespace panside {

Press::Press(QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(Qt::TabFocus); // a press by finger leaves the keys where they were
    setCursor(Qt::PointingHandCursor);
}

void Press::wear(const Dress& dress) {
    dress_ = dress;
    updateGeometry();
    update();
}

void Press::say(const QString& word, const QString& key) {
    if (word == text() && key == key_)
        return;
    key_ = key;
    setText(word);
    setAccessibleName(word);
    setAccessibleDescription(key);
    updateGeometry();
    update();
}

int Press::keyWidth() const {
    if (key_.isEmpty())
        return 0;
    const QFontMetrics metrics{dress_.letters(mm::words, true)};
    return std::max(dress_.px(7), metrics.horizontalAdvance(key_) + dress_.px(3));
}

// Kept free in every key that can be chosen: its word stays where it is when it is.
int Press::tickWidth() const { return isCheckable() ? dress_.px(4.5) : 0; }

QSize Press::sizeHint() const {
    const QFontMetrics metrics{dress_.letters(mm::words)};
    return {metrics.horizontalAdvance(text()) + keyWidth() + tickWidth() + dress_.px(6), dress_.px(mm::target)};
}

QSize Press::minimumSizeHint() const { return {keyWidth() + dress_.px(mm::target), dress_.px(mm::target)}; }

void Press::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    const double corner = dress_.px(1.2);
    const QRectF whole = QRectF{rect()}.adjusted(1, 1, -1, -1);
    painter.setPen(QPen{isEnabled() ? isChecked() ? inks.word : inks.line : inks.faint, isChecked() ? 2.4 : 1.2});
    painter.setBrush(isDown() ? inks.line : inks.key);
    painter.drawRoundedRect(whole, corner, corner);
    if (hasFocus()) { // a ring inside the edge: shape, not only colour
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen{inks.trace, std::max(2.0, dress_.px(0.8) * 1.0)});
        const double in = dress_.px(0.8);
        painter.drawRoundedRect(whole.adjusted(in, in, -in, -in), corner, corner);
    }
    const int edge = dress_.px(2), cap = keyWidth();
    QRect words = rect().adjusted(edge, 0, -edge, 0);
    if (isChecked()) { // what is chosen has a tick: not every eye tells the edges apart
        const double size = dress_.px(3);
        const QPointF low{words.left() + 0.4 * size, (height() + size) / 2.0};
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen{inks.word, std::max(2.0, dress_.px(0.7) * 1.0)});
        painter.drawPolyline(
            QPolygonF{{low - QPointF{0.4 * size, 0.45 * size}, low, low + QPointF{0.6 * size, -size}}});
    }
    words.setLeft(words.left() + tickWidth());
    if (cap > 0) {
        const int high = dress_.px(6.5);
        const QRect place{words.right() - cap + 1, (height() - high) / 2, cap, high};
        painter.setPen(QPen{inks.line, 1});
        painter.setBrush(inks.panel);
        painter.drawRoundedRect(QRectF{place}.adjusted(0.5, 0.5, -0.5, -0.5), corner / 2, corner / 2);
        painter.setPen(inks.word);
        drawFitted(painter, place.adjusted(2, 0, -2, 0), Qt::AlignCenter, dress_.letters(mm::words, true), key_);
        words.setRight(place.left() - dress_.px(1));
    }
    painter.setPen(isEnabled() ? inks.word : inks.line);
    drawFitted(painter, words, Qt::AlignVCenter | (cap > 0 ? Qt::AlignLeft : Qt::AlignHCenter),
               dress_.letters(mm::words), text(), 2);
}

} // namespace panside
