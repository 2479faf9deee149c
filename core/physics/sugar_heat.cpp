#include "core/physics/sugar_heat.h"

#include "core/physics/range.h"
#include "core/physics/water.h"

namespace panside {
namespace {

bool isFeed(Temperature feed, Temperature boils) { return feed.celsius() >= -1e-9 && feed <= boils; }

} // namespace

std::optional<SpecificHeat> sugarHeatCapacity(Brix sugar, Temperature temperature) {
    const double w = sugar.massFraction();
    const double t = temperature.celsius();
    if (!within(w, 0, 0.75) || !within(t, 0, 110))
        return std::nullopt;
    const double purity = 1;
    return SpecificHeat::kilojoulePerKilogramKelvin(4.184 + w * (-2.971 + 0.460 * purity + 0.0075 * t));
}

std::optional<SpecificEnergy> heatToBoilAway(Temperature feed, Pressure pressure) {
    const auto boils = waterBoilingPoint(pressure);
    if (!boils || !within(pressure.kilopascal(), 60, 110) || !isFeed(feed, *boils))
        return std::nullopt;
    return *sugarHeatCapacity(Brix::degrees(0), feed) * (*boils - feed) + *latentHeat(*boils);
}

} // namespace panside
