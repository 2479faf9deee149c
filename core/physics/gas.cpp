#include "core/physics/gas.h"

#include "core/physics/range.h"
#include "core/physics/water.h"

#include <cmath>

namespace panside {
namespace {

// NIST Chemistry WebBook, Shomate equation: enthalpy in kJ/mol = A t + B t^2/2 + C t^3/3 + D t^4/4 - E/t + F, t =
// K/1000.
struct Shomate {
    double a, b, c, d, e, f;
    double enthalpy(double kelvin) const {
        const double t = kelvin / 1000;
        return t * (a + t * (b / 2 + t * (c / 3 + t * d / 4))) - e / t + f;
    }
};
constexpr Shomate nitrogenCold{28.98641, 1.853978, -9.647459, 16.63537, 0.000117, -8.671914}; // to 500 K
constexpr Shomate nitrogenHot{19.50583, 19.88705, -8.598535, 1.369784, 0.527601, -4.935202};
constexpr Shomate oxygenCold{31.32234, -20.23531, 57.86644, -36.50624, -0.007374, -8.903471}; // to 700 K
constexpr Shomate oxygenHot{30.03235, 8.772972, -3.988133, 0.788313, -0.741599, -11.32468};
constexpr Shomate carbonDioxide{24.99735, 55.18696, -33.69137, 7.948387, -0.136638, -403.6075}; // to 1200 K
constexpr Shomate steam{30.09200, 6.832514, 6.793435, -2.534480, 0.082139, -250.8810};          // to 1700 K

double nitrogen(double kelvin) { return (kelvin < 500 ? nitrogenCold : nitrogenHot).enthalpy(kelvin); }
double oxygen(double kelvin) { return (kelvin < 700 ? oxygenCold : oxygenHot).enthalpy(kelvin); }

// Amounts of gas, in moles.
struct Gas {
    double nitrogen = 0, oxygen = 0, carbonDioxide = 0, steam = 0;

    double joules(Temperature to, Temperature from) const {
        const double hot = to.kelvin();
        const double cold = from.kelvin();
        const double kilojoules =
            nitrogen * (panside::nitrogen(hot) - panside::nitrogen(cold)) +
            oxygen * (panside::oxygen(hot) - panside::oxygen(cold)) +
            carbonDioxide * (panside::carbonDioxide.enthalpy(hot) - panside::carbonDioxide.enthalpy(cold)) +
            steam * (panside::steam.enthalpy(hot) - panside::steam.enthalpy(cold));
        return kilojoules * 1000;
    }
};

constexpr double steamMolarMass = 18.01528e-3; // kg/mol
constexpr double dryAirMolarMass = 28.9645e-3;
constexpr double massRatio = 0.621945;
constexpr double oxygenInAir = 0.2095;
constexpr double steamHeatAtZero = 2501e3; // J/kg

// Dry wood by mass: wood chemistry handbooks; the rest is ash.
constexpr double carbonShare = 0.50;
constexpr double hydrogenShare = 0.06;
constexpr double oxygenShare = 0.43;
constexpr double carbonMolarMass = 12.011e-3;
constexpr double hydrogenMolarMass = 2.01588e-3;
constexpr double oxygenMolarMass = 31.9988e-3;

Pressure vapourPressure(Temperature air) {
    if (const auto saturation = saturationPressure(air))
        return *saturation;
    const double t = air.celsius();
    return Pressure::hectopascal(6.112 * std::exp(17.62 * t / (243.12 + t)));
}

// The gas from a kilogram of wood as fired.
Gas smokeOf(WetBasis moisture, double excessAir) {
    const double dry = 1 - moisture.share;
    const double carbon = dry * carbonShare / carbonMolarMass;
    const double hydrogen = dry * hydrogenShare / hydrogenMolarMass;
    const double needed = carbon + hydrogen / 2 - dry * oxygenShare / oxygenMolarMass;
    return {.nitrogen = needed * (1 + excessAir) * (1 - oxygenInAir) / oxygenInAir,
            .oxygen = needed * excessAir,
            .carbonDioxide = carbon,
            .steam = hydrogen + moisture.share / steamMolarMass};
}

} // namespace

std::optional<double> humidityRatio(Temperature air, double relativeHumidity, Pressure pressure) {
    if (!within(air.celsius(), -20, 60) || !within(relativeHumidity, 0, 1) || !within(pressure.kilopascal(), 60, 110))
        return std::nullopt;
    const Pressure vapour = vapourPressure(air) * relativeHumidity;
    return massRatio * (vapour / (pressure - vapour));
}

std::optional<SpecificEnergy> moistAirEnthalpy(Temperature air, double humidityRatio) {
    if (!within(air.celsius(), -20, 900) || !within(humidityRatio, 0, 1))
        return std::nullopt;
    const Gas gas{.nitrogen = (1 - oxygenInAir) / dryAirMolarMass,
                  .oxygen = oxygenInAir / dryAirMolarMass,
                  .steam = humidityRatio / steamMolarMass};
    return SpecificEnergy::joulePerKilogram(gas.joules(air, Temperature::celsius(0)) + humidityRatio * steamHeatAtZero);
}

std::optional<double> flueLoss(const Wood& wood, WetBasis moisture, Temperature stack, Temperature air,
                               double excessAir) {
    const auto heat = lowerHeat(wood, moisture);
    if (!heat || !within(air.celsius(), -20, 50) || !within(stack.celsius(), air.celsius(), 900) ||
        !within(excessAir, 0, 5))
        return std::nullopt;
    return SpecificEnergy::joulePerKilogram(smokeOf(moisture, excessAir).joules(stack, air)) / *heat;
}

std::optional<double> flueLossUncertainty(const Wood& wood, WetBasis moisture, Temperature stack, Temperature air,
                                          double excessAir, double uncertainty) {
    const auto loss = flueLoss(wood, moisture, stack, air, excessAir);
    if (!loss || !within(uncertainty, 0, 1))
        return std::nullopt;
    // The loss is linear in the air: a step of one from none gives the slope.
    const double slope = *flueLoss(wood, moisture, stack, air, 1) - *flueLoss(wood, moisture, stack, air, 0);
    const double rest = 0.02;
    return std::hypot(slope * uncertainty, rest);
}

} // namespace panside
