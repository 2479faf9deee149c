#pragma once
// How the forecasts of each shift's draws came out. Worked out from the facts by running the engine over them, kept to
// be quick, and worked out again from nothing where they are missing, were altered, or the shift has changed.
#include "core/boil/picture.h"
#include "core/journal/journal.h"

#include <vector>

namespace panside {

// One a draw that was foretold, by time. What is not kept yet takes up to half a second of work a shift; it is kept if
// this journal may be written and the shift is over.
std::vector<DrawScore> drawScores(Journal& journal, ShiftId shift);

} // namespace panside
