#include "core/physics/water.h"

#include "core/physics/range.h"

#include <cmath>

namespace panside {
namespace {

constexpr double hottestWater = 110; // degC

bool isLiquid(Temperature t) { return within(t.celsius(), 0, hottestWater); }

// IAPWS SR1-86(1992): the critical point, and the coefficients of equations 1 (pressure), 2 (liquid) and 3 (steam).
constexpr double criticalKelvin = 647.096;  // kelvin
constexpr double criticalPascal = 22.064e6; // pascal
constexpr double criticalDensity = 322;     // kg/m3
constexpr double a1 = -7.85951783, a2 = 1.84408259, a3 = -11.7866497, a4 = 22.6807411, a5 = -15.9618719,
                 a6 = 1.80122502;
constexpr double b1 = 1.99274064, b2 = 1.09965342, b3 = -0.510839303, b4 = -1.75493479, b5 = -45.5170352,
                 b6 = -6.74694450e5;
constexpr double c1 = -2.03150240, c2 = -2.68302940, c3 = -5.38626492, c4 = -17.2991605, c5 = -44.7586581,
                 c6 = -63.9201063;

} // namespace

std::optional<Density> waterDensity(Temperature temperature) {
    if (!isLiquid(temperature))
        return std::nullopt;
    const double t = temperature.celsius();
    const double above =
        999.83952 +
        t * (16.952577 + t * (-7.9905127e-3 + t * (-46.241757e-6 + t * (105.84601e-9 - t * 281.03006e-12))));
    return Density::kilogramPerCubicMetre(above / (1 + 16.887236e-3 * t));
}

std::optional<SpecificEnergy> latentHeat(Temperature temperature) {
    if (!isLiquid(temperature))
        return std::nullopt;
    const double t = temperature.kelvin();
    const double tau = 1 - t / criticalKelvin;
    const double root = std::sqrt(tau);
    const double third = std::cbrt(tau);
    const double tau3 = tau * tau * tau;
    const double tau7 = tau3 * tau3 * tau;

    const double sum = a1 * tau + a2 * tau * root + a3 * tau3 + a4 * tau3 * root + a5 * tau3 * tau + a6 * tau7 * root;
    const double slopeSum = a1 + 1.5 * a2 * root + 3 * a3 * tau * tau + 3.5 * a4 * tau * tau * root + 4 * a5 * tau3 +
                            7.5 * a6 * tau3 * tau3 * root;
    const double logRatio = sum * criticalKelvin / t;
    const double pressure = criticalPascal * std::exp(logRatio);
    const double slope = -pressure / t * (logRatio + slopeSum); // dp/dT along the saturation line

    const double square = third * third;
    const double tau5 = tau3 * tau * tau;
    const double tau14 = tau7 * tau7;
    const double tau36 = tau14 * tau14 * tau7 * tau;
    const double liquid =
        1 + b1 * third + b2 * square + b3 * tau * square + b4 * tau5 * third + b5 * tau14 * third + b6 * tau36 * square;
    const double tau6 = tau3 * tau3;
    const double steam = c1 * third + c2 * square + c3 * tau * third + c4 * tau3 + c5 * tau6 * std::sqrt(third) +
                         c6 * tau7 * tau3 * tau * root * third; // tau^(71/6) = tau^11 tau^(1/2) tau^(1/3)
    const double volumeStep = 1 / (criticalDensity * std::exp(steam)) - 1 / (criticalDensity * liquid);
    return SpecificEnergy::joulePerKilogram(t * volumeStep * slope);
}

} // namespace panside
