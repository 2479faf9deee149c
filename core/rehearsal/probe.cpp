#include "core/rehearsal/probe.h"
#include "core/rehearsal/digits.h"

#include <algorithm>
#include <cmath>

namespace panside::rehearsal {

PanProbe::PanProbe(const RehearsalOptions& options, std::uint64_t seed)
    : probe_{options.probe}, fault_{options.probeFault}, faultFrom_{seconds(options.probeFaultAfter)},
      faultTo_{seconds(options.probeFaultAfter + options.probeFaultLasts)}, dice_{seed, 21}, slowDice_{seed, 22} {}

void PanProbe::meet(const RehearsalOptions& options, bool foams) {
    probe_ = options.probe;
    fault_ = options.probeFault;
    faultFrom_ = seconds(options.probeFaultAfter);
    faultTo_ = faultFrom_ + seconds(options.probeFaultLasts);
    if (foams)
        foamFor_ = dice_.uniform(30, 60);
}

bool PanProbe::faulty(double since) const {
    return fault_ != ProbeTrouble::none && since >= faultFrom_ && since < faultTo_;
}

void PanProbe::step(double dt, double since, double celsius, double superheat, double waterBoils, bool boiling) {
    since_ = since;
    slow_ += (celsius + superheat - slow_) * std::min(1.0, dt / std::max(1.0, seconds(probe_.lag)));
    if (boiling)
        scale_ += probe_.niterPerHour * dt / 3600 + dice_.normal(0, probe_.walk) * std::sqrt(dt / 3600);
    offset_ = probe_.bias.kelvin() + scale_;

    const double noise = boiling ? probe_.noise : 0.2 * probe_.noise;
    bubble_ += -bubble_ * dt / 4 + dice_.normal(0, noise) * std::sqrt(2 * dt / 4);
    if (probe_.wander > 0) {
        const double wander = (boiling ? 0.7 : 0.1) * probe_.wander;
        ripple_ += -ripple_ * dt / 20 + slowDice_.normal(0, wander) * std::sqrt(2 * dt / 20);
        roll_ += -roll_ * dt / 90 + slowDice_.normal(0, wander) * std::sqrt(2 * dt / 90);
    }
    if (boiling && dice_.chance(probe_.splashesPerHour * dt / 3600))
        spray_ -= dice_.uniform(0.2, 0.9);
    spray_ -= spray_ * dt / 6;
    if (boiling && foamFor_ <= 0 && dice_.chance(probe_.foamsPerHour * dt / 3600))
        foamFor_ = dice_.uniform(10, 45);
    foamFor_ = std::max(0.0, foamFor_ - dt);
    // In foam the tip stands in steam, which has the temperature of boiling water or little more.
    const double foam = foamFor_ > 0 ? std::min(0.0, waterBoils + 0.3 - slow_) : 0.0;
    foamTo_ += (foam - foamTo_) * std::min(1.0, dt / (5 + seconds(probe_.lag)));
}

std::optional<double> PanProbe::sent() {
    double celsius = clean() + bubble_ + ripple_ + roll_ + spray_ + foamTo_ + dice_.normal(0, 0.15 * probe_.noise);
    const bool wrong = faulty(since_);
    if (dice_.chance(probe_.spikesPerHour / 3600) || (wrong && fault_ == ProbeTrouble::spikes && dice_.chance(0.15)))
        celsius += (dice_.chance(0.5) ? 1 : -1) * dice_.uniform(4, 60);
    if (wrong && fault_ == ProbeTrouble::otherUnit)
        celsius = celsius * 1.8 + 32;
    const bool fahrenheit = probe_.unit == Unit::degF;
    double shown = fahrenheit ? celsius * 1.8 + 32 : celsius;
    shown = rounded(shown, probe_.step);
    celsius = fahrenheit ? (shown - 32) / 1.8 : shown;
    if (wrong && fault_ == ProbeTrouble::silent)
        return std::nullopt;
    if (wrong && fault_ == ProbeTrouble::stuck && held_)
        return held_;
    held_ = celsius;
    return celsius;
}

} // namespace panside::rehearsal
