#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

namespace panside {

struct State;

// Water, sap and heat: what is boiled off, how long the sap lasts, when to stop firing, what the wood gave.
class Balance {
public:
    void take(const State& state, const Fact& fact);
    // evaporation, sapLeft, lastLoad, keepBack, efficiency, sapIn, syrupOut and their why
    void show(const State& state, Instant now, Picture& picture) const;
};

}  // namespace panside
