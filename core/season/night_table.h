#pragma once
// The nights as a table for the regression: a row a night that knows all, a column a cause that varied.
#include "core/season/tuning.h"

namespace panside {

struct CauseColumn {
    Cause cause;
    std::string what;
    double usual;              // SI mean over the nights used
    std::vector<double> steps; // one a night: the cause in steps
};
struct NightTable {
    int withOutcome = 0;
    std::vector<double> outcome; // logarithm
    std::vector<CauseColumn> columns;
    std::vector<LeftOut> leftOut;
};
NightTable nightTable(std::span<const SeasonShift> shifts, Outcome outcome);

} // namespace panside
