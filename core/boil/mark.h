#pragma once
#include "core/boil/density_check.h"
#include "core/boil/fact.h"
#include "core/boil/mark_belief.h"
#include "core/boil/mark_creep.h"
#include "core/boil/pan_trace.h"
#include "core/boil/picture.h"
#include "core/boil/repeated_check.h"
#include "core/boil/same_sample.h"

#include <array>

namespace panside {

struct State;

// What is in the cup the probe shows so much later: in its pocket it follows the pan some 8 s behind (common practice,
// no source). In a draw that thins by a kelvin a minute that is 0.13 K.
inline constexpr std::chrono::seconds probeLag{8};

// The mark: at which reading syrup is reached. Physics gives the rise at the density wanted; this part believes how
// much this probe in this pan reads too high, and learns it from the hydrometer.
class Mark {
public:
    void absorb(const State& state, const Fact& fact);
    // probeOffset, rise, targetRise, legalRise, heavyRise, target, targetUncertainty and what one more check would make
    // of it, brix, checks, questionedChecks, lastCheck, check
    void show(const State& state, Instant now, Picture& picture) const;

    TemperatureDifference offset(Instant) const { return TemperatureDifference::kelvin(belief_.offset(onWaterCheck_)); }
    TemperatureDifference offsetSd(Instant now) const;
    // The last density check, whatever became of it.
    const std::optional<CheckPicture>& lastCheck() const { return came_; }

private:
    struct Read {
        double kelvin, sd; // over water's boiling point, as read
        double alike = 0;  // variance in it that is alike from cup to cup: of the sample's age, of what nobody read
    };
    // A crew is as slow with one cup as with the next: what that puts the mark off by no number of checks averages out.
    struct Untold {
        double weight = 0, ofAll = 0, variance = 0; // sums of weights, and of variances so weighed
        void add(double weight, double variance);
        double common() const; // variance
    };
    std::optional<Read> readAt(const State& state, Instant taken, Pressure pressure) const;
    std::optional<Read> readBefore(const State& state, Instant at, Pressure pressure) const;
    void takeDensity(const State& state, const DensityCheck& check, Instant at);
    CheckRemark slipOf(const State& state, const DensityCheck& check, double kelvin, double variance,
                       double surprise) const;
    bool isDisbelieved(const State& state, const DensityCheck& check, Brix sugar, const Read& read, double seen,
                       double variance);
    double fallsBehind(const State& state, Instant taken) const;
    CheckFate learn(const State& state, const DensityCheck& check, const CheckedSugar& sugar, Instant at);
    bool isOfNoPan(double brix, double seen, double variance, Instant at);
    void takeWater(const State& state, const WaterCheck& check, Instant at);
    double sdAfterCheck(Instant now) const;
    void watchHeight(const State& state, Instant at);
    void creep(Instant at);
    void followLeap(const State& state, const Fact& fact);
    void lean(double off, double sd);

    MarkBelief belief_;
    PanTrace trace_;                                   // rise on the probe's own scale
    std::array<std::optional<Instant>, 4> openings_{}; // of draws, the latest first
    MarkCreep creep_;
    bool onWaterCheck_ = false; // boiling water is known from a check with the probe itself
    Untold untold_;
    RepeatedCheck repeated_;
    SameSample same_;
    struct Before {
        MarkBelief belief;
        Untold untold;
        int checks = 0;
        std::optional<Instant> learntAt;
        Instant at{};
    };
    std::optional<Before> beforeSame_; // the first of checks that tell the same; none once they are seen through
    std::optional<CheckPicture> came_; // to what
    std::optional<Instant> learntAt_;
    int checks_ = 0, questioned_ = 0;
    std::optional<Instant> lastAged_, creptAt_;
    std::optional<double> doubted_;  // what the last questioned check said, K
    double slip_ = 0;                // half of what the last check is off, if it was read on another scale; K
    double lean_ = 0;                // to which side the last checks lay off what was believed, standard deviations
    std::optional<Instant> leaptAt_; // the probe stands doubted since then, by a leap
    std::optional<MarkBelief> beforeLeap_; // and this was believed
    bool otherHeight_ = false;             // the pressure that it rests on is one that no weather makes here
};

} // namespace panside
