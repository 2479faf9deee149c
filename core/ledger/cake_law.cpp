#include "core/ledger/cake_law.h"

#include <cmath>

namespace panside {
namespace {

constexpr double leastGauge = 0.01, mostGauge = 50; // bar

// Integral of r to the power `to - 1`, from 1.
double grown(double r, double to) { return to != 0 ? (std::pow(r, to) - 1) / to : std::log(r); }

} // namespace

// With r for what a steady flow would show: r climbs by its power with what goes through, and of an air pump the gauge
// and the flow are those of a steady one over 1 + r / stall.
double CakeLaw::straight(double bar) const {
    if (stall <= 0)
        return grown(bar, 1 - power);
    const double r = bar / std::max(1e-3, 1 - bar / stall);
    return grown(r, 1 - power) + grown(r, 2 - power) / stall;
}

double CakeLaw::steep(double bar) const {
    if (stall <= 0)
        return std::pow(bar, power);
    const double r = bar / std::max(1e-3, 1 - bar / stall);
    return std::pow(r, power) * std::pow(1 + r / stall, -3);
}

double CakeLaw::gauge(double wanted, double guess) const {
    if (stall <= 0 && power == 1)
        return std::clamp(std::exp(std::min(wanted, 5.0)), leastGauge, mostGauge);
    if (stall <= 0)
        return std::clamp(std::pow(std::max(1e-3, 1 + (1 - power) * wanted), 1 / (1 - power)), leastGauge, mostGauge);
    double r = guess / std::max(1e-3, 1 - guess / stall);
    for (int i = 0; i < 12; ++i) { // Newton's steps
        const double off = wanted - straight(r / (1 + r / stall));
        r = std::clamp(r + off * std::pow(r, power) / (1 + r / stall), r / 3, r * 3);
        if (std::abs(off) < 1e-7)
            break;
    }
    return std::clamp(r / (1 + r / stall), std::min(leastGauge, stall / 2), mostGauge);
}

} // namespace panside
