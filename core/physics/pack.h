#pragma once
// Packing: how many containers a vessel gives, and the colour of a blend.
#include "core/quantity/quantity.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace panside {

struct Containers {
    std::vector<long long> counts; // in the order of the sizes
    Volume left;
};

// How many full containers of each size a volume gives, the largest filled first.
// Range      volume 0 to 1e6 m3, at least one size, each above nothing
// Outside    nullopt
// Accuracy   exact, to a part in a thousand million of a container
// Source     arithmetic
[[nodiscard]] std::optional<Containers> containersFrom(Volume volume, std::span<const Volume> sizes);

struct LitPart {
    Volume volume;
    double light; // share of light let through, 0 to 1, as the grading glass has it
};

// Light through a blend: absorbances add up by volume.
// Range      at least one part; light above 0, to 1; more than nothing in all
// Outside    nullopt
// Accuracy   an estimate: 3 percent of light (our judgement). Measure before it is labelled
// Source     law of Beer and Lambert; syrup is clear enough for it only when filtered
[[nodiscard]] std::optional<double> lightThrough(std::span<const LitPart> parts);

// Colour class of the grade standards by share of light: "golden", "amber", "dark", "very dark".
// Source     7 CFR 52.5961 to .5966 (2015), as quoted: 75, 50 and 25 percent of light; Canada's classes have the same
[[nodiscard]] std::string_view colourClass(double light);

} // namespace panside
