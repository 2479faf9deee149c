#include "ui/look/choice_box.h"

#include "ui/look/press.h"
#include "ui/look/tall_rows.h"

#include <QListView>
#include <QPainter>

namespace panside {
ChoiceBox::ChoiceBox(QWidget* parent) : QComboBox{parent} { setView(new QListView{this}); }

void ChoiceBox::wear(const Dress& dress, double millimetres) {
    dress_ = dress;
    setFont(dress.letters(millimetres));
    setMinimumHeight(dress.px(mm::target));
    setPalette(paletteOf(dress.look));
    view()->setFont(font());
    view()->setPalette(palette());
    auto* rows = view()->itemDelegate();
    view()->setItemDelegate(new TallRows{dress, this});
    if (rows)
        rows->deleteLater();
}

void ChoiceBox::paintEvent(QPaintEvent*) {
    QPainter painter{this};
    painter.setRenderHint(QPainter::Antialiasing);
    paintFace(painter, rect(), dress_, {.shape = KeyShape::plain, .enabled = isEnabled(), .focused = hasFocus()});
    const Inks& inks = dress_.inks();
    painter.setPen(isEnabled() ? inks.word : inks.line);
    const int edge = dress_.px(1.8), mark = dress_.px(5);
    drawFitted(painter, rect().adjusted(edge, 0, -edge - mark, 0), Qt::AlignLeft | Qt::AlignVCenter, font(),
               currentText());
    painter.setFont(font());
    painter.drawText(rect().adjusted(0, 0, -edge, 0), Qt::AlignRight | Qt::AlignVCenter, QStringLiteral("▾"));
}

} // namespace panside
