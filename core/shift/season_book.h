#pragma once
// The season out of a journal: accounts that are kept, and those that must be worked out first.
#include "core/journal/journal.h"
#include "core/season/season.h"

namespace panside {

// Every shift, by time, with its account where one is kept that still holds: quick, however long the shifts.
std::vector<SeasonShift> keptSeason(const Journal& journal);
// Runs the engine over a shift's facts, a tenth of a second a night, and keeps the account where this journal may be
// written and the shift is over. nullopt: told to stop. Throws JournalError.
std::optional<ShiftAccount> workOut(Journal& journal, const Shift& shift, const std::function<bool()>& stop = {});
// Every shift with its account, those that are missing worked out; `each` is told how many are done of how many.
std::vector<SeasonShift> wholeSeason(Journal& journal, const std::function<void(int, int)>& each = {});

} // namespace panside
