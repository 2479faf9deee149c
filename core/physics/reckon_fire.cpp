// Sums of the fire: the wood, and the sap that must cover the pans until it is out.
#include "core/physics/reckon_kinds.h"
#include "core/physics/sap.h"
#include "core/physics/wood.h"

namespace panside::sums {
namespace {

constexpr std::string_view fireCaution =
    "Keep to local fire codes and the maker's clearances. Flue gas in a closed house kills: have a "
    "carbon monoxide alarm.";
constexpr std::string_view coverPans =
    "A dry pan burns within minutes and can start a fire. Stay until the fire is dead, look again "
    "an hour later, and keep cold sap at hand.";

std::string namesOfWoods() {
    std::string names;
    for (const Wood& wood : woods()) {
        if (!names.empty())
            names += ", ";
        names += wood.name;
    }
    return names;
}

} // namespace

Answer reckonWood(Reader& in) {
    const std::string name = in.text("wood");
    const auto wood = woodNamed(name);
    if (!wood)
        in.refuse("wood", name, {say("no such wood is known. Write one of %1.", {namesOfWoods()})});
    const WetBasis moisture{in.siOf("moisture", in.text("moisture"), {0, 60, Unit::percent})};
    const SpecificEnergy lower = *lowerHeat(*wood, moisture);
    const SpecificEnergy higher = *higherHeat(*wood, moisture);
    const Mass cord = *cordMass(*wood, moisture);
    const Mass face = *faceCordMass(*wood, moisture, Length::inch(16));
    const double dryPercent = dryBasis(moisture).share * 100;
    const auto heat = [](SpecificEnergy e) {
        return say("%1 MJ/kg (%2 Btu/lb)", {number(e.megajoulePerKilogram(), 2), number(e.btuPerPound(), 0)});
    };
    return {.figures = {{"lowerMJPerKg", lower.megajoulePerKilogram(), "Lower heating value", heat(lower)},
                        {"higherMJPerKg", higher.megajoulePerKilogram(), "Higher heating value", heat(higher)},
                        {"kgPerCord", cord.kilogram(), "A full cord weighs", sayMass(cord)},
                        {"", std::nullopt, "A face cord of 16 in sticks", sayMass(face)}},
            .sum = {say("%1 percent of the wood as it is (wet basis) is water; on the dry basis that is %2 percent.",
                        {number(moisture.share * 100, 1), number(dryPercent, 1)}),
                    say("Dry wood of this kind gives %1 MJ/kg; the water carries none and must be boiled off.",
                        {number((*higherHeat(*wood, WetBasis{0})).megajoulePerKilogram(), 1)}),
                    say("A cord is 128 cubic feet stacked, about 85 of them wood, %1 times as heavy as water when dry.",
                        {number(wood->gravity, 2)})},
            .uncertainty = say("Heating values 5 percent; a cord 15 percent, as stacks and trees differ."),
            .source = "USDA Forest Products Laboratory: 8600 and 9000 Btu/lb, Wood Handbook 2010",
            .caution = fireCaution};
}

Answer reckonShutdown(Reader& in) {
    const auto area = in.amount<Area>("area", {0, 100, Unit::m2});
    const auto depth = in.amount<Length>("depth", {0, 500, Unit::mm});
    const auto rate = in.amount<VolumeFlow>("rate", {0, 10000, Unit::Lph});
    const double burnOut = in.siOf("burn-out", in.text("burn-out"), {0, 720, Unit::min});
    const Volume keep = *sapToKeepBack(area, depth, rate, Duration{burnOut});
    const Volume filled = area * depth;
    return {.figures = {{"keepBackL", keep.litre(), "Sap to keep back", sayVolume(keep)}},
            .sum = {say("To raise the pans by %1 mm takes %2 L.",
                        {number(depth.millimetre(), 0), number(filled.litre(), 1)}),
                    say("While the fire dies, half of its rate for %1 min boils off another %2 L.",
                        {number(burnOut / 60, 0), number((keep - filled).litre(), 1)})},
            .uncertainty = say("Within 20 percent; large wood and deep coals burn longer. Keep more rather than less."),
            .source = "Arithmetic; the half is common practice, no source",
            .caution = coverPans};
}

} // namespace panside::sums
