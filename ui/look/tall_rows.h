#pragma once
// Rows that a glove hits, in a list of the toolkit's: the chosen one is told by its ground and by its edge.
#include "ui/look/dress.h"

#include <QStyledItemDelegate>

namespace panside {

class TallRows : public QStyledItemDelegate {
public:
    TallRows(const Dress& dress, QObject* parent) : QStyledItemDelegate{parent}, dress_{dress} {}
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    Dress dress_;
};

} // namespace panside
