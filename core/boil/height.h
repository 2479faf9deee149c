#pragma once
// What the height above the sea says of a pressure and of boiling water: weather moves them about what is usual there,
// and no further.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// A pressure further than this from the usual one at its height is asked about, or doubted. Weather within 1.5 degF of
// boiling point is common practice; a stronger high or a deeper low comes once or twice in a spring, and a reading in
// it is doubted, not refused.
inline constexpr Pressure askedAbout = Pressure::kilopascal(2), doubtedFrom = Pressure::kilopascal(2.9);

// Nearer to what is usual at the sea than to what is usual at this height, and at least `far` from the latter: likely
// reduced to sea level, as weather reports and many weather boxes give it.
[[nodiscard]] bool looksReduced(Pressure station, Length elevation, Pressure far);
// The same of a pressure for the sea that was likely read at this height.
[[nodiscard]] bool looksUnreduced(Pressure seaLevel, Length elevation, Pressure far);

// Further from the usual pressure than weather goes, at this height or, where it is not known, wherever sap is boiled:
// another unit or another height, or a box that is stuck.
[[nodiscard]] bool isNoWeather(Pressure station, std::optional<Length> elevation);

// Between which temperatures water boils at a height, whatever the weather; nullopt where the height is out of range.
struct BoilingBand {
    Temperature lowest, usual, highest;
};
[[nodiscard]] std::optional<BoilingBand> boilingBand(Length elevation);

} // namespace panside
