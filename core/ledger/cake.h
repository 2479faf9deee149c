#pragma once
// A filter press: when its gauge will stand at the limit. Only the cake's resistance is modelled: the cake grows with
// what goes through, and the pressure with the cake. Of a pump that gives a steady flow it climbs; of an air pump the
// flow falls with the pressure that it meets, and the climb with it. What packs under pressure, or blinds the papers
// with fine sand, climbs steeper than a line; by how much each run shows itself, and the runs before it with the same
// aid and papers. What goes through is a plain number, a volume or a time: only its shares count. A bypass that opens
// ends the forecast of that run, whatever the gauge does afterwards.
#include "core/quantity/quantity.h"

#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace panside {

struct CakeReading {
    double through;    // what has gone through since the run began; at a steady flow its time serves as well
    Pressure pressure; // gauge
};
// A run that is over, with the same aid and papers.
struct CakeRun {
    std::vector<CakeReading> readings;
    bool sameNight = false; // and the same sugar sand
};
struct CakeForecast {
    double p10, p50;           // of `through`, where the gauge stands at the limit
    std::optional<double> p90; // none: it may never get there
    double climb;              // Pa for each unit of `through`, now
    bool learned = false;      // the runs before had a word in it
};
enum class CakeSilence : std::uint8_t {
    tooFew,      // fewer than three readings
    atLimit,     // it stands there already
    notClimbing, // nothing can be said of when it gets there
    bypass       // it climbed and stopped: a bypass has opened, or hardly anything flows; for the rest of the run
};
// Range      three readings or more by `through`, gauge and limit above 0
// Accuracy   the range holds the truth in 8 of 10 runs or more: of cakes that pack with the pressure to a power of 0 to
//            0.7, of papers that blind, of sand and warmth that change by a third within the run, of gauges that climb
//            as the run to a power of 1 to 1.8, read to half a psi or beating with the pump's stroke, and of air pumps
//            that stall at 1.1 to 3 times the limit
// Source     filtration at a constant rate: pressure = viscosity * rate / area * (resistance * solids * volume / area +
//            that of the papers): Ruth 1935, as in McCabe, Smith and Harriott, Unit Operations; blinding: Hermia 1982;
//            a centrifugal or air pump, whose flow follows from the pressure: Perry's, Filtration (all from memory)
[[nodiscard]] std::variant<CakeForecast, CakeSilence>
cakeForecast(std::span<const CakeReading> readings, Pressure limit, std::span<const CakeRun> before = {});

} // namespace panside
