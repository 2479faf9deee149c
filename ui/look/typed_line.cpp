#include "ui/look/typed_line.h"

#include <QFocusEvent>
#include <QPainter>
#include <QRegularExpressionValidator>

namespace panside {

TypedLine::TypedLine(QWidget* parent) : QLineEdit{parent} {
    setFrame(false);
    connect(this, &QLineEdit::textEdited, this, [this] { setDoubted(false); });
}

void TypedLine::wear(const Dress& dress, double letters) {
    dress_ = dress;
    letters_ = letters;
    setFont(dress.letters(letters));
    QPalette inks = paletteOf(dress.look);
    inks.setColor(QPalette::Base, dress.inks().field);
    inks.setColor(QPalette::Text, dress.inks().word);
    setPalette(inks);
    place();
    updateGeometry();
}

void TypedLine::setUnit(const QString& unit) {
    unit_ = unit;
    place();
    update();
}

void TypedLine::takeNumbers(bool withMinus) {
    static const QRegularExpression positive{QStringLiteral("[0-9]*[.,]?[0-9]*")},
        any{QStringLiteral("[-\u2212]?[0-9]*[.,]?[0-9]*")};
    setValidator(new QRegularExpressionValidator{withMinus ? any : positive, this});
    setInputMethodHints(Qt::ImhFormattedNumbersOnly);
}

void TypedLine::setDoubted(bool doubted) {
    if (doubted == doubted_)
        return;
    doubted_ = doubted;
    update();
}

void TypedLine::place() {
    const int edge = dress_.px(2);
    const int unit =
        unit_.isEmpty() ? 0 : QFontMetrics{dress_.letters(mm::words)}.horizontalAdvance(unit_) + dress_.px(2);
    setTextMargins(edge, 0, edge + unit, 0);
}

QSize TypedLine::sizeHint() const { return {dress_.px(36), dress_.px(mm::target)}; }
QSize TypedLine::minimumSizeHint() const { return {dress_.px(20), dress_.px(mm::target)}; }

// A finger or a key comes to replace what stands there; a click into it afterwards sets the cursor.
void TypedLine::focusInEvent(QFocusEvent* event) {
    QLineEdit::focusInEvent(event);
    came_ = event->reason() == Qt::MouseFocusReason;
    if (!came_ && event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        selectAll();
}

void TypedLine::mouseReleaseEvent(QMouseEvent* event) {
    QLineEdit::mouseReleaseEvent(event);
    if (came_ && !hasSelectedText())
        selectAll();
    came_ = false;
}

void TypedLine::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    const Inks& inks = dress_.inks();
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    const double wide = hasFocus() || doubted_ ? std::max(2.0, dress_.px(0.8) * 1.0) : 1.2;
    painter.setPen(QPen{doubted_ ? inks.medium : hasFocus() ? inks.trace : inks.line, wide});
    painter.drawRect(QRectF{rect()}.adjusted(wide / 2, wide / 2, -wide / 2, -wide / 2));
    if (unit_.isEmpty())
        return;
    painter.setPen(inks.quiet);
    painter.setFont(dress_.letters(mm::words));
    painter.drawText(rect().adjusted(0, 0, -dress_.px(2), 0), Qt::AlignRight | Qt::AlignVCenter, unit_);
}

} // namespace panside
