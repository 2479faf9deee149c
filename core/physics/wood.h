#pragma once
// Firewood: its moisture, its heat, its mass. Wet and dry basis are two types, because 20 percent wet is 25 percent
// dry.
#include "core/quantity/quantity.h"

#include <optional>
#include <span>
#include <string_view>

namespace panside {

// Water in wood over the mass of the wood as it is (what a fire sees).
struct WetBasis {
    double share;
    static constexpr WetBasis percent(double p) { return WetBasis{p / 100}; }
    auto operator<=>(const WetBasis&) const = default;
};
// Water in wood over the mass of the dry wood in it (what most moisture meters and foresters say).
struct DryBasis {
    double share;
    static constexpr DryBasis percent(double p) { return DryBasis{p / 100}; }
    auto operator<=>(const DryBasis&) const = default;
};
constexpr DryBasis dryBasis(WetBasis wet) { return DryBasis{wet.share / (1 - wet.share)}; }

struct Wood {
    std::string_view name; // as written in a log: "sugar-maple"
    bool resinous;         // softwood
    double gravity;        // oven-dry mass on green volume, over water's
};

// The woods known by name; the first two, "hardwood" and "softwood", stand for a mixed pile.
std::span<const Wood> woods();
// Capitals, blanks and underlines are no matter: "Sugar maple" is "sugar-maple".
std::optional<Wood> woodNamed(std::string_view name);

// Heat of burning a kilogram as fired, steam condensed (gross, higher heating value).
// Range      moisture 0 to 60 percent, wet basis
// Outside    nullopt
// Accuracy   5 percent: published values of dry wood lie from 8500 to 8660 Btu/lb for hardwoods, about 9000 for
//            resinous ones
// Source     8600 and 9000 Btu/lb, USDA Forest Products Laboratory
[[nodiscard]] std::optional<SpecificEnergy> higherHeat(const Wood& wood, WetBasis moisture);

// The same, steam gone up the stack (net, lower heating value): what a pan can ever have of it.
// Range      moisture 0 to 60 percent, wet basis
// Outside    nullopt
// Accuracy   5 percent, as higherHeat; hydrogen 6 percent of dry wood (5.8 to 6.3)
// Source     (higher - 2.443 MJ/kg x 9 x 0.06)(1 - M) - 2.443 M, the usual relation, latent heat at 25 degC
[[nodiscard]] std::optional<SpecificEnergy> lowerHeat(const Wood& wood, WetBasis moisture);

// Mass of a full cord: 128 cubic feet stacked (4 x 4 x 8 ft), of which 85 are wood.
// Range      moisture 0 to 60 percent, wet basis
// Outside    nullopt
// Accuracy   15 percent: stacks hold 70 to 90 cubic feet of wood, and trees differ
// Source     specific gravity on green volume, Wood Handbook, USDA Forest Products Laboratory 2010; solid volume:
//            common practice
[[nodiscard]] std::optional<Mass> cordMass(const Wood& wood, WetBasis moisture);

// Mass of a face cord: a stack of 4 x 8 ft, one stick deep. It is a different amount wherever sticks are cut
// differently.
// Range      as cordMass; sticks of 6 to 48 inches
// Outside    nullopt
// Accuracy   as cordMass
// Source     as cordMass, by the share of 48 inches
[[nodiscard]] std::optional<Mass> faceCordMass(const Wood& wood, WetBasis moisture, Length stick);

} // namespace panside
