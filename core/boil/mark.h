#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

namespace panside {

struct State;

// The mark: at which reading syrup is reached. Physics gives the rise at the density wanted; this part believes how much
// this probe in this pan reads too high, and learns it from the hydrometer.
class Mark {
public:
    void take(const State& state, const Fact& fact);
    // probeOffset, rise, targetRise, legalRise, heavyRise, target, targetUncertainty, brix, checks, lastCheck
    void show(const State& state, Instant now, Picture& picture) const;

    TemperatureDifference offset(Instant now) const;
    TemperatureDifference offsetSd(Instant now) const;

private:
    TemperatureDifference offset_{}, sd_ = TemperatureDifference::kelvin(0.3);
};

}  // namespace panside
