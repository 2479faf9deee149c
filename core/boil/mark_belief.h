#pragma once
// What is believed of the errors between a reading and syrup, as one Gaussian over four of them, in kelvin:
//   total       what the probe reads too high in boiling syrup, against the barometer's boiling water
//   pan         the part of it that boiling water does not show: this syrup, this pan's scale, the rise model
//   hydrometer  what the house's hydrometer is always off by, seen as a reading; refractometer the same
// A density check shows total plus glass (pan plus glass where boiling water is known from a check with the probe
// itself), a water check shows total less pan. So a check never teaches more than its glass is good for, and a pan that
// is swapped takes its own part along and no more. Plain numbers, in kelvin: one vector and one matrix of variances.
#include <array>

namespace panside {

// How far a probe that nobody checked is off, one standard deviation, K: a sound Pt100 may be 0.8 K off at 100 degC
// (IEC 60751, class B), and that is taken for two of them.
inline constexpr double uncheckedSd = 0.4;

class MarkBelief {
public:
    enum Part : std::size_t { total, pan, hydrometer, refractometer };
    using Weights = std::array<double, 4>;

    static constexpr double outlier = 3.5; // standard deviations off: questioned
    // What a density check shows, read by one of the glasses.
    static Weights ofCheck(bool onWaterCheck, Part glass);
    // Of two that are questioned: off to the same side by nearly as much they bear each other out.
    static bool bearsOut(double before, double now, double expected);

    MarkBelief();
    // A probe known so well before, in this pan.
    void start(double offset, double sd);
    // The pan and its scale are another's.
    void swapPan();
    // Time passed: probes walk, and what is known grows old.
    void age(double seconds);
    // Scale has grown on pan and probe: syrup is reached at a higher reading by so many kelvin.
    void creep(double kelvin);

    double offset(bool onWaterCheck) const { return mean_[onWaterCheck ? pan : total]; }
    double variance(bool onWaterCheck) const { return variance_[part(onWaterCheck)][part(onWaterCheck)]; }
    // How many standard deviations an observation of weights' sum lies off; by how many kelvin.
    double surprise(const Weights& of, double seen, double variance) const;
    double off(const Weights& of, double seen) const { return seen - expected(of); }
    double spread(const Weights& of, double variance) const; // standard deviation of what will be seen
    void learn(const Weights& of, double seen, double variance);
    // The belief was wrong, and is to follow what comes.
    void doubt();
    // The probe alone: boiling water says so, and nothing of the pan.
    void doubtProbe();
    // It may be off by so many kelvin more than was thought, one standard deviation.
    void widen(double sd);

private:
    static Part part(bool onWaterCheck) { return onWaterCheck ? pan : total; }
    double expected(const Weights& of) const;
    Weights covariance(const Weights& of) const;

    Weights mean_{};
    std::array<Weights, 4> variance_{};
};

} // namespace panside
