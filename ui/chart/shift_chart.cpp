#include "ui/chart/shift_chart.h"

#include "core/boil/past_shift.h"

namespace panside {

ShiftChart shiftChart(const Journal& journal, ShiftId shift) {
    PastShift past;
    ShiftChart chart;
    journal.visit(shift, [&](FactId, const Fact& fact) {
        past.add(fact);
        chart.trace.add(fact);
        return true;
    });
    for (const RisePoint& point : past.rise())
        chart.trace.add(point);
    for (const SteamPoint& point : past.steam())
        chart.trace.add(point);
    chart.last = past.last();
    return chart;
}

} // namespace panside
