#pragma once
// The rehearsal's pan probe: lag, bias, scale growing on it, boil noise, spray, foam, spikes, faults and a last digit.
#include "core/rehearsal/dice.h"
#include "core/rehearsal/options.h"

#include <optional>

namespace panside::rehearsal {

class PanProbe {
public:
    PanProbe(const RehearsalOptions& options, std::uint64_t seed);
    // `celsius`: the liquid at the draw-off; `superheat`: how much the metal's flux lifts it, against a steady fire.
    void step(double dt, double since, double celsius, double superheat, double waterBoils, bool boiling);

    // The evening has become another; `foams`: it stands in foam at once.
    void meet(const RehearsalOptions& options, bool foams);

    // What it would read without noise: lag, bias and scale are the probe's own, and no noise.
    double clean() const { return slow_ + offset_; }
    double offset() const { return offset_; }
    // What it sends now, degC, at its last digit; nothing while silent.
    std::optional<double> sent();

private:
    bool faulty(double since) const;
    RehearsalProbe probe_;
    ProbeTrouble fault_;
    double faultFrom_, faultTo_;
    Dice dice_, slowDice_;
    double slow_ = 4, offset_ = 0, scale_ = 0, since_ = 0;
    double bubble_ = 0, ripple_ = 0, roll_ = 0, spray_ = 0, foamFor_ = 0, foamTo_ = 0;
    std::optional<double> held_;
};

} // namespace panside::rehearsal
