#pragma once
// The nights as a list: when, and how much syrup. Pure words over the journal's summaries.
#include "core/journal/shift_summary.h"
#include "ui/ledger/ledger_table.h"
#include "ui/look/units.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace panside {

struct ReviewRow {
    ShiftId shift;
    QStringList cells; // one a column
    bool open;         // the shift that is going on
    bool operator==(const ReviewRow&) const = default;
};

std::vector<TableColumn> reviewColumns();
// The newest first: it is the one that is looked for next morning.
std::vector<ReviewRow> reviewRows(const std::vector<ShiftSummary>& summaries, Units units);
// The shift's own name for a chart's legend: "Sat 14 March, 18:05".
QString shiftName(Instant begun);
// One line on a night, for the head of its chart.
QString shiftStory(const ShiftSummary& summary, Units units);

} // namespace panside
