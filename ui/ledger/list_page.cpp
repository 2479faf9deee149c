#include "ui/ledger/list_page.h"

#include <QAbstractScrollArea>
#include <QLabel>
#include <QVBoxLayout>
#include <algorithm>
#include <span>

namespace panside {
namespace {

constexpr double headAndRow = 20; // mm: the least of a list

} // namespace

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
    table_->wear(dress);
    keys_->wear(dress);
    sayChosen();
}

// What stands beside it keeps its height; a page that is higher than its window stands in a roll.
int ListPage::room() const {
    const QWidget* page = this;
    for (const QWidget* over = parentWidget(); over; page = over, over = over->parentWidget())
        if (const auto* roll = qobject_cast<const QAbstractScrollArea*>(over->parentWidget());
            roll && over == roll->viewport())
            return over->height() - (page->height() - height());
    return height();
}

// On a low page the list needs the height; where much is said its letters give way before a key leaves the page, and
// last the list itself.
void ListPage::letter() {
    static constexpr struct {
        double head, notes;
        bool table = true;
    } ways[] = {{mm::act, mm::words},
                {mm::lead, 3.2},
                {mm::words, mm::smallWords},
                {3.5, mm::smallWords},
                {3.5, mm::smallWords, false}};
    const int high = room();
    for (const auto& way : std::span{ways}.subspan(high < dress_.px(115) ? 1 : 0)) {
        head_->setFont(dress_.letters(way.head, true));
        notes_->setFont(dress_.letters(way.notes));
        table_->setVisible(way.table);
        const int missing = way.table ? std::max(0, dress_.px(headAndRow) - table_->minimumSizeHint().height()) : 0;
        if (layout()->totalMinimumHeightForWidth(width()) + missing <= high)
            return;
    }
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
    letter();
}

} // namespace panside
