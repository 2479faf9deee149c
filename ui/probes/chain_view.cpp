#include "ui/probes/chain_view.h"

#include "ui/look/parts.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace panside {
namespace {

// A shape for each mark: colour is third.
QString sign(ChainMark mark) {
    switch (mark) {
    case ChainMark::well:
        return QStringLiteral("✓");
    case ChainMark::look:
        return QStringLiteral("?");
    case ChainMark::broken:
        return QStringLiteral("✕");
    }
    return {};
}

} // namespace

ChainView::ChainView(const Dress& dress, QWidget* parent)
    : QWidget{parent}, dress_{dress}, sentence_{new QLabel{this}}, table_{new QWidget} {
    setObjectName(QStringLiteral("chain"));
    setFocusPolicy(Qt::StrongFocus);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    sentence_->setObjectName(QStringLiteral("chainSentence"));
    sentence_->setFont(dress.letters(mm::words * 1.25, true));
    sentence_->setWordWrap(true);
    column->addWidget(sentence_);
    auto* scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setWidget(table_);
    column->addWidget(scroll, 1);
    Press* back = pressOf(dress, tr("Back to the set-up"), tr("Esc"), QStringLiteral("chainBack"));
    connect(back, &Press::clicked, this, &ChainView::left);
    column->addWidget(back);
}

void ChainView::display(const std::vector<ChainRow>& rows) {
    if (rows == rows_)
        return;
    sentence_->setText(chainSentence(rows));
    setAccessibleName(sentence_->text());
    for (auto* scroll : findChildren<QScrollArea*>())
        scroll->setAccessibleName(sentence_->text());
    if (rows.size() != cells_.size()) {
        qDeleteAll(table_->findChildren<QWidget*>(QString{}, Qt::FindDirectChildrenOnly));
        delete table_->layout();
        cells_.clear();
        auto* grid = new QGridLayout{table_};
        grid->setContentsMargins(0, 0, 0, 0);
        grid->setHorizontalSpacing(dress_.px(mm::gap * 2));
        for (int line = 0; line < static_cast<int>(rows.size()); ++line) {
            auto& cells = cells_.emplace_back();
            for (int i = 0; i < static_cast<int>(cells.size()); ++i) {
                cells[static_cast<std::size_t>(i)] = new QLabel;
                auto* cell = cells[static_cast<std::size_t>(i)];
                cell->setObjectName(QStringLiteral("chain_%1_%2").arg(line).arg(i));
                cell->setFont(dress_.letters(mm::words, i < 2));
                cell->setWordWrap(i == 5);
                cell->setMinimumHeight(dress_.px(mm::words * 2));
                grid->addWidget(cell, line, i);
            }
        }
        grid->setColumnStretch(5, 1);
        grid->setRowStretch(static_cast<int>(rows.size()), 1);
    }
    rows_ = rows;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const QString texts[] = {sign(rows[i].mark), rows[i].what, rows[i].from,
                                 rows[i].value,      rows[i].age,  rows[i].verdict};
        for (std::size_t c = 0; c < cells_[i].size(); ++c)
            cells_[i][c]->setText(texts[c]);
    }
}

void ChainView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit left();
    else
        QWidget::keyPressEvent(event);
}

} // namespace panside
