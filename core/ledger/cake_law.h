#pragma once
// How the gauge of a filter press may climb; no one outside this room includes it. Pressures in bars, so that the
// numbers are near 1.
#include "core/ledger/cake.h"

#include <algorithm>

namespace panside {

// A gauge at a bar: under it no gauge tells anything.
inline double barOf(const CakeReading& one) {
    constexpr double lowest = 1000; // Pa
    return std::max(lowest, one.pressure.pascal()) / 1e5;
}

constexpr double gaugeSd = 3000;      // Pa: a gauge is read to half a psi or so (our judgement)
constexpr double gaugeWeight = 2;     // as many readings as that judgement is worth
constexpr double stoppedShare = 0.35; // of the climb before: under it the climb has stopped

// At a steady flow the pressure to the power 1 - n grows evenly with what goes through: what a cake that packs does, or
// papers that blind. Of an air pump the flow falls evenly with the pressure that it meets, to nothing at `stall`: the
// cake then grows slower the higher the gauge stands.
struct CakeLaw {
    double power;
    double stall; // bar; 0: the flow does not fall

    // Grows evenly with the time.
    double straight(double bar) const;
    // How fast the gauge climbs with it.
    double steep(double bar) const;
    // The gauge at so much of it; it is looked for from `guess` on.
    double gauge(double straight, double guess) const;
};

// It climbed, and from some reading on it did not, by more than the gauge could be misread or the pump is unsteady: a
// bypass has opened, or hardly anything flows. What came after does not close it. A gauge that falls is of a pump that
// is off: that alone is neither.
bool hasStopped(std::span<const CakeReading> readings);

} // namespace panside
