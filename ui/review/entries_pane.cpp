#include "ui/review/entries_pane.h"

#include "ui/look/press.h"

#include <QCompleter>
#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

EntriesPane::EntriesPane(QWidget* parent)
    : QWidget{parent}, table_{new QTableWidget}, fields_{new QWidget}, answer_{new QLabel}, correct_{new Press},
      takeBack_{new Press}, keep_{new Press}, leave_{new Press} {
    setObjectName(QStringLiteral("entries"));
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(table_, 1);
    auto* row = new QHBoxLayout{fields_};
    row->setContentsMargins(0, 0, 0, 0);
    constexpr std::array names{"entryTime", "entryWhat", "entryFigure", "entryMore", "entryWho"};
    constexpr std::array wide{1, 2, 2, 3, 1};
    for (std::size_t i = 0; i < edits_.size(); ++i) {
        edits_[i] = new QLineEdit;
        edits_[i]->setObjectName(QString::fromLatin1(names[i]));
        edits_[i]->installEventFilter(this);
        connect(edits_[i], &QLineEdit::textChanged, this, &EntriesPane::judge);
        row->addWidget(edits_[i], wide[i]);
    }
    column->addWidget(fields_);
    column->addWidget(answer_);
    auto* keys = new QHBoxLayout;
    for (Press* press : {correct_, takeBack_, keep_, leave_}) {
        press->setFocusPolicy(Qt::TabFocus);
        keys->addWidget(press, 1);
    }
    column->addLayout(keys);
    answer_->setObjectName(QStringLiteral("entryAnswer"));
    answer_->setWordWrap(true);
    table_->setObjectName(QStringLiteral("entryList"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->verticalHeader()->hide();
    table_->setShowGrid(false);
    table_->setColumnCount(4);
    table_->installEventFilter(this);
    correct_->setObjectName(QStringLiteral("correctEntry"));
    takeBack_->setObjectName(QStringLiteral("takeBack"));
    keep_->setObjectName(QStringLiteral("keepEntry"));
    leave_->setObjectName(QStringLiteral("leaveEntries"));
    connect(correct_, &Press::clicked, this, &EntriesPane::open);
    connect(takeBack_, &Press::clicked, this, &EntriesPane::takeBack);
    connect(keep_, &Press::clicked, this, &EntriesPane::keep);
    connect(leave_, &Press::clicked, this, [this] {
        if (inFields())
            closeFields();
        else
            emit left();
    });
    connect(table_, &QTableWidget::cellDoubleClicked, this, &EntriesPane::open);
    connect(table_, &QTableWidget::currentCellChanged, this, [this](int now, int, int before) {
        if (now == before || inFields())
            return;
        askedFor_ = 0;
        if (const auto* chosenLine = line())
            emit chosen(chosenLine->fact.at);
    });
    setFocusProxy(table_);
    name();
    closeFields();
}

void EntriesPane::name() {
    correct_->say(tr("Correct it"), tr("Enter"));
    takeBack_->say(tr("Take it back"), tr("Del"));
    keep_->say(tr("Keep the correction"), tr("Enter"));
    leave_->say(tr("Leave"), tr("Esc"));
    table_->setHorizontalHeaderLabels({tr("time"), tr("entry"), tr("who"), tr("later")});
    const QStringList asks{tr("time"), tr("what"), tr("figure"), tr("more"), tr("who")};
    for (std::size_t i = 0; i < edits_.size(); ++i) {
        edits_[i]->setPlaceholderText(asks[static_cast<qsizetype>(i)]);
        edits_[i]->setAccessibleName(asks[static_cast<qsizetype>(i)]);
    }
    auto* offered = new QCompleter{paperWhats(), edits_[1]};
    offered->setCaseSensitivity(Qt::CaseInsensitive);
    offered->setFilterMode(Qt::MatchContains);
    edits_[1]->setCompleter(offered);
}

void EntriesPane::wear(const Dress& dress) {
    dress_ = dress;
    for (Press* press : {correct_, takeBack_, keep_, leave_})
        press->wear(dress);
    for (QLineEdit* edit : edits_) {
        edit->setFont(dress.letters(mm::words));
        edit->setMinimumHeight(dress.px(mm::target));
    }
    answer_->setFont(dress.letters(mm::words));
    table_->setFont(dress.letters(mm::smallWords));
    table_->horizontalHeader()->setFont(dress.letters(mm::smallWords));
    table_->verticalHeader()->setDefaultSectionSize(dress.px(mm::target * 0.75));
}

// What counts no more is struck through: its words stay readable.
void EntriesPane::display(std::vector<EntryLine> lines, const WallClock& clock, Units units) {
    const EntryLine* was = line();
    const Instant stoodAt = was ? was->fact.at : Instant::max();
    lines_ = std::move(lines);
    clock_ = clock;
    units_ = units;
    closeFields();
    table_->setRowCount(static_cast<int>(lines_.size()));
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const EntryLine& shown = lines_[i];
        const QStringList cells{shown.time, shown.words, shown.who, shown.fate};
        for (int c = 0; c < cells.size(); ++c) {
            auto* item = new QTableWidgetItem{cells[c]};
            QFont font = dress_.letters(mm::smallWords);
            font.setStrikeOut(!shown.stands && c < 3);
            item->setFont(font);
            table_->setItem(static_cast<int>(i), c, item);
        }
    }
    table_->resizeColumnsToContents();
    table_->horizontalHeader()->setStretchLastSection(true);
    const auto near = std::find_if(lines_.begin(), lines_.end(),
                                   [&](const EntryLine& one) { return one.stands && one.fact.at >= stoodAt; });
    table_->selectRow(near == lines_.end() ? 0 : static_cast<int>(near - lines_.begin()));
}

const EntryLine* EntriesPane::line() const {
    const int row = table_->currentRow();
    return row >= 0 && row < static_cast<int>(lines_.size()) ? &lines_[static_cast<std::size_t>(row)] : nullptr;
}

void EntriesPane::open() {
    const EntryLine* old = line();
    if (!old)
        return;
    const auto row = old->stands ? paperRowOf(old->fact, clock_) : std::nullopt;
    if (!row) {
        answer_->setText(old->stands ? tr("This can only be taken back: there is no paper row for it.")
                                     : tr("It was already corrected: correct the entry that replaced it."));
        return;
    }
    fieldsOf_ = old->id;
    const std::array texts{row->time, row->what, row->figure, row->more, row->who};
    for (std::size_t i = 0; i < edits_.size(); ++i)
        edits_[i]->setText(texts[i]);
    fields_->show();
    keep_->show();
    correct_->hide();
    takeBack_->hide();
    judge();
    edits_[paperFigure]->setFocus();
    edits_[paperFigure]->selectAll();
}

void EntriesPane::closeFields() {
    const bool wasOpen = inFields();
    fieldsOf_ = askedFor_ = 0;
    fields_->hide();
    keep_->hide();
    correct_->show();
    takeBack_->show();
    answer_->clear();
    if (wasOpen)
        table_->setFocus();
}

PaperRead EntriesPane::readFields(const EntryLine& old) const {
    const PaperRow row{edits_[0]->text(), edits_[1]->text(), edits_[2]->text(), edits_[3]->text(), edits_[4]->text()};
    return readCorrection(row, old.fact, clock_, units_);
}

void EntriesPane::judge() {
    const EntryLine* old = line();
    if (!old || !inFields())
        return;
    const PaperRead read = readFields(*old);
    answer_->setText(read.fact ? tr("will be written: %1").arg(read.words) : tr("not yet: %1").arg(read.words));
}

void EntriesPane::keep() {
    const EntryLine* old = line();
    if (!old || !inFields())
        return;
    const PaperRead read = readFields(*old);
    if (!read.fact) {
        const int column = read.column < 0 ? 0 : read.column;
        edits_[static_cast<std::size_t>(column)]->setFocus();
        judge();
        return;
    }
    if (read.fact->at == old->fact.at && read.fact->what == old->fact.what && read.fact->by == old->fact.by) {
        closeFields();
        emit said(tr("Nothing was changed."));
        return;
    }
    emit correctionWanted(old->id, read.fact);
}

// Asked once: what is taken back counts in no account any more.
void EntriesPane::takeBack() {
    const EntryLine* old = line();
    if (!old || !old->stands)
        return;
    if (askedFor_ != old->id) {
        askedFor_ = old->id;
        answer_->setText(tr("Once more, and it no longer counts: %1, %2.").arg(old->time, old->words));
        return;
    }
    emit correctionWanted(old->id, std::nullopt);
}

bool EntriesPane::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (watched == table_ && (enter || key == Qt::Key_Delete || key == Qt::Key_Backspace || key == Qt::Key_Escape)) {
        if (enter)
            open();
        else if (key == Qt::Key_Escape)
            emit left();
        else
            takeBack();
        return true;
    }
    if (watched != table_ && (enter || key == Qt::Key_Escape)) {
        if (enter)
            keep();
        else
            closeFields();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void EntriesPane::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange)
        name();
    QWidget::changeEvent(event);
}

} // namespace panside
