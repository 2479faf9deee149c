#include "core/physics/mixing.h"

#include "core/physics/sugar_density.h"

namespace panside {
namespace {

constexpr Temperature atTwentyDegrees = Temperature::celsius(20);
constexpr Volume largestPortion = Volume::cubicMetre(1e6); // far beyond any tank; above it a sum may overflow

std::optional<Mass> massOf(Portion portion) {
    const auto density = sugarDensity(portion.sugar, atTwentyDegrees);
    if (!density || !(portion.volume.cubicMetre() >= 0 && portion.volume <= largestPortion))
        return std::nullopt;
    return *density * portion.volume;
}

} // namespace

std::optional<Portion> blend(std::span<const Portion> portions) {
    Mass whole = Mass::kilogram(0);
    Mass sugar = Mass::kilogram(0);
    for (const Portion& portion : portions) {
        const auto mass = massOf(portion);
        if (!mass)
            return std::nullopt;
        whole += *mass;
        sugar += *mass * portion.sugar.massFraction();
    }
    if (!(whole.kilogram() > 0))
        return std::nullopt;
    const Brix mixed = Brix::massFraction(sugar / whole);
    return Portion{whole / *sugarDensity(mixed, atTwentyDegrees), mixed};
}

std::optional<Volume> thinnerToReach(Brix target, Portion syrup, Brix thinner) {
    const auto mass = massOf(syrup);
    const auto thinDensity = sugarDensity(thinner, atTwentyDegrees);
    if (!mass || !thinDensity || !(thinner < target && target <= syrup.sugar))
        return std::nullopt;
    return *mass * ((syrup.sugar - target) / (target - thinner)) / *thinDensity;
}

std::optional<Volume> boilOffToReach(Brix target, Portion solution) {
    const auto mass = massOf(solution);
    if (!mass || !sugarDensity(target, atTwentyDegrees) ||
        !(solution.sugar.massFraction() > 0 && solution.sugar <= target))
        return std::nullopt;
    return *mass * (1 - solution.sugar / target) / *sugarDensity(Brix::degrees(0), atTwentyDegrees);
}

} // namespace panside
