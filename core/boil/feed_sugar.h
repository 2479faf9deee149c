#pragma once
#include "core/boil/fact.h"

#include <optional>

namespace panside {

struct State;

// How sweet the sap is that reaches the syrup pan, by what was told of the sap that came in. When a concentrator is
// switched on the tank's sugar jumps; what stands in the flue pan follows within hours, and with it how fast the
// draw-off thickens.
class FeedSugar {
public:
    void absorb(const State& state, const SapIn& sap, Instant at);
    // By what factor it has grown since this was last asked; 1 where nobody told any sugar.
    double growth(Instant now);

private:
    double tank_ = 0, flue_ = 0; // mass fractions; 0: not known
    std::optional<Instant> at_;
};

} // namespace panside
