#include "core/physics/sugar.h"

#include "core/physics/range.h"
#include "core/physics/water.h"

#include <cmath>

namespace panside {
namespace {

constexpr double mostSugar = 0.78;   // mass fraction
constexpr double leastPressure = 60; // kPa
constexpr double mostPressure = 110;

constexpr double sucroseMolarMass = 342.2965; // g/mol
constexpr double waterMolarMass = 18.01528;

// Starzak and Peacock 1997: ln(activity of water) = ln(1 - x) + Q/(R T) x^2 (1 + a x + b x^2), x the mole fraction of
// sucrose.
constexpr double q = -17638 / 8.314462618; // Q/R, kelvin
constexpr double excessA = -1.0038;
constexpr double excessB = -0.24653;

double moleFraction(double massFraction) {
    const double sucrose = massFraction / sucroseMolarMass;
    return sucrose / (sucrose + (1 - massFraction) / waterMolarMass);
}

double massFraction(double moleFraction) {
    const double sucrose = moleFraction * sucroseMolarMass;
    return sucrose / (sucrose + (1 - moleFraction) * waterMolarMass);
}

double excess(double x) { return x * x * (1 + x * (excessA + x * excessB)); }
double excessSlope(double x) { return x * (2 + x * (3 * excessA + x * 4 * excessB)); }

bool inRange(Pressure pressure) { return within(pressure.kilopascal(), leastPressure, mostPressure); }

} // namespace

std::optional<TemperatureDifference> boilingRise(Brix sugar, Pressure pressure) {
    const double w = sugar.massFraction();
    if (!within(w, 0, mostSugar) || !inRange(pressure))
        return std::nullopt;
    const double x = moleFraction(std::fmax(w, 0));
    const double ideal = std::log1p(-x);
    const double strength = q * excess(x);
    const Temperature water = *waterBoilingPoint(pressure);
    // The solution boils where water would under p over the activity there. The activity hardly moves with temperature:
    // each turn shrinks the error more than a hundredfold, so four leave less than a microkelvin.
    Temperature boils = water;
    for (int turn = 0; turn < 4; ++turn)
        boils = *waterBoilingPoint(pressure * std::exp(-ideal - strength / boils.kelvin()));
    return boils - water;
}

std::optional<Brix> sugarAtRise(TemperatureDifference rise, Pressure pressure) {
    if (!within(rise.kelvin(), 0, 10) || !inRange(pressure))
        return std::nullopt;
    const Temperature boils = *waterBoilingPoint(pressure) + TemperatureDifference::kelvin(std::fmax(rise.kelvin(), 0));
    const double activity = pressure / *saturationPressure(boils);
    const double logActivity = std::log(activity);
    const double strength = q / boils.kelvin();
    // Newton from the ideal solution's fraction, which is never too small: the curve is concave, so it comes down to
    // the root.
    double x = 1 - activity;
    for (int turn = 0; turn < 8; ++turn) {
        const double step =
            (std::log1p(-x) + strength * excess(x) - logActivity) / (-1 / (1 - x) + strength * excessSlope(x));
        x -= step;
        if (std::abs(step) < 1e-12)
            break;
    }
    const double w = massFraction(x < 0 ? 0 : x);
    if (!within(w, 0, mostSugar))
        return std::nullopt;
    return Brix::massFraction(w);
}

std::optional<TemperatureDifference> boilingRiseUncertainty(Brix sugar) {
    const auto rise = boilingRise(sugar, Pressure::kilopascal(101.325));
    if (!rise)
        return std::nullopt;
    return TemperatureDifference::kelvin(0.02 + 0.026 * rise->kelvin());
}

std::optional<Brix> sugarAtRiseUncertainty(TemperatureDifference rise, Pressure pressure,
                                           TemperatureDifference riseUncertainty) {
    const auto sugar = sugarAtRise(rise, pressure);
    if (!sugar || !within(riseUncertainty.kelvin(), 0, 5))
        return std::nullopt;
    const Brix step = Brix::degrees(sugar->degrees() > 37 ? -0.1 : 0.1);
    const double slope = (*boilingRise(*sugar + step, pressure) - *boilingRise(*sugar, pressure)).kelvin() / step.si();
    return Brix::massFraction(std::hypot(boilingRiseUncertainty(*sugar)->kelvin(), riseUncertainty.kelvin()) / slope);
}

} // namespace panside
