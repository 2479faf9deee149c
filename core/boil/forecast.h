#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

namespace panside {

struct State;

// How long until the draw (until the reading, freed of its noise, next rises through the target), and while drawing until
// it falls back through it: a distribution, or the reason why there is none.
class DrawForecast {
public:
    void take(const State& state, const Fact& fact);
    // drawEta, closeEta and their why
    void show(const State& state, Instant now, Picture& picture) const;
};

}  // namespace panside
