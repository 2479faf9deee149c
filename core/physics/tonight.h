#pragma once
// Tonight: how long the sap that stands there will take on this rig, what syrup and what wood, learned from its own
// last nights; and the other way round, how much may be started so that the fire is cold by a clock time.
#include "core/quantity/quantity.h"

#include <optional>
#include <span>
#include <vector>

namespace panside {

// Of ten such nights one comes under p10, five under p50, nine under p90.
template <class Quantity>
struct Likely {
    Quantity p10{}, p50{}, p90{};
    bool operator==(const Likely&) const = default;
};

// A night that is over: from lighting to the last load.
struct NightBoiled {
    Duration fired;                         // from lighting to the last load
    Volume sap;                             // that left the tank in that time, at 20 degC
    Mass sugar;                             // in that sap
    std::optional<Volume> kept = {};        // sap that stood in the tank at the last load
    std::optional<double> cords = {};       // full ones, of the whole night
    std::optional<Mass> sugarIn = {};       // of all the sap of the night, that which filled the pans up too
    std::optional<Mass> sugarDrawn = {};    // as syrup; none: not all draws were measured
    std::optional<Mass> sugarInPans = {};   // at its end
    std::optional<Duration> firstDraw = {}; // from lighting to the end of the first draw
    std::optional<Mass> sugarBefore = {}, sugarReady = {}; // in the pans, when it was lit and at that draw
};

// What is known before the fire is lit.
struct TonightBasis {
    std::vector<NightBoiled> nights;             // of this rig, the oldest first
    std::optional<VolumeFlow> rate = {};         // water boiled off, as somebody says; where there is no night
    std::optional<Volume> keepBack = {};         // as reckoned from the pans; none: as on the nights before
    Duration burnOut = std::chrono::minutes{45}; // from the last load to a cold fire
    bool burnOutLearned = false;
    Brix syrup = Brix::degrees(66.9);
    bool pansEmpty = false;               // drained since the last night: they must be filled with sweet first
    std::optional<Mass> sweetInPans = {}; // what the nights before left in them; none: not known
};

// Sap or concentrate that stands somewhere.
struct SapStanding {
    Volume volume; // at 20 degC
    Brix sugar;
    Brix sugarSd = Brix::degrees(0.1);
};

enum class TonightLack : std::uint8_t { none, noSap, noNight, allKeptBack };

struct TonightPlan {
    Volume sap;
    Mass sugar;
    Volume water;    // to be boiled off until the last load
    Volume keepBack; // of the sap, to cover the pans while the fire burns out; nothing where it is not known
    bool keepKnown = false;
    bool keepLearned = false;
    Likely<Duration> lastLoad; // from lighting
    Likely<Duration> cold;     // from lighting to a cold fire
    Likely<Volume> syrup;
    std::optional<Likely<Duration>> firstDraw; // from lighting; none: not two nights tell what the pans hold by then
    std::optional<Likely<double>> cords;       // none: no night knows its wood
    int nights = 0;                            // that it rests on
    bool rateSaid = false;                     // it rests on a rate that somebody said
};

class Tonight {
public:
    // Range      nights of 10 min to 48 h fired and of sap above nothing; others are left out. Without any night and
    //            without a rate nothing is foretold. Sap and concentrate to 30 brix
    // Accuracy   its own ranges: they hold eight of ten nights (tests/tonight, made-up boils of many rigs, after three
    //            nights)
    // Source     hours = warm-up + water / rate, fitted with a stated prior (warm-up 0.5 +- 0.3 h, one night about
    //            another 6 percent: our own judgement) and its scatter summed over a grid, as in Gelman, Bayesian
    //            Analysis 1 (2006) 515; sugar by mass balance
    explicit Tonight(TonightBasis basis);

    // All of it, from lighting on.
    TonightLack lack(std::span<const SapStanding> stands) const;
    std::optional<TonightPlan> plan(std::span<const SapStanding> stands) const;
    // How much of it may be started so that the fire is cold after so long: in nine of ten nights, and in five.
    struct MayStart {
        Volume surely, likely;
        bool all = false; // surely all of it
    };
    std::optional<MayStart> mayStart(std::span<const SapStanding> stands, Duration untilCold) const;
    // Water boiled off in an hour of firing, warm-up left out; and the warm-up.
    std::optional<Likely<VolumeFlow>> rate() const;
    std::optional<Duration> warmUp() const;
    int nights() const { return static_cast<int>(used_.size()); }
    const TonightBasis& basis() const { return basis_; }

private:
    struct Belief { // for one scatter of a night
        double weight, scatter;
        double warmUp, perLitre; // hours; hours a litre
        double varWarm, varPer, covariance;
    };
    void learn();
    Likely<double> hours(double water) const;
    std::optional<Volume> keepBack() const; // none: nothing is known of the pans
    Likely<Volume> syrupOf(double sugar, double sugarSd) const;
    std::optional<Likely<double>> cordsOf(const Likely<double>& hours) const;
    // By a mass balance of sugar: the gradient stands when the pans hold what they held at the first draws before.
    std::optional<Likely<Duration>> firstDraw(double sapSugar) const;
    double hoursToReady(double before, double ready, double sapSugar) const;

    TonightBasis basis_;
    std::vector<NightBoiled> used_;
    std::vector<Belief> beliefs_;
};

// All that stands, each part concentrated to so much where it is thinner; nothing else is changed.
// Range      to 30 brix
std::vector<SapStanding> concentratedTo(std::span<const SapStanding> stands, Brix to);

} // namespace panside
