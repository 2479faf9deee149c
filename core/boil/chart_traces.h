#pragma once
#include "core/boil/boil.h"

namespace panside {

// What a chart draws of the past, grown with the fold.
struct ChartTraces {
    std::vector<RisePoint> rise;   // by time
    std::vector<SteamPoint> steam; // by time
    // After `state` has taken the fact.
    void absorb(const State& state, const Fact& fact);
};

} // namespace panside
