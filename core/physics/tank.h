#pragma once
// How much a tank holds at a depth: by its shape, or by a table of marks that somebody measured.
#include "core/quantity/quantity.h"

#include <optional>
#include <variant>
#include <vector>

namespace panside {

// Inside measures. Ends are flat and walls straight; a tank that stands level is meant.
struct UprightTank { // a cylinder on its end
    Length diameter, height;
    bool operator==(const UprightTank&) const = default;
};
struct LyingTank { // a cylinder on its side
    Length diameter, length;
    bool operator==(const LyingTank&) const = default;
};
struct BoxTank {
    Length length, width, height;
    bool operator==(const BoxTank&) const = default;
};
// Marks of depth and volume, from the lowest up; between two of them the volume rises evenly. Below the first it rises
// evenly from an empty bottom.
struct TankTable {
    struct Mark {
        Length depth;
        Volume volume;
        bool operator==(const Mark&) const = default;
    };
    std::vector<Mark> marks;
    bool operator==(const TankTable&) const = default;
};
using TankShape = std::variant<UprightTank, LyingTank, BoxTank, TankTable>;

// Can it be a tank at all: every measure above 0 and to 20 m, at least two marks, depth and volume rising.
[[nodiscard]] bool isTank(const TankShape& shape);

// How deep it is when full.
// Outside    nullopt where isTank() is false
[[nodiscard]] std::optional<Length> tankDepth(const TankShape& shape);

// What it holds at a depth.
// Range      0 to tankDepth()
// Outside    nullopt: a dip deeper than the tank is no volume
// Accuracy   exact for the shape; real ends bulge, walls give and legs stand askew: 3 percent, common practice, no
//            source. A table is as good as its marks
// Source     geometry; the lying cylinder by the area of the circular segment,
//            r^2 arccos((r - h)/r) - (r - h) sqrt(2 r h - h^2)
[[nodiscard]] std::optional<Volume> tankVolume(const TankShape& shape, Length depth);

} // namespace panside
