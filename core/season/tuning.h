#pragma once
// Does it pay to fire smaller and more often? dry wood? deeper pans? What the nights say, with how sure they are of it,
// and what they cannot say.
//
// The logarithm of the outcome is regressed on what was done (shrinkage.h). Nothing is claimed that could as well be
// luck: a claim must hold for all effects that are judged at once (Bonferroni), at 95 %. Causes that went together on
// these nights are judged together only. Plain numbers: columns of one regression. An effect is what went together with
// the cause, not a proof of what it does.
#include "core/season/season.h"

#include <string>
#include <vector>

namespace panside {

enum class Outcome : std::uint8_t { evaporation, syrupPerCord };

enum class Cause : std::uint8_t {
    smallerOftener, // both of the next two, the wood an hour staying the same
    fireInterval,
    loadMass,
    moisture,
    depth,
    stack, // judged in a fit of its own: the fire makes it, so beside it the fire's own effects would vanish
    sapSugar,
    pressure,
    advance, // of the season: what changes with it and was not written down
    species, // of most of the night's wood
    hand     // who was on the crew
};
inline constexpr std::size_t causeCount = 11;
struct CauseRow {
    Cause cause;
    double step;                     // SI: an effect is told of so much more; 1 for species and hands
    double evaporationSd, perCordSd; // prior standard deviation of that effect, as a logarithm (0.1: about 10 %)
    bool choosable;                  // a crew can have it so or so tomorrow
};
// The priors are our own judgement of what such steps can do at all (no source); they are stated in the manual.
const CauseRow& rowOf(Cause cause);

enum class Verdict : std::uint8_t {
    pays,          // the outcome is greater with it
    costs,         // it is less
    hardlyMatters, // within 3 % either way, as the data say
    tooLittle,     // to tell
    entangled      // went together with others: see Entangled
};

struct Effect {
    Cause cause;
    std::string what = {};    // the species, the hand
    double step = 1;          // SI, signed
    double usual = 0;         // SI: the mean of the nights; a share for species and hands
    double middle = 0;        // logarithm of the outcome with the step over without it
    double low = 0, high = 0; // 95 % of belief
    double sd = 0;
    Verdict verdict = Verdict::tooLittle;
};

// Causes that went together on these nights, so that only their common effect can be judged: of one standard deviation
// of their common movement, in the direction in which the first of them has its step.
struct Entangled {
    std::vector<std::size_t> effects; // indexes into Tuning::effects
    std::vector<bool> against;        // the other way than the first
    double middle = 0, low = 0, high = 0;
    Verdict verdict = Verdict::tooLittle;
};

struct LeftOut {
    Cause cause;
    std::string what = {};
    int known = 0;     // nights on which it is known
    bool same = false; // known, but much the same every night
};

// A night with, a night without.
struct Comparison {
    std::size_t effect; // index into Tuning::effects
    int pairs;          // of nights, until a difference of 5 % would show; 0: more than 20
};

struct Tuning {
    Outcome outcome;
    int nights = 0;      // that could be used
    int withOutcome = 0; // that know the outcome
    double scatter = 0;  // of a night about what its causes make one expect, as a logarithm
    std::vector<Effect> effects = {};
    std::vector<Entangled> entangled = {};
    std::vector<LeftOut> leftOut = {};
    std::optional<Comparison> next = {}; // none: nothing can be compared yet, or all that can be chosen is known
};
inline constexpr int fewestNights = 6; // for any claim
Tuning tune(std::span<const SeasonShift> shifts, Outcome outcome);

} // namespace panside
