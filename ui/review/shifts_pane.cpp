#include "ui/review/shifts_pane.h"

#include "ui/ledger/ledger_table.h"
#include "ui/look/press.h"

#include <QEvent>
#include <QHBoxLayout>
#include <algorithm>

namespace panside {

ShiftsPane::ShiftsPane(QWidget* parent)
    : QWidget{parent}, list_{new LedgerTable{QStringLiteral("shifts"), this}}, open_{new Press}, lay_{new Press},
      from_{new Press}, forecasts_{new Press}, export_{new Press} {
    auto* keys = new QHBoxLayout{this}; // its alarms and its entries are tabs
    keys->setContentsMargins(0, 0, 0, 0);
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
    connect(list_, &LedgerTable::opened, this, [this] { emit wanted(Qt::Key_Return); });
    name();
}

void ShiftsPane::name() {
    open_->say(tr("Open"), tr("Enter"));
    lay_->say(tr("Overlay"), tr("Space"));
    forecasts_->say(tr("Past forecasts"), QStringLiteral("P"));
    export_->say(tr("Write its log"), QStringLiteral("E"));
    fill();
}

void ShiftsPane::sayFrom(const QString& word) { from_->say(word, QStringLiteral("L")); }

void ShiftsPane::wear(const Dress& dress) {
    for (Press* press : {open_, lay_, from_, forecasts_, export_})
        press->wear(dress);
    list_->wear(dress);
}

void ShiftsPane::fill() {
    const auto kept = chosen();
    std::vector<TableRow> lines;
    for (const ReviewRow& row : rows_)
        lines.push_back({.cells = row.cells, .strong = row.shift == opened_});
    list_->display(reviewColumns(), lines);
    const auto found =
        std::find_if(rows_.begin(), rows_.end(), [&](const ReviewRow& row) { return row.shift == kept; });
    list_->choose(found == rows_.end() ? 0 : static_cast<int>(found - rows_.begin()));
}

bool ShiftsPane::display(const std::vector<ReviewRow>& rows) {
    if (rows == rows_)
        return false;
    const auto kept = chosen();
    rows_ = rows;
    fill();
    for (std::size_t i = 0; kept && i < rows_.size(); ++i)
        if (rows_[i].shift == *kept)
            list_->choose(static_cast<int>(i));
    return true;
}

void ShiftsPane::tellOpened(ShiftId shift) {
    opened_ = shift;
    fill();
}

std::optional<ShiftId> ShiftsPane::chosen() const {
    const int row = list_->chosen();
    return row >= 0 && row < static_cast<int>(rows_.size()) ? std::optional{rows_[static_cast<std::size_t>(row)].shift}
                                                            : std::nullopt;
}

void ShiftsPane::step(int by) {
    list_->choose(std::clamp(list_->chosen() + by, 0, static_cast<int>(rows_.size()) - 1));
    list_->setFocus();
}

void ShiftsPane::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange)
        name();
    QWidget::changeEvent(event);
}

} // namespace panside
