#include "core/physics/wood.h"

#include "core/physics/range.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

namespace panside {
namespace {

// Wood Handbook, USDA Forest Products Laboratory 2010: oven-dry mass on green volume (recalled; sugar maple's was also
// seen). The mixed piles are means of the usual firewoods below them.
constexpr std::array<Wood, 19> known{{
    {"hardwood", false, 0.54}, {"softwood", true, 0.36},      {"sugar-maple", false, 0.56},  {"red-maple", false, 0.49},
    {"beech", false, 0.56},    {"yellow-birch", false, 0.55}, {"white-birch", false, 0.48},  {"white-ash", false, 0.55},
    {"red-oak", false, 0.56},  {"white-oak", false, 0.60},    {"black-cherry", false, 0.47}, {"elm", false, 0.46},
    {"aspen", false, 0.35},    {"basswood", false, 0.32},     {"hemlock", true, 0.38},       {"white-pine", true, 0.34},
    {"spruce", true, 0.37},    {"larch", true, 0.49},         {"balsam-fir", true, 0.33},
}};

constexpr SpecificEnergy hardwoodHeat = SpecificEnergy::btuPerPound(8600);
constexpr SpecificEnergy resinousHeat = SpecificEnergy::btuPerPound(9000);
constexpr SpecificEnergy steamHeat = SpecificEnergy::megajoulePerKilogram(2.443); // at 25 degC
constexpr double hydrogen = 0.06;                                                 // of dry wood
constexpr double waterOfHydrogen = 9;                                             // kg of water for each kg of it
constexpr double mostMoisture = 0.60;
constexpr Density water = Density::kilogramPerCubicMetre(1000);
constexpr Volume solidInCord = Volume::cubicMetre(85 * 0.3048 * 0.3048 * 0.3048);

bool isMoisture(WetBasis moisture) { return within(moisture.share, 0, mostMoisture); }

} // namespace

std::span<const Wood> woods() { return known; }

std::optional<Wood> woodNamed(std::string_view name) {
    std::string plain{name};
    for (char& c : plain)
        c = c == ' ' || c == '_' ? '-' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    const auto* found = std::ranges::find(known, plain, &Wood::name);
    if (found == known.end())
        return std::nullopt;
    return *found;
}

std::optional<SpecificEnergy> higherHeat(const Wood& wood, WetBasis moisture) {
    if (!isMoisture(moisture))
        return std::nullopt;
    return (wood.resinous ? resinousHeat : hardwoodHeat) * (1 - moisture.share);
}

std::optional<SpecificEnergy> lowerHeat(const Wood& wood, WetBasis moisture) {
    const auto higher = higherHeat(wood, moisture);
    if (!higher)
        return std::nullopt;
    return *higher - steamHeat * (waterOfHydrogen * hydrogen * (1 - moisture.share) + moisture.share);
}

std::optional<Mass> cordMass(const Wood& wood, WetBasis moisture) {
    if (!isMoisture(moisture))
        return std::nullopt;
    return water * wood.gravity * solidInCord / (1 - moisture.share);
}

std::optional<Mass> faceCordMass(const Wood& wood, WetBasis moisture, Length stick) {
    const auto full = cordMass(wood, moisture);
    if (!full || !within(stick.inch(), 6, 48))
        return std::nullopt;
    return *full * (stick.inch() / 48);
}

} // namespace panside
