#include "core/journal/fact_stream.h"

#include "core/boil/shift_log.h"

namespace panside {
namespace {

// The settings in force stand before everything, also before what was entered later as having happened earlier.
constexpr const char* byTime =
    "SELECT id, at, row, sum FROM fact WHERE shift=?1 ORDER BY CASE WHEN id<=?2 THEN ?3 ELSE at END, id";

} // namespace

FactStream::FactStream(const Journal::Inside& inside, ShiftId shift)
    : inside_{inside}, shift_{shift}, withdrawn_{withdrawnIds(*inside.db, shift)},
      beginning_{beginningOf(inside, shift)}, query_{*inside.db, byTime} {
    query_.bind(1, microsOf(shift));
    query_.bind(2, beginning_.opening);
    query_.bind(3, beginning_.earliest);
}

bool FactStream::next() {
    while (query_.executeStep()) {
        const auto row = query_.getColumns<FactRow, 3>();
        if (sumOf(shift_, row) != query_.getColumn(3).getInt64())
            throw JournalError{JournalTrouble::damaged, inside_.place, aFactOf(textOf(shift_))};
        id = row.id;
        if (isWithdrawn(id)) {
            ++leftOut_;
            continue;
        }
        fact = factIn(row.row, row.at);
        if (id <= beginning_.opening)
            fact.at = instantOf(beginning_.earliest);
        return true;
    }
    return false;
}

} // namespace panside
