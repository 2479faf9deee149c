#include "ui/review/shifts_pane.h"

#include "ui/look/press.h"

#include <QEvent>
#include <QHeaderView>
#include <QKeyEvent>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

namespace panside {

ShiftsPane::ShiftsPane(std::function<bool(const QKeyEvent&)> press, QWidget* parent)
    : QWidget{parent}, press_{std::move(press)}, table_{new QTableWidget}, open_{new Press}, lay_{new Press},
      from_{new Press}, forecasts_{new Press}, export_{new Press} {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(table_, 1);
    auto* keys = new QHBoxLayout; // its alarms and its entries are tabs
    const struct {
        Press* press;
        const char* name;
        int key;
    } all[] = {{open_, "open", Qt::Key_Return},
               {lay_, "layOver", Qt::Key_Space},
               {from_, "from", Qt::Key_L},
               {forecasts_, "forecasts", Qt::Key_P},
               {export_, "export", Qt::Key_E}};
    for (const auto& [each, itsName, key] : all) {
        each->setObjectName(QString::fromLatin1(itsName));
        each->setFocusPolicy(Qt::TabFocus);
        connect(each, &Press::clicked, this, [this, code = key] { emit wanted(code); });
        keys->addWidget(each);
    }
    column->addLayout(keys);
    table_->setObjectName(QStringLiteral("shifts"));
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->verticalHeader()->hide();
    table_->setShowGrid(false);
    table_->installEventFilter(this);
    connect(table_, &QTableWidget::cellDoubleClicked, this, [this] { emit wanted(Qt::Key_Return); });
    setFocusProxy(table_);
    name();
}

void ShiftsPane::name() {
    open_->say(tr("Open"), tr("Enter"));
    lay_->say(tr("Overlay"), tr("Space"));
    forecasts_->say(tr("Past forecasts"), QStringLiteral("P"));
    export_->say(tr("Write its log"), QStringLiteral("E"));
    table_->setColumnCount(static_cast<int>(reviewHeadings().size()));
    table_->setHorizontalHeaderLabels(reviewHeadings());
}

void ShiftsPane::sayFrom(const QString& word) { from_->say(word, QStringLiteral("L")); }

void ShiftsPane::wear(const Dress& dress) {
    for (Press* press : {open_, lay_, from_, forecasts_, export_})
        press->wear(dress);
    table_->setFont(dress.letters(mm::smallWords));
    table_->horizontalHeader()->setFont(dress.letters(mm::smallWords));
    table_->verticalHeader()->setDefaultSectionSize(dress.px(mm::target));
    table_->setMinimumHeight(dress.px(mm::target) * 2); // the heading and a night: the chart is what they came for
}

bool ShiftsPane::display(const std::vector<ReviewRow>& rows) {
    if (rows == rows_)
        return false;
    const auto kept = chosen();
    rows_ = rows;
    table_->setRowCount(static_cast<int>(rows.size()));
    for (std::size_t i = 0; i < rows.size(); ++i)
        for (qsizetype c = 0; c < rows[i].cells.size(); ++c)
            table_->setItem(static_cast<int>(i), static_cast<int>(c), new QTableWidgetItem{rows[i].cells[c]});
    table_->resizeColumnsToContents();
    table_->horizontalHeader()->setStretchLastSection(true);
    const auto found =
        std::find_if(rows_.begin(), rows_.end(), [&](const ReviewRow& row) { return row.shift == kept; });
    table_->selectRow(found == rows_.end() ? 0 : static_cast<int>(found - rows_.begin()));
    return true;
}

std::optional<ShiftId> ShiftsPane::chosen() const {
    const int row = table_->currentRow();
    return row >= 0 && row < static_cast<int>(rows_.size()) ? std::optional{rows_[static_cast<std::size_t>(row)].shift}
                                                            : std::nullopt;
}

void ShiftsPane::step(int by) {
    table_->selectRow(std::clamp(table_->currentRow() + by, 0, static_cast<int>(rows_.size()) - 1));
    table_->setFocus();
}

bool ShiftsPane::eventFilter(QObject* watched, QEvent* event) {
    if (watched == table_ && event->type() == QEvent::KeyPress) {
        const auto& pressed = static_cast<QKeyEvent&>(*event);
        if (pressed.key() != Qt::Key_Up && pressed.key() != Qt::Key_Down && press_(pressed))
            return true;
    }
    return QWidget::eventFilter(watched, event);
}

void ShiftsPane::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange)
        name();
    QWidget::changeEvent(event);
}

} // namespace panside
