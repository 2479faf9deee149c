#include "ui/review/entries_pane.h"

#include "ui/look/each_language.h"
#include "ui/look/typed_line.h"
#include "ui/look/typing.h"
#include "ui/page/action_keys.h"

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
    : QWidget{parent}, table_{new QTableWidget}, fields_{new QWidget}, answer_{new QLabel}, keys_{new ActionKeys} {
    setObjectName(QStringLiteral("entries"));
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(table_, 1);
    auto* row = new QHBoxLayout{fields_};
    row->setContentsMargins(0, 0, 0, 0);
    constexpr std::array names{"entryTime", "entryWhat", "entryFigure", "entryMore", "entryWho"};
    constexpr std::array wide{1, 2, 2, 3, 1};
    for (std::size_t i = 0; i < edits_.size(); ++i) {
        edits_[i] = new TypedLine;
        edits_[i]->setObjectName(QString::fromLatin1(names[i]));
        edits_[i]->installEventFilter(this);
        connect(edits_[i], &QLineEdit::textChanged, this, &EntriesPane::judge);
        row->addWidget(edits_[i], wide[i]);
    }
    column->addWidget(fields_);
    column->addWidget(answer_);
    column->addWidget(keys_);
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
    connect(keys_, &ActionKeys::pressed, this, &EntriesPane::act);
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
    inEachLanguage(*this, [this] { name(); });
}

void EntriesPane::sayKeys() {
    std::vector<PageKey> keys{{Qt::Key_Return, QStringLiteral("keepEntry"), tr("Keep the correction")}};
    if (!inFields())
        keys = {{Qt::Key_Return, QStringLiteral("correctEntry"), tr("Correct it")},
                {Qt::Key_Delete, QStringLiteral("takeBack"), tr("Take it back")}};
    keys.push_back({Qt::Key_Escape, QStringLiteral("leaveEntries"), tr("Leave")});
    keys_->display(keys);
}

void EntriesPane::act(int key) {
    if (key == Qt::Key_Delete)
        takeBack();
    else if (key == Qt::Key_Return)
        inFields() ? keep() : open();
    else
        inFields() ? closeFields() : left();
}

void EntriesPane::name() {
    sayKeys();
    table_->setHorizontalHeaderLabels({tr("time"), tr("entry"), tr("who"), tr("later")});
    const QStringList asks{tr("time"), tr("what"), tr("figure"), tr("more"), tr("who")};
    for (std::size_t i = 0; i < edits_.size(); ++i) {
        edits_[i]->setPlaceholderText(asks[static_cast<qsizetype>(i)]);
        edits_[i]->setAccessibleName(asks[static_cast<qsizetype>(i)]);
    }
    offerWords(*edits_[1], paperWhats());
}

void EntriesPane::wear(const Dress& dress) {
    dress_ = dress;
    keys_->wear(dress);
    for (TypedLine* edit : edits_) {
        edit->wear(dress, mm::words);
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
    const auto near =
        std::ranges::find_if(lines_, [&](const EntryLine& one) { return one.stands && one.fact.at >= stoodAt; });
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
    sayKeys();
    judge();
    edits_[paperFigure]->setFocus();
    edits_[paperFigure]->selectAll();
}

void EntriesPane::closeFields() {
    const bool wasOpen = inFields();
    fieldsOf_ = askedFor_ = 0;
    fields_->hide();
    sayKeys();
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
    const auto& pressed = static_cast<QKeyEvent&>(*event);
    if (watched == table_ && pressed.key() == Qt::Key_Backspace)
        return takeBack(), true;
    const bool ofTheRow = pressed.key() != Qt::Key_Delete || watched == table_; // in a field it takes a letter out
    return (ofTheRow && keys_->answer(pressed)) || QWidget::eventFilter(watched, event);
}

} // namespace panside
