#pragma once
// Mixing, thinning and boiling down, by mass balance: sugar and mass add up, volumes do not quite. Volumes are at 20
// degC: hot syrup fills 3 to 4 percent more for the same mass.
#include "core/quantity/quantity.h"

#include <optional>
#include <span>

namespace panside {

struct Portion {
    Volume volume;
    Brix sugar;
    bool operator==(const Portion&) const = default;
};

// The mix of all portions.
// Range      at least one portion, 0 to 1e6 m3 each, more than nothing in all; 0 to 75 brix
// Outside    nullopt
// Accuracy   that of the readings: density within 0.01 kg/m3 of its source
// Source     mass balance with ICUMSA SPS-4 (1998) densities
[[nodiscard]] std::optional<Portion> blend(std::span<const Portion> portions);

// How much of something thinner (water, sap) brings a syrup down to a target.
// Range      thinner < target <= syrup, 0 to 75 brix, 0 to 1e6 m3
// Outside    nullopt
// Accuracy   that of the readings: 0.1 brix wrong in the syrup is 0.02 litre in 10
// Source     mass balance with ICUMSA SPS-4 (1998) densities
[[nodiscard]] std::optional<Volume> thinnerToReach(Brix target, Portion syrup, Brix thinner);

// How much water to boil off to bring a solution up to a target, measured as cold water.
// Range      0 < solution <= target <= 75 brix, 0 to 1e6 m3
// Outside    nullopt
// Accuracy   that of the readings
// Source     mass balance with ICUMSA SPS-4 (1998) densities
[[nodiscard]] std::optional<Volume> boilOffToReach(Brix target, Portion solution);

} // namespace panside
