#pragma once
// Sap for syrup, and sap to keep back.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// No tree gives sweeter sap, hardly a membrane sweeter concentrate (trade practice: 1 to 5, rarely more, and 8 to 20):
// what is read over it is asked about, and never refused.
inline constexpr Brix sweetestSap = Brix::degrees(12), sweetestConcentrate = Brix::degrees(20);

// Volumes of sap for one volume of syrup, both at 20 degC.
// Range      sap 0.2 brix or more, thinner than the syrup; syrup to 75 brix
// Outside    nullopt
// Accuracy   exact for sugar that is all kept; a season's total is always worse, as sugar stays in the pans. For 66.9
//            brix it asks for 1 percent more than the trade's revised rule, for 66.0 it agrees within 0.5 percent
// Source     mass balance with ICUMSA SPS-4 (1998) densities
[[nodiscard]] std::optional<double> sapPerSyrup(Brix sap, Brix syrup);

// The rule of 86: 86 over the sap's brix.
// Range      sap 0.2 to 30 brix; made for raw sap and for syrup of about 65.5 brix
// Outside    nullopt
// Accuracy   1 percent from 1 to 4 brix for 65.5 brix; 3 percent too little for 66.9, 5 percent too much at 15 brix, 12
//            at 30
// Source     rule of the trade, named in "Determining sap volumes", trade farming magazine, about 2015
[[nodiscard]] std::optional<double> ruleOf86(Brix sap);

// The revised rule: 87.1, 87.7 or 88.2 (syrup of 66.0, 66.5 or 66.9 brix) over the sap's brix, less 0.32.
// Range      sap 0.2 to 30 brix, syrup of those three densities
// Outside    nullopt
// Accuracy   within 1.5 percent of the mass balance to 8 brix, 4 percent at 30
// Source     University of Vermont maple research centre, about 2013; 87.7, and 0.32 for 66.9, from memory
[[nodiscard]] std::optional<double> revisedRule(Brix sap, Brix syrup);

// Sap to keep back so that the pans stay covered while the fire burns out: what fills the pans by so much depth, and
// half of what would boil off in that time, as the fire dies away evenly.
// Range      area to 100 m2, depth to 0.5 m, rate to 10 000 L/h, burn-out to 12 h, none negative
// Outside    nullopt
// Accuracy   an estimate, 20 percent; a fire of large wood burns longer. Local practice and the maker's advice come
//            first
// Source     arithmetic of areas and rates; the half is common practice, no source
[[nodiscard]] std::optional<Volume> sapToKeepBack(Area pan, Length depth, VolumeFlow rate, Duration burnOut);

} // namespace panside
