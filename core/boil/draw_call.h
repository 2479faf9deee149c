#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

namespace panside {

struct State;

// The call to draw: the pan is at the target, and has been for so long that no noise of the boil made it.
class DrawCall {
public:
    void absorb(const State& state, const Fact& fact);
    void show(const State& state, Instant now, Picture& picture) const; // drawDue; after the alarms
    bool due(const State& state, Instant now) const;

private:
    std::optional<Instant> over_; // since when it stands over the target
    bool surely_ = false;         // by more than its noise
    bool typed_ = false;          // read by a person
};

} // namespace panside
