#pragma once
// A past shift, read out of the journal for its chart.
#include "core/boil/picture.h"
#include "core/journal/journal.h"
#include "ui/chart/shift_trace.h"

namespace panside {

struct ShiftChart {
    ShiftTrace trace;
    std::optional<Picture> last; // at the last fact, without its alarms: those cost more, and come later
};
// The readings pass through and are not kept. Throws JournalError.
ShiftChart shiftChart(const Journal& journal, ShiftId shift);

} // namespace panside
