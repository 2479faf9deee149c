#include "core/physics/platinum.h"

#include "core/physics/range.h"

#include <cmath>

namespace panside {
namespace {

// IEC 60751:2008, clause 4.2.
constexpr double atZero = 100; // ohm
constexpr double a = 3.9083e-3;
constexpr double b = -5.775e-7;
constexpr double c = -4.183e-12; // below 0 degC only
constexpr double coldest = -200;
constexpr double hottest = 850;

double ratio(double t) {
    const double quadratic = 1 + t * (a + t * b);
    return t < 0 ? quadratic + c * (t - 100) * t * t * t : quadratic;
}
double slope(double t) {
    const double linear = a + 2 * b * t;
    return t < 0 ? linear + c * (4 * t - 300) * t * t : linear;
}

} // namespace

std::optional<Resistance> platinumResistance(Temperature temperature) {
    const double t = temperature.celsius();
    if (!within(t, coldest, hottest))
        return std::nullopt;
    return Resistance::ohm(atZero * ratio(t));
}

std::optional<Temperature> platinumTemperature(Resistance resistance) {
    const double r = resistance.ohm() / atZero;
    if (!within(r, ratio(coldest), ratio(hottest)))
        return std::nullopt;
    double t = (-a + std::sqrt(a * a - 4 * b * (1 - r))) / (2 * b); // exact from 0 degC up; 2 K off at the cold end
    for (int turn = 0; turn < 3 && r < 1; ++turn)
        t -= (ratio(t) - r) / slope(t);
    return Temperature::celsius(std::fmin(std::fmax(t, coldest), hottest));
}

} // namespace panside
