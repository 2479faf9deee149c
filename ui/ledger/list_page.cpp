#include "ui/ledger/list_page.h"

#include <QLabel>
#include <QVBoxLayout>

namespace panside {

ListPage::ListPage(const QString& name, QWidget* parent)
    : QWidget{parent}, head_{new QLabel}, notes_{new QLabel}, table_{new LedgerTable{name + QStringLiteral("Table")}},
      keys_{new ActionKeys} {
    setObjectName(name);
    setAutoFillBackground(true);
    auto* column = new QVBoxLayout{this};
    head_->setObjectName(QStringLiteral("headline"));
    notes_->setObjectName(QStringLiteral("notes"));
    for (QLabel* label : {head_, notes_}) {
        label->setWordWrap(true);
        column->addWidget(label);
    }
    column->addWidget(table_, 1);
    column->addWidget(keys_);
    connect(table_, &LedgerTable::chosenChanged, this, &ListPage::sayChosen);
    connect(table_, &LedgerTable::opened, this, [this] { emit pressed(Qt::Key_Return); });
    keys_->answerFor(*this);
    connect(keys_, &ActionKeys::pressed, this, &ListPage::pressed);
    setFocusProxy(table_);
}

void ListPage::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    letter();
    table_->wear(dress);
    keys_->wear(dress);
    sayChosen();
}

// On a low page the list needs the height.
void ListPage::letter() {
    const bool low = height() < dress_.px(115);
    head_->setFont(dress_.letters(low ? mm::lead : mm::act, true));
    notes_->setFont(dress_.letters(low ? 3.2 : mm::words));
}

void ListPage::resizeEvent(QResizeEvent*) { letter(); }

void ListPage::display(const ListView& view) {
    view_ = view;
    table_->display(view.columns, view.rows);
    keys_->display(view.keys);
    sayChosen();
}

QString ListPage::headline() const { return head_->text(); }

void ListPage::sayChosen() {
    const int row = table_->chosen();
    const bool has = row >= 0 && static_cast<std::size_t>(row) < view_.said.size();
    const QString words = has ? view_.said[static_cast<std::size_t>(row)].words : QString{};
    const QString notes = has ? view_.said[static_cast<std::size_t>(row)].notes : QString{};
    head_->setText(words.isEmpty() ? view_.head : words);
    notes_->setText(notes.isEmpty() ? view_.notes : notes);
    head_->setVisible(!head_->text().isEmpty());
    notes_->setVisible(!notes_->text().isEmpty());
}

} // namespace panside
