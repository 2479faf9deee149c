#include "ui/chart/shift_chart.h"

#include "core/boil/past_shift.h"

namespace panside {

ShiftChart shiftChart(const Journal& journal, ShiftId shift) {
    PastShift past;
    ShiftChart chart;
    journal.visit(shift, [&](FactId, const Fact& fact) {
        past.take(fact);
        chart.trace.take(fact);
        return true;
    });
    for (const RisePoint& point : past.rise())
        chart.trace.take(point);
    for (const SteamPoint& point : past.steam())
        chart.trace.take(point);
    chart.last = past.last();
    return chart;
}

} // namespace panside
