#include "ui/review/shifts_pane.h"

#include "ui/ledger/ledger_table.h"
#include "ui/look/each_language.h"
#include "ui/page/action_keys.h"

#include <QVBoxLayout>
#include <algorithm>

namespace panside {

ShiftsPane::ShiftsPane(QWidget* parent)
    : QWidget{parent}, list_{new LedgerTable{QStringLiteral("shifts"), this}}, keys_{new ActionKeys} {
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(keys_);
    connect(keys_, &ActionKeys::pressed, this, &ShiftsPane::wanted);
    connect(list_, &LedgerTable::opened, this, [this] { emit wanted(Qt::Key_Return); });
    fill();
    inEachLanguage(*this, [this] {
        fill(); // whoever knows the moment says the keys
    });
}

// The night's alarms and its entries are tabs.
void ShiftsPane::sayFrom(const QString& word) {
    keys_->display({{Qt::Key_Return, QStringLiteral("open"), tr("Open")},
                    {Qt::Key_Space, QStringLiteral("layOver"), tr("Overlay")},
                    {Qt::Key_L, QStringLiteral("from"), word},
                    {Qt::Key_P, QStringLiteral("forecasts"), tr("Past forecasts")},
                    {Qt::Key_E, QStringLiteral("export"), tr("Write its log")}});
}

void ShiftsPane::wear(const Dress& dress) {
    keys_->wear(dress);
    list_->wear(dress);
}

void ShiftsPane::fill() {
    const auto kept = chosen();
    std::vector<TableRow> lines;
    for (const ReviewRow& row : rows_)
        lines.push_back({.cells = row.cells, .strong = row.shift == opened_});
    list_->display(reviewColumns(), lines);
    const auto found = std::ranges::find(rows_, kept, &ReviewRow::shift);
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

} // namespace panside
