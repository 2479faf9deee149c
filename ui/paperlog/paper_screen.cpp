#include "ui/paperlog/paper_screen.h"

#include "ui/look/each_language.h"
#include "ui/look/local_time.h"
#include "ui/look/typed_line.h"
#include "ui/look/typing.h"
#include "ui/page/action_keys.h"

#include <QCompleter>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QTableWidget>
#include <QVBoxLayout>
#include <utility>

namespace panside {
namespace {

constexpr int answerColumn = paperColumns; // what the row will be written as

// A field of the table: high enough for a glove, with what may stand under "what" offered as it is typed.
// A form: its lines are seen by night too, where a table's own are not.
class CellEditing : public QStyledItemDelegate {
public:
    CellEditing(const Dress& dress, QObject* parent) : QStyledItemDelegate{parent}, dress_{dress} {}
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyledItemDelegate::paint(painter, option, index);
        painter->setPen(dress_.inks().line);
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        painter->drawLine(option.rect.topRight(), option.rect.bottomRight());
    }
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override {
        // A touch on the chosen cell opens it half a second later: the page may have been left by then.
        if (!parent->isVisible())
            return nullptr;
        auto* editor = QStyledItemDelegate::createEditor(parent, option, index);
        if (auto* line = qobject_cast<QLineEdit*>(editor); line && index.column() == paperWhat)
            offerWords(*line, paperWhats());
        return editor;
    }

private:
    const Dress& dress_;
};

} // namespace

PaperScreen::PaperScreen(QWidget* parent)
    : QWidget{parent}, dateWord_{new QLabel}, zoneWord_{new QLabel}, said_{new QLabel}, date_{new TypedLine},
      zone_{new TypedLine}, table_{new QTableWidget}, keys_{new ActionKeys} {
    setObjectName(QStringLiteral("paper"));
    setAutoFillBackground(true);
    date_->setObjectName(QStringLiteral("date"));
    zone_->setObjectName(QStringLiteral("zone"));
    table_->setObjectName(QStringLiteral("rows"));
    said_->setObjectName(QStringLiteral("said"));
    said_->setWordWrap(true);
    auto* head = new QHBoxLayout;
    for (QWidget* part : std::initializer_list<QWidget*>{dateWord_, date_, zoneWord_, zone_})
        head->addWidget(part);
    head->addStretch(1);
    auto* column = new QVBoxLayout{this};
    column->addLayout(head);
    column->addWidget(table_, 1);
    column->addWidget(said_);
    column->addWidget(keys_);

    offerWords(*zone_, zoneNames());
    table_->setColumnCount(paperColumns + 1);
    table_->verticalHeader()->hide();
    table_->setItemDelegate(new CellEditing{dress_, table_});
    table_->setShowGrid(false);
    table_->setEditTriggers(QAbstractItemView::AnyKeyPressed | QAbstractItemView::DoubleClicked |
                            QAbstractItemView::SelectedClicked | QAbstractItemView::EditKeyPressed);
    table_->installEventFilter(this);
    connect(table_, &QTableWidget::itemChanged, this, &PaperScreen::judge);
    connect(table_, &QTableWidget::currentCellChanged, this, &PaperScreen::tellRow);
    connect(table_->itemDelegate(), &QAbstractItemDelegate::closeEditor, this,
            [this](QWidget*, QAbstractItemDelegate::EndEditHint hint) {
                if (hint == QAbstractItemDelegate::SubmitModelCache) // Enter; Tab goes to the next field by itself
                    QMetaObject::invokeMethod(this, &PaperScreen::toNextRow, Qt::QueuedConnection);
            });
    connect(date_, &QLineEdit::editingFinished, this, &PaperScreen::judge);
    connect(zone_, &QLineEdit::editingFinished, this, &PaperScreen::judge);
    keys_->answerFor(*this);
    connect(keys_, &ActionKeys::pressed, this, &PaperScreen::act);
    setFocusProxy(table_);
    giveKeysOfItsOwn(*table_);
    setDay(QDate::currentDate().addDays(-1), QTimeZone::systemTimeZone());
    addRow();
    table_->setCurrentCell(0, paperTime); // where typing begins
    name();
    inEachLanguage(*this, [this] {
        name();
        judge();
    });
}

void PaperScreen::name() {
    dateWord_->setText(tr("The log begins on (year-month-day)"));
    zoneWord_->setText(tr("by the clock of"));
    date_->setAccessibleName(dateWord_->text());
    zone_->setAccessibleName(zoneWord_->text());
    keys_->display({{ctrlEnter, QStringLiteral("keep"), tr("Keep it as a shift")},
                    {ctrlDel, QStringLiteral("takeOut"), tr("Take the row out")},
                    wayToBoard()});
    table_->setHorizontalHeaderLabels(
        {tr("time"), tr("what"), tr("figure"), tr("more"), tr("who"), tr("will be written as")});
}

void PaperScreen::wear(const Dress& dress) {
    dress_ = dress;
    setPalette(paletteOf(dress.look));
    keys_->wear(dress);
    for (QWidget* words : std::initializer_list<QWidget*>{dateWord_, zoneWord_, said_})
        words->setFont(dress.letters(mm::words));
    for (TypedLine* edit : {date_, zone_}) {
        edit->wear(dress, mm::words);
        edit->setMinimumHeight(dress.px(mm::target));
    }
    date_->setFixedWidth(dress.px(38));
    zone_->setMinimumWidth(dress.px(40));
    table_->setFont(dress.letters(mm::words));
    table_->horizontalHeader()->setFont(dress.letters(mm::smallWords));
    table_->verticalHeader()->setDefaultSectionSize(dress.px(mm::target));
    const double widths[] = {22, 44, 30, 44, 24};
    for (int c = 0; c < paperColumns; ++c)
        table_->setColumnWidth(c, dress.px(widths[c]));
    table_->horizontalHeader()->setStretchLastSection(true);
    judge();
}

void PaperScreen::setUnits(Units units) {
    units_ = units;
    judge();
}

void PaperScreen::setDay(QDate date, const QTimeZone& zone) {
    date_->setText(date.toString(Qt::ISODate));
    zone_->setText(QString::fromLatin1(zone.id()));
    judge();
}

std::optional<PaperDay> PaperScreen::day() {
    const QDate date = QDate::fromString(date_->text().trimmed(), Qt::ISODate);
    if (!date.isValid()) {
        say(tr("“%1” is not a date. Write it as 2026-03-14.").arg(date_->text()));
        return std::nullopt;
    }
    const auto zone = zoneNamed(zone_->text());
    if (!zone) {
        say(tr("“%1” is not a time zone. Write one like America/New_York.").arg(zone_->text()));
        return std::nullopt;
    }
    return PaperDay{date, *zone, units_};
}

void PaperScreen::say(const QString& words) { said_->setText(words); }

void PaperScreen::clear() {
    table_->setRowCount(0);
    addRow();
    table_->setCurrentCell(0, paperTime);
}

std::vector<PaperRow> PaperScreen::rows() const {
    std::vector<PaperRow> rows;
    for (int r = 0; r < table_->rowCount(); ++r) {
        const auto text = [&](int column) {
            const auto* item = table_->item(r, column);
            return item ? item->text() : QString{};
        };
        rows.push_back({text(paperTime), text(paperWhat), text(paperFigure), text(paperMore), text(paperWho)});
    }
    return rows;
}

void PaperScreen::addRow() {
    const int row = table_->rowCount();
    judging_ = true;
    table_->insertRow(row);
    for (int c = 0; c <= paperColumns; ++c) {
        auto* item = new QTableWidgetItem;
        if (c == answerColumn)
            item->setFlags(Qt::ItemIsEnabled);
        table_->setItem(row, c, item);
    }
    judging_ = false;
}

// What is wrong stands where it is read, in the alarm's own ink, and the field that is meant is framed by it.
void PaperScreen::judge() {
    if (judging_ || table_->rowCount() == 0)
        return;
    judging_ = true;
    said_->clear();
    const auto typed = rows();
    if (const auto night = day()) {
        const auto reads = readPaper(typed, *night);
        for (std::size_t r = 0; r < reads.size(); ++r) {
            const bool wrong = reads[r].column >= 0;
            for (int c = 0; c < paperColumns; ++c)
                table_->item(static_cast<int>(r), c)
                    ->setBackground(reads[r].column == c ? QBrush{dress_.inks().shade} : QBrush{});
            auto* answer = table_->item(static_cast<int>(r), answerColumn);
            answer->setText(wrong ? tr("not yet: %1").arg(reads[r].words) : reads[r].words);
            answer->setToolTip(reads[r].words);
        }
    }
    judging_ = false;
    if (!typed.back().isEmpty())
        addRow();
    tellRow();
}

// What its column is too narrow for stands whole under the table.
void PaperScreen::tellRow() {
    if (said_->text() == told_)
        said_->clear();
    const auto* answer = table_->item(table_->currentRow(), answerColumn);
    if (judging_ || !answer || answer->text().isEmpty())
        return;
    const int room = table_->columnWidth(answerColumn) - dress_.px(2);
    if (QFontMetrics{table_->font()}.horizontalAdvance(answer->text()) > room)
        say(told_ = answer->text());
}

void PaperScreen::toNextRow() {
    const int row = table_->currentRow() + 1;
    if (row >= table_->rowCount())
        return;
    table_->setCurrentCell(row, paperTime);
    table_->setFocus();
}

void PaperScreen::takeOut() {
    const int row = table_->currentRow();
    if (row < 0 || row + 1 == table_->rowCount()) // the last one is always empty
        return;
    table_->removeRow(row);
    judge();
}

// What is being typed counts: leaving the field takes it over.
void PaperScreen::leaveField() {
    const auto field = table_->currentIndex();
    table_->setCurrentIndex({});
    table_->setCurrentIndex(field);
}

// A list of words that stands open keeps its field from hearing that it was left.
void PaperScreen::hideEvent(QHideEvent* event) {
    auto fields = table_->findChildren<QLineEdit*>();
    fields << zone_;
    for (const auto* field : std::as_const(fields))
        if (field->completer())
            field->completer()->popup()->hide();
    leaveField();
    QWidget::hideEvent(event);
}

void PaperScreen::keep() {
    leaveField();
    const auto night = day();
    if (!night)
        return;
    std::vector<Fact> facts;
    const auto reads = readPaper(rows(), *night);
    for (std::size_t r = 0; r < reads.size(); ++r) {
        if (reads[r].column >= 0) {
            table_->setCurrentCell(static_cast<int>(r), reads[r].column);
            say(tr("Row %1: %2").arg(r + 1).arg(reads[r].words));
            return;
        }
        if (reads[r].fact)
            facts.push_back(*reads[r].fact);
    }
    if (facts.empty())
        say(tr("There is no row yet. Begin with the time."));
    else
        emit keepWanted(facts);
}

bool PaperScreen::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_ && event->type() == QEvent::KeyPress) {
        const auto key = static_cast<QKeyEvent*>(event)->key();
        // The table would take these for its own.
        if (static_cast<QKeyEvent*>(event)->modifiers() & Qt::ControlModifier)
            return keys_->answer(static_cast<QKeyEvent&>(*event));
        if (key == Qt::Key_Return || key == Qt::Key_Enter) {
            toNextRow();
            return true;
        }
        if (key == Qt::Key_Delete && table_->currentItem() && table_->currentColumn() < paperColumns) {
            table_->currentItem()->setText({});
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void PaperScreen::act(int key) {
    if (key == Qt::Key_Escape)
        emit left();
    else
        key == ctrlEnter ? keep() : takeOut();
}

} // namespace panside
