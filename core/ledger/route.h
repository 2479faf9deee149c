#pragma once
// The round of a gathering: its stops in the order they were last gone, and what each gave the last time.
#include "core/ledger/ledger.h"

namespace panside {

struct RouteStop {
    std::string name, to; // where it is gathered, and the tank it went into the last time
    std::optional<double> taps;
    std::optional<Instant> at; // the last time
    Volume gave;
    std::optional<Brix> sugar; // read then
};
// Stops of the last ten days on which anything was gathered: those of the day with the most stops in their order (the
// later day, where several have as many), then the others. What was gathered with no name of its own is no stop.
std::vector<RouteStop> routeOf(const Ledger& ledger);

} // namespace panside
