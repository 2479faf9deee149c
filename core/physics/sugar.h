#pragma once
// Sucrose in water, which is what sap and syrup very nearly are: how far above water it boils.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// How far above boiling water a solution boils, at the pressure over it. 0 brix rises by exactly 0 K.
// Range      0 to 78 brix, 60 to 110 kPa; over 75 no published boiling point stands beside it here
// Outside    nullopt
// Accuracy   0.001 K of the source's equation; as a description of syrup boilingRiseUncertainty. Credible published
//            values lie from 0.25 K below it to 0.06 K above it at 66 to 67 brix (66.9 brix: 4.20 K here; trade charts
//            4.06 to 4.11, osmotic data carried to the boil 4.24). Forms fitted at 25 degC and used at the boil give
//            4.57 and are wrong here. It was taken because it rests on boiling points, and meets both the osmotic data
//            and the trade
// Source     Starzak and Peacock, Zuckerindustrie 122 (1997): water activity; with IAPWS R7-97(2012), equations 30 and
//            31
[[nodiscard]] std::optional<TemperatureDifference> boilingRise(Brix sugar, Pressure pressure);

// The sugar of a solution that boils so far above water: the inverse of boilingRise.
// Range      rise from 0 K (0 brix) to that of 78 brix, 60 to 110 kPa
// Outside    nullopt, and so for any rise below 0 K: a probe's noise about 0 is for the caller to judge
// Accuracy   1e-6 brix against boilingRise; as a description of syrup boilingRiseUncertainty over the slope, 0.6 brix
//            near 66
// Source     as boilingRise
[[nodiscard]] std::optional<Brix> sugarAtRise(TemperatureDifference rise, Pressure pressure);

// Standard uncertainty of boilingRise for real syrup before any hydrometer has trimmed it.
// Range      0 to 78 brix
// Outside    nullopt
// Accuracy   an estimate: 0.02 K and 2.6 percent of the rise at sea level; 0.13 K at 66.9 brix, so that twice it covers
//            the published values. Late syrup, with much invert sugar, boils up to 0.3 K hotter than this says
// Source     spread of the published values named at boilingRise; invert sugar by Ross's and Norrish's mixing rules
[[nodiscard]] std::optional<TemperatureDifference> boilingRiseUncertainty(Brix sugar);

// Standard uncertainty of sugarAtRise, for a rise that is itself known so well.
// Range      as sugarAtRise; the rise's uncertainty 0 to 5 K
// Outside    nullopt
// Accuracy   an estimate: both uncertainties over the slope, which is 0.21 K a brix at 66 and 0.02 near water
// Source     as boilingRiseUncertainty
[[nodiscard]] std::optional<Brix> sugarAtRiseUncertainty(TemperatureDifference rise, Pressure pressure,
                                                         TemperatureDifference riseUncertainty);

} // namespace panside
