#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

namespace panside {

struct State;

// The alarms and their states (ISA-18.2): raised and returned to normal follow from the fold, seen and shelved are facts.
class Watch {
public:
    // Time passes up to `state.now` with nothing new: what stands by the clock alone begins or ends here.
    void pass(const State& state, Instant until);
    void take(const State& state, const Fact& fact);
    void show(const State& state, Instant now, Picture& picture) const;
};

}  // namespace panside
