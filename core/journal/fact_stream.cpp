#include "core/journal/fact_stream.h"

#include "core/boil/shift_log.h"

namespace panside {

// The settings in force stand before everything, also before what was entered later as having happened earlier.
FactStream::FactStream(const Journal::Inside& inside, ShiftId shift)
    : inside_{inside}, shift_{shift}, beginning_{beginningOf(inside, shift)},
      query_{*inside.db,
             "SELECT id, at, row, sum FROM fact WHERE shift=?1 ORDER BY CASE WHEN id<=?2 THEN ?3 ELSE at END, id"} {
    query_.bind(1, microsOf(shift));
    query_.bind(2, beginning_.opening);
    query_.bind(3, beginning_.earliest);
}

bool FactStream::next() {
    if (!query_.executeStep())
        return false;
    const FactRow row{query_.getColumn(0).getInt64(), query_.getColumn(1).getInt64(), query_.getColumn(2).getString()};
    if (sumOf(shift_, row) != query_.getColumn(3).getInt64())
        throw JournalError{JournalTrouble::damaged, inside_.place, aFactOf(textOf(shift_))};
    id = row.id;
    fact = factIn(row.row, row.at);
    if (id <= beginning_.opening)
        fact.at = instantOf(beginning_.earliest);
    return true;
}

} // namespace panside
