#include "ui/frame/tab_key.h"

#include <QPainter>

namespace panside {

TabKey::TabKey(QWidget* parent) : QAbstractButton{parent} {
    setCheckable(true);
    setFocusPolicy(Qt::TabFocus);
    setCursor(Qt::PointingHandCursor);
}

void TabKey::wear(const Dress& dress) {
    dress_ = dress;
    updateGeometry();
    update();
}

void TabKey::say(const QString& word, int digit) {
    digit_ = digit;
    setText(word);
    setAccessibleName(word);
    setAccessibleDescription(QString::number(digit));
    updateGeometry();
    update();
}

int TabKey::digitWidth() const { return QFontMetrics{dress_.letters(mm::smallWords, true)}.horizontalAdvance(u'8'); }

QSize TabKey::sizeHint() const {
    const int word = QFontMetrics{dress_.letters(mm::words, true)}.horizontalAdvance(text());
    return {word + digitWidth() + dress_.px(9), dress_.px(mm::target)};
}

void TabKey::paintEvent(QPaintEvent*) {
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.fillRect(rect(), isChecked() ? inks.panel : inks.ground);
    if (isChecked())
        painter.fillRect(QRect{0, height() - dress_.px(1), width(), dress_.px(1)}, inks.trace);
    if (hasFocus()) {
        painter.setPen(QPen{inks.trace, 2.5});
        painter.drawRect(rect().adjusted(2, 2, -3, -3));
    }
    const int edge = dress_.px(3), digit = digitWidth();
    painter.setPen(inks.word);
    drawFitted(painter, rect().adjusted(edge, 0, -edge - digit - dress_.px(1.5), 0), Qt::AlignLeft | Qt::AlignVCenter,
               dress_.letters(mm::words, isChecked()), text());
    painter.setPen(inks.quiet);
    painter.setFont(dress_.letters(mm::smallWords, true));
    painter.drawText(rect().adjusted(0, 0, -edge, 0), Qt::AlignRight | Qt::AlignVCenter, QString::number(digit_));
}

} // namespace panside
