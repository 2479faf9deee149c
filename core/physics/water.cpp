#include "core/physics/water.h"

#include <cmath>

namespace panside {
namespace {

// IAPWS R7-97(2012), table 34: n1 to n10 of the saturation line.
constexpr double n1 = 0.11670521452767e4;
constexpr double n2 = -0.72421316703206e6;
constexpr double n3 = -0.17073846940092e2;
constexpr double n4 = 0.12020824702470e5;
constexpr double n5 = -0.32325550322333e7;
constexpr double n6 = 0.14915108613530e2;
constexpr double n7 = -0.48232657361591e4;
constexpr double n8 = 0.40511340542057e6;
constexpr double n9 = -0.23855557567849;
constexpr double n10 = 0.65017534844798e3;

constexpr double triplePressure = 611.213;      // pascal, the line's own value at 273.15 K
constexpr double criticalPressure = 22.064e6;   // pascal
constexpr double freezing = 273.15;             // kelvin
constexpr double criticalTemperature = 647.096; // kelvin

} // namespace

std::optional<Temperature> waterBoilingPoint(Pressure pressure) {
    const double p = pressure.pascal();
    if (!(p >= triplePressure && p <= criticalPressure))
        return std::nullopt;
    const double beta = std::sqrt(std::sqrt(p * 1e-6));
    const double e = (beta + n3) * beta + n6;
    const double f = (n1 * beta + n4) * beta + n7;
    const double g = (n2 * beta + n5) * beta + n8;
    const double d = 2 * g / (-f - std::sqrt(f * f - 4 * e * g));
    const double s = n10 + d;
    return Temperature::kelvin((s - std::sqrt(s * s - 4 * (n9 + n10 * d))) / 2);
}

std::optional<Pressure> saturationPressure(Temperature temperature) {
    const double t = temperature.kelvin();
    if (!(t >= freezing && t <= criticalTemperature))
        return std::nullopt;
    const double theta = t + n9 / (t - n10);
    const double a = (theta + n1) * theta + n2;
    const double b = (n3 * theta + n4) * theta + n5;
    const double c = (n6 * theta + n7) * theta + n8;
    const double root = 2 * c / (-b + std::sqrt(b * b - 4 * a * c));
    const double square = root * root;
    return Pressure::pascal(square * square * 1e6);
}

} // namespace panside
