#include "ui/look/tall_rows.h"

#include <QPainter>

namespace panside {

QSize TallRows::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return {QStyledItemDelegate::sizeHint(option, index).width(), dress_.px(mm::target)};
}

void TallRows::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const Inks& inks = dress_.inks();
    const QRect& row = option.rect;
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    painter->fillRect(row, chosen ? inks.sel : inks.panel);
    painter->fillRect(QRect{row.left(), row.bottom(), row.width(), 1}, inks.faint);
    if (chosen)
        painter->fillRect(QRect{row.left(), row.top(), dress_.px(1.5), row.height()}, inks.trace);
    painter->setPen(inks.word);
    drawFitted(*painter, row.adjusted(dress_.px(2.2), 0, -dress_.px(1), 0), Qt::AlignLeft | Qt::AlignVCenter,
               option.font, index.data().toString());
}

} // namespace panside
