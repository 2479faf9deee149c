#pragma once
// What a density check says: the sugar behind what was read, and how well.
#include "core/boil/fact.h"
#include "core/boil/picture.h"

#include <optional>

namespace panside {

// One standard deviation: what one hydrometer is off by in every check; MarkBelief learns it apart.
inline constexpr Brix glassError = Brix::degrees(0.15);

struct CheckedSugar {
    Brix sugar;
    Brix scatter; // standard deviation from one check to the next, beside what the glass is always off by
    CheckRemark remark = CheckRemark::none;
};

// Can this be read in syrup at all? Hot syrup reads a hydrometer 7 to 8 brix low, so the lower limit is far below syrup
// (common practice, no source). What cannot is kept, and nothing is learned from it.
bool mayBeSyrup(const DensityCheck& check);

// nullopt for what no syrup and no hydrometer can be (a reading outside its scale, a cup at 200 degC). Where the cup's
// temperature was not noted, a reading near the density wanted is taken as corrected already and one that is a hot
// cup's as a cup's of some 93 degC, each with a wider scatter. A hydrometer's scale is made for 60 degF unless it is
// said.
std::optional<CheckedSugar> sugarOf(const DensityCheck& check, Brix wanted);

} // namespace panside
