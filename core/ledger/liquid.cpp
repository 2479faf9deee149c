#include "core/ledger/liquid.h"

#include "core/physics/sugar_density.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double densest = 0.75; // the densities' range

double kilograms(double sugar, Temperature at) {
    const Temperature within = std::clamp(at, Temperature::celsius(0), Temperature::celsius(105));
    return sugarDensity(Brix::ofSi(std::clamp(sugar, 0.0, densest)), within)->si();
}

} // namespace

Volume Liquid::volume() const {
    return mass > 0 ? Volume::ofSi(mass / kilograms(sugar / mass, bookTemperature)) : Volume{};
}

Brix Liquid::error() const { return Brix::ofSi(mass > 0 ? std::hypot(sd, std::sqrt(alone) / mass) : 0); }

Liquid& Liquid::operator+=(const Liquid& more) {
    const double all = mass + more.mass;
    if (all > 0)
        sd = (sd * mass + more.sd * more.mass) / all;
    mass = all;
    sugar += more.sugar;
    alone += more.alone;
    chart += more.chart;
    return *this;
}

Liquid liquidOf(Volume volume, Brix sugar, Temperature at, double sd) {
    const double mass = volume.si() * kilograms(sugar.si(), at);
    Liquid made;
    made.mass = mass;
    made.sugar = mass * sugar.si();
    made.sd = sd;
    return made;
}

Liquid liquidOf(Mass mass, Brix sugar, double sd) {
    Liquid made;
    made.mass = mass.si();
    made.sugar = mass.si() * sugar.si();
    made.sd = sd;
    return made;
}

Liquid liquidHolding(Volume volume, double sugar) {
    const auto held = [&](double share) { return volume.si() * kilograms(share, bookTemperature) * share; };
    double low = 0, high = densest;
    if (held(high) <= sugar)
        return liquidOf(volume, Brix::ofSi(high), bookTemperature);
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (held(middle) < sugar ? low : high) = middle;
    }
    return liquidOf(volume, Brix::ofSi(high), bookTemperature);
}

} // namespace panside
