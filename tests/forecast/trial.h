#pragma once
// One boil run past all forecasters, with the truth beside it.
#include "tests/forecast/boils.h"
#include "tests/forecast/forecaster.h"

#include <array>
#include <optional>
#include <vector>

namespace panside::judge {

// A forecast that is not given counts as this one, and a p90 that alone is not given as an hour or three times the
// middle, whichever is longer: so silence does not win.
inline constexpr double nullP10 = 60, nullP50 = 900, nullP90 = 3600;
inline constexpr std::array<double, 4> leads = {1200, 600, 300, 120}; // seconds before the draw

// How one forecaster did in one cycle.
struct Showing {
    double pinball = 0;                          // s: mean over p10, p50, p90 and over the moments of the cycle
    double inside = 0;                           // share of the moments with a forecast in which p10 <= truth <= p90
    double width = 0;                            // s: mean of p90 - p10 over the moments with a forecast
    double spoke = 0;                            // share of the moments with a forecast
    double atLast = 0, insideAtLast = 0;         // moments of the last two minutes, and those inside
    std::array<std::optional<double>, 4> errors; // s: p50 less the truth, at each lead
};
struct Cycle {
    std::size_t boil;
    bool first;    // since the fire was lit; no draw before it
    double length; // s, from the draw shut to the event
    double moments;
    std::vector<Showing> showings;
    std::optional<double> markError, brixError; // K, Brix: the engine's at the event, after three checks
};
struct Trial {
    std::vector<Cycle> cycles;
    int censored = 0;                      // cycles that the crew or the shutdown ended before the event
    const char* evaporationFrom = "";      // what the engine had to judge it by
    std::vector<double> evaporationErrors; // relative, each ten minutes from half an hour after the boil was up
    double engineSeconds = 0;
};
// `before`: facts that all of them have before the boil begins.
Trial run(const Boiling& boiling, std::size_t number, const std::vector<Entrant>& entrants,
          const std::vector<Fact>& before = {});
// What one other night on the same rig, by the same crew, would have taught of its rhythm.
std::vector<Fact> learnedTheNightBefore(const Boiling& boiling);

} // namespace panside::judge
