#include "ui/look/press.h"

#include <QFontMetrics>
#include <QPainter>
#include <algorithm>
#include <cstdint>

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

void Press::setShape(KeyShape shape) {
    if (shape == shape_)
        return;
    shape_ = shape;
    update();
}

// The box round a key's cap goes before a letter of its word does.
bool Press::isTight() const {
    const int rest = width() - capWidth() - tickWidth() - 2 * dress_.px(1.8) - dress_.px(1);
    return !key_.isEmpty() && !fits(dress_.letters(3.5), text(), QSize{rest, height()}) &&
           !fits(dress_.letters(3.5), text(), QSize{rest, height()}, 2);
}

int Press::capWidth() const {
    if (key_.isEmpty())
        return 0;
    const QFontMetrics metrics{dress_.letters(mm::words, true)};
    return std::max(dress_.px(6.5), metrics.horizontalAdvance(key_) + dress_.px(2.5));
}

int Press::keyWidth() const {
    return isTight() ? QFontMetrics{dress_.letters(mm::smallWords, true)}.horizontalAdvance(key_) + 1 : capWidth();
}

int Press::edgeWidth() const { return dress_.px(isTight() ? 1 : 1.8); }

// Kept free in every key that can be chosen: its word stays where it is when it is.
int Press::tickWidth() const { return isCheckable() ? dress_.px(4.5) : 0; }

QSize Press::sizeHint() const {
    const QFontMetrics metrics{dress_.letters(mm::words)};
    return {metrics.horizontalAdvance(text()) + capWidth() + tickWidth() + dress_.px(6), dress_.px(mm::target)};
}

QSize Press::minimumSizeHint() const { return {capWidth() + dress_.px(mm::target), dress_.px(mm::target)}; }

QRect Press::wordPlace() const {
    const int edge = edgeWidth(), cap = keyWidth();
    QRect words = rect().adjusted(edge, 0, -edge, -dress_.px(0.5));
    words.setLeft(words.left() + tickWidth());
    if (cap > 0)
        words.setRight(words.right() - cap - dress_.px(isTight() ? 0.5 : 1));
    return words;
}

bool Press::isWhole() const {
    const QSize room = wordPlace().size();
    const QFont least = dress_.letters(mm::smallWords);
    return text().isEmpty() || fits(least, text(), room) || fits(least, text(), room, 2);
}

int Press::leastWidth() const {
    const QFontMetrics metrics{dress_.letters(mm::smallWords)};
    int word = metrics.horizontalAdvance(text());
    for (qsizetype at = text().indexOf(u' '); at >= 0; at = text().indexOf(u' ', at + 1))
        word = std::min(
            word, std::max(metrics.horizontalAdvance(text().left(at)), metrics.horizontalAdvance(text().mid(at + 1))));
    const QFontMetrics cap{dress_.letters(mm::smallWords, true)};
    const int edges =
        key_.isEmpty() ? 2 * dress_.px(1.8) : 2 * dress_.px(1) + dress_.px(0.5) + cap.horizontalAdvance(key_) + 1;
    return std::max(word + 2 + edges + tickWidth(), dress_.px(mm::target));
}

void layInRow(const std::vector<Press*>& keys, const QRect& place, int gap) {
    std::int64_t least = 0, wanted = 0;
    for (const Press* key : keys) {
        least += std::min(key->leastWidth(), key->sizeHint().width());
        wanted += key->sizeHint().width();
    }
    int at = place.left(), rest = place.width() - gap * (static_cast<int>(keys.size()) - 1);
    // By what they want where that is there (or where not even the least is); else the least, and of the rest by what
    // is wanted beyond it.
    const bool spare = rest >= wanted || rest < least;
    std::int64_t left = spare ? rest : rest - least, share = spare ? wanted : wanted - least;
    for (Press* key : keys) {
        const int hint = key->sizeHint().width(), base = spare ? 0 : std::min(key->leastWidth(), hint);
        const std::int64_t more = left * (hint - base) / std::max<std::int64_t>(1, share);
        const int wide = base + static_cast<int>(more);
        key->setGeometry(at, place.top(), wide, place.height());
        at += wide + gap;
        left -= more;
        share -= hint - base;
    }
}

QColor Press::wordInk() const {
    const Inks& inks = dress_.inks();
    if (!isEnabled())
        return inks.line;
    return shape_ == KeyShape::due ? inks.panel : inks.word;
}

void paintFace(QPainter& painter, const QRect& place, const Dress& dress, const KeyFace& face) {
    const Inks& inks = dress.inks();
    const double corner = dress.px(1);
    const QRectF whole = QRectF{place}.adjusted(1, 1, -1, -1);
    const bool due = face.shape == KeyShape::due && face.enabled;
    const bool resting = face.shape == KeyShape::resting || !face.enabled;
    QPen edge{face.checked || due ? inks.trace : inks.line, face.checked ? 2.4 : 1.2};
    if (resting)
        edge.setStyle(Qt::DashLine);
    painter.setPen(edge);
    if (resting && !face.down)
        painter.setBrush(Qt::NoBrush);
    else
        painter.setBrush(face.down ? inks.shade : due ? inks.trace : face.checked ? inks.sel : inks.key);
    painter.drawRoundedRect(whole, corner, corner);
    if (!resting && !due && !face.down) // the foot that says it can be pressed
        painter.fillRect(QRectF{whole.left() + corner, whole.bottom() - dress.px(0.6), whole.width() - 2 * corner,
                                dress.px(0.6) * 1.0},
                         inks.line);
    if (face.focused) { // a ring inside the edge: shape, not only colour
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen{due ? inks.panel : inks.trace, std::max(2.0, dress.px(0.8) * 1.0)});
        const double in = dress.px(0.8);
        painter.drawRoundedRect(whole.adjusted(in, in, -in, -in), corner, corner);
    }
}

void Press::paintCap(QPainter& painter, const QColor& ink) const {
    const Inks& inks = dress_.inks();
    const int cap = keyWidth(), high = std::min(dress_.px(6.5), height() - 4);
    const QRect place{width() - edgeWidth() - cap, (height() - high) / 2, cap, high};
    const bool due = shape_ == KeyShape::due && isEnabled();
    if (!isTight()) {
        painter.setPen(QPen{due ? inks.panel : inks.line, 1});
        painter.setBrush(due || shape_ == KeyShape::resting ? Qt::NoBrush : QBrush{inks.panel});
        painter.drawRoundedRect(QRectF{place}.adjusted(0.5, 0.5, -0.5, -0.5), dress_.px(0.6), dress_.px(0.6));
    }
    painter.setPen(ink);
    drawFitted(painter, isTight() ? place : place.adjusted(2, 0, -2, 0), Qt::AlignCenter,
               dress_.letters(isTight() ? mm::smallWords : mm::words * 0.9, true), key_);
}

void Press::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    paintFace(
        painter, rect(), dress_,
        {.shape = shape_, .checked = isChecked(), .down = isDown(), .enabled = isEnabled(), .focused = hasFocus()});
    if (isChecked()) { // what is chosen has a tick: not every eye tells the edges apart
        const double size = dress_.px(3);
        const QPointF low{dress_.px(1.8) + 0.4 * size, (height() + size) / 2.0};
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen{inks.word, std::max(2.0, dress_.px(0.7) * 1.0)});
        painter.drawPolyline(
            QPolygonF{{low - QPointF{0.4 * size, 0.45 * size}, low, low + QPointF{0.6 * size, -size}}});
    }
    const QColor ink = isDown() ? inks.word : wordInk();
    if (!key_.isEmpty())
        paintCap(painter, ink);
    painter.setPen(ink);
    const bool bold = isChecked() || (shape_ == KeyShape::due && isEnabled());
    drawFitted(painter, wordPlace(), Qt::AlignVCenter | (key_.isEmpty() ? Qt::AlignHCenter : Qt::AlignLeft),
               dress_.letters(mm::words, bold), text(), 2);
}

} // namespace panside
