#pragma once
// What a litre of sap or syrup weighs, and the sugar that such a weight means.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// Mass of a volume of sugar solution.
// Range      0 to 75 brix, 0 to 105 degC
// Outside    nullopt
// Accuracy   0.01 kg/m3 of the source's polynomial; sugarDensityUncertainty as a description of syrup. Older tables
//            (NBS C440) are lower by 0.06 to 40 brix, 0.26 at 66 and 0.28 at 70: the International scale was taken, as
//            instruments use it
// Source     ICUMSA SPS-4 (1998), the equation of Emmerich and Rosenbruch, PTB
[[nodiscard]] std::optional<Density> sugarDensity(Brix sugar, Temperature temperature);

// The sugar of a solution that weighs so much: the inverse of sugarDensity.
// Range      from water to 75 brix at that temperature, 0 to 105 degC
// Outside    nullopt
// Accuracy   1e-9 brix against sugarDensity; 1 kg/m3 is 0.17 brix in syrup, 0.25 in sap
// Source     as sugarDensity
[[nodiscard]] std::optional<Brix> sugarOfDensity(Density density, Temperature temperature);

// Standard uncertainty of sugarDensity.
// Range      as sugarDensity
// Outside    nullopt
// Accuracy   an estimate: 0.3 kg/m3 of older tables and of minerals in syrup, by the share of sugar; above 80 degC,
//            where the measurements behind the equation are not known, 1.5 kg/m3 more; above 100 degC, beyond the
//            equation, 2.5
// Source     differences between the published tables named at sugarDensity; the rest is our judgement
[[nodiscard]] std::optional<Density> sugarDensityUncertainty(Brix sugar, Temperature temperature);

} // namespace panside
