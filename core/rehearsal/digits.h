#pragma once
#include <cmath>

namespace panside::rehearsal {

// To a last digit. Steps under one divide evenly into it, so that 2.4 stays 2.4 and is not 2.4000000000000004.
inline double rounded(double value, double step) {
    return step < 1 ? std::round(value / step) / std::round(1 / step) : std::round(value / step) * step;
}

} // namespace panside::rehearsal
