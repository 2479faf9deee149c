#include "ui/review/alarms_pane.h"

#include "ui/look/each_language.h"
#include "ui/look/press.h"
#include "ui/words/alarm_words.h"

#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QScroller>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

AlarmsPane::AlarmsPane(QWidget* parent)
    : QWidget{parent}, story_{new QLabel}, table_{new QTableWidget}, next_{new Press} {
    setObjectName(QStringLiteral("alarms"));
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(story_);
    column->addWidget(table_, 1);
    next_->setFocusPolicy(Qt::TabFocus);
    column->addWidget(next_);
    story_->setObjectName(QStringLiteral("alarmsStory"));
    story_->setWordWrap(true);
    table_->setObjectName(QStringLiteral("alarmList"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->verticalHeader()->hide();
    table_->setShowGrid(false);
    table_->setWordWrap(false);
    table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table_->installEventFilter(this);
    QScroller::grabGesture(table_->viewport(), QScroller::TouchGesture);
    next_->setObjectName(QStringLiteral("nextTime"));
    connect(next_, &Press::clicked, this, &AlarmsPane::next);
    connect(table_, &QTableWidget::currentCellChanged, this, [this](int now, int, int before) {
        if (now != before)
            tell();
    });
    setFocusProxy(table_);
    name();
    inEachLanguage(*this, [this] { name(); });
}

void AlarmsPane::name() {
    next_->say(tr("When it was on"), tr("Enter"));
    table_->setColumnCount(static_cast<int>(alarmHeadings().size()));
    table_->setHorizontalHeaderLabels(alarmHeadings());
    fill();
}

void AlarmsPane::wear(const Dress& dress) {
    dress_ = dress;
    next_->wear(dress);
    fit();
}

void AlarmsPane::display(std::optional<AlarmReview> review, const WallClock& clock) {
    review_ = std::move(review);
    clock_ = clock;
    fill();
}

void AlarmsPane::fill() {
    story_->setText(review_ ? alarmsStory(*review_, clock_) : tr("Working out the alarms …"));
    lines_ = review_ ? alarmLines(*review_, clock_) : std::vector<AlarmLine>{};
    table_->setRowCount(0);
    table_->setRowCount(static_cast<int>(lines_.size()));
    for (std::size_t i = 0; i < lines_.size(); ++i)
        for (qsizetype c = 0; c < lines_[i].cells.size(); ++c)
            table_->setItem(static_cast<int>(i), static_cast<int>(c), new QTableWidgetItem{lines_[i].cells[c]});
    next_->setEnabled(!lines_.empty());
    fit();
    if (!lines_.empty())
        table_->selectRow(0);
}

// As large as the width bears, up to what is read from a metre; never smaller than for the hand's distance.
void AlarmsPane::fit() {
    double high = mm::act;
    for (;; high -= 0.5) {
        table_->setFont(dress_.letters(high));
        table_->horizontalHeader()->setFont(dress_.letters(mm::words));
        table_->horizontalHeader()->setStretchLastSection(false);
        table_->resizeColumnsToContents();
        for (int c = 0; c + 1 < table_->columnCount(); ++c) // a cell's end is told from the next one's beginning
            table_->setColumnWidth(c, table_->columnWidth(c) + dress_.px(2));
        if (high <= mm::words || table_->horizontalHeader()->length() <= table_->viewport()->width())
            break;
    }
    story_->setFont(dress_.letters(mm::words, true)); // one line of it beside a low chart
    table_->horizontalHeader()->setStretchLastSection(true);
    const int row = std::max(dress_.px(mm::target), QFontMetrics{table_->font()}.height() + dress_.px(1));
    table_->verticalHeader()->setDefaultSectionSize(row);
    for (int i = 0; i < table_->rowCount(); ++i)
        table_->setRowHeight(i, row);
}

std::optional<std::size_t> AlarmsPane::chosen() const {
    const int row = table_->currentRow();
    return row >= 0 && row < static_cast<int>(lines_.size()) ? std::optional{static_cast<std::size_t>(row)}
                                                             : std::nullopt;
}

void AlarmsPane::tell() {
    span_.reset();
    const auto row = chosen();
    emit chosenChanged(row);
    if (row && isVisible())
        emit said(lines_[*row].story);
}

void AlarmsPane::next() {
    const auto row = chosen();
    if (!row || !review_)
        return;
    const AlarmTally& tally = review_->tallies[*row];
    span_ = span_ ? (*span_ + 1) % tally.spans.size() : 0;
    const AlarmSpan& span = tally.spans[*span_];
    emit pointed(span.began);
    emit said(tr("%1, %2 of %3: %4")
                  .arg(alarmName(tally.alarm, tally.series))
                  .arg(*span_ + 1)
                  .arg(tally.spans.size())
                  .arg(alarmSpan(span, review_->until, clock_)));
}

void AlarmsPane::resizeEvent(QResizeEvent*) { fit(); }

bool AlarmsPane::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_ && event->type() == QEvent::KeyPress) {
        switch (static_cast<QKeyEvent&>(*event).key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            next();
            return true;
        case Qt::Key_Escape:
            emit left();
            return true;
        case Qt::Key_Up:
        case Qt::Key_Down:
        case Qt::Key_PageUp:
        case Qt::Key_PageDown:
        case Qt::Key_Tab:
        case Qt::Key_Backtab:
            return false;
        default:
            event->ignore(); // the chart's keys are the screen's
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace panside
