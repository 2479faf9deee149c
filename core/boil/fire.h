#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

namespace panside {

struct State;

// Loads of wood and their rhythm: when the next is due, by the interval set or learned; whose turn it is.
class Fire {
public:
    void take(const State& state, const Fact& fact);
    // fireDue, fireInterval, fireIntervalLearned, lastFired, loads, turn, wood and their why
    void show(const State& state, Instant now, Picture& picture) const;

    // When the next load is due; nullopt when nothing is to be fired.
    std::optional<Instant> due(const State& state) const;
    std::optional<Instant> lastFired() const { return lastFired_; }

private:
    std::optional<Instant> lastFired_;
};

}  // namespace panside
