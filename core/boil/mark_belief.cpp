#include "core/boil/mark_belief.h"

#include "core/boil/square.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace panside {
namespace {

// The rise model's own uncertainty at syrup (sugar.h), and a pan with an unknown growth of scale on it.
constexpr double panSd = 0.13, swappedSd = 0.2;
// Half the hydrometers tested were within 0.2 brix (Ohio State University Extension, 2023): 0.15 brix, and 0.23 K a
// brix.
constexpr double hydrometerSd = 0.15 * 0.23, refractometerSd = 0.2 * 0.23;
// Niter moves the mark by some hundredths of a kelvin an hour, a probe walks as much (common practice, no source).
constexpr double panWalk = 0.03, probeWalk = 0.025; // K per square root of an hour
constexpr double doubtSd = 0.3;

} // namespace

MarkBelief::Weights MarkBelief::ofCheck(bool onWaterCheck, Part glass) {
    Weights weights{};
    weights[onWaterCheck ? pan : total] = 1;
    weights[glass] = 1;
    return weights;
}

bool MarkBelief::bearsOut(double before, double now, double expected) {
    constexpr double same = 0.2; // kelvin
    const double off = now - expected, was = before - expected;
    return off * was > 0 && std::abs(off - was) <= std::max(same, std::min(std::abs(off), std::abs(was)) / 2);
}

MarkBelief::MarkBelief() { start(0, uncheckedSd); }

void MarkBelief::start(double offset, double sd) {
    mean_ = {offset, 0, 0, 0};
    variance_ = {};
    variance_[total][total] = square(sd);
    variance_[pan][pan] = square(panSd);
    variance_[hydrometer][hydrometer] = square(hydrometerSd);
    variance_[refractometer][refractometer] = square(refractometerSd);
}

void MarkBelief::swapPan() {
    // What the probe reads too high in plain water goes on; the pan's part is new.
    const Weights inWater = {1, -1, 0, 0};
    const Weights with = covariance(inWater);
    const double variance = with[total] - with[pan];
    mean_[total] -= mean_[pan];
    mean_[pan] = 0;
    variance_[total] = {variance + square(swappedSd), square(swappedSd), with[hydrometer], with[refractometer]};
    variance_[pan] = {square(swappedSd), square(swappedSd), 0, 0};
    for (const Part glass : {hydrometer, refractometer}) {
        variance_[glass][total] = variance_[total][glass];
        variance_[glass][pan] = 0;
    }
}

void MarkBelief::age(double seconds) {
    const double hours = std::max(0.0, seconds) / 3600, both = square(panWalk) * hours;
    variance_[total][total] += both + square(probeWalk) * hours;
    variance_[total][pan] += both;
    variance_[pan][total] += both;
    variance_[pan][pan] += both;
}

void MarkBelief::creep(double kelvin) {
    mean_[total] += kelvin;
    mean_[pan] += kelvin;
}

double MarkBelief::expected(const Weights& of) const {
    return std::inner_product(of.begin(), of.end(), mean_.begin(), 0.0);
}

MarkBelief::Weights MarkBelief::covariance(const Weights& of) const {
    Weights with{};
    for (std::size_t i = 0; i < with.size(); ++i)
        with[i] = std::inner_product(of.begin(), of.end(), variance_[i].begin(), 0.0);
    return with;
}

double MarkBelief::surprise(const Weights& of, double seen, double variance) const {
    return std::abs(off(of, seen)) / spread(of, variance);
}

double MarkBelief::spread(const Weights& of, double variance) const {
    const Weights with = covariance(of);
    return std::sqrt(std::inner_product(of.begin(), of.end(), with.begin(), variance));
}

void MarkBelief::learn(const Weights& of, double seen, double variance) {
    const Weights with = covariance(of);
    const double spread = std::inner_product(of.begin(), of.end(), with.begin(), variance);
    const double off = seen - expected(of);
    for (std::size_t i = 0; i < with.size(); ++i) {
        mean_[i] += with[i] / spread * off;
        for (std::size_t j = 0; j < with.size(); ++j)
            variance_[i][j] -= with[i] * with[j] / spread;
    }
}

void MarkBelief::doubt() { widen(doubtSd); }

void MarkBelief::doubtProbe() { variance_[total][total] += square(doubtSd); }

void MarkBelief::widen(double sd) {
    variance_[total][total] += square(sd);
    variance_[total][pan] += square(sd);
    variance_[pan][total] += square(sd);
    variance_[pan][pan] += square(sd);
}

} // namespace panside
