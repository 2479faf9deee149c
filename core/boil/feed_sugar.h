#pragma once
#include "core/boil/fact.h"

#include <optional>

namespace panside {

// How sweet the sap is, by what was told of each load that came in: in the feed tank, and of what has come through to
// the syrup pan. When a concentrator is switched on the tank's sugar jumps; what stands in the flue pan follows within
// hours, and with it how fast the draw-off thickens.
class FeedSugar {
public:
    // `stood`: what was in the tank before it; nothing where nobody reads it: the feed is taken to have been switched.
    void came(const SapIn& sap, Volume stood, Instant at);
    // nullopt where nobody told any sugar.
    std::optional<Brix> tank() const;
    std::optional<Brix> pans(Instant at) const;
    std::optional<Brix> pansBetween(Instant from, Instant to) const; // on average

private:
    double tank_ = 0, pans_ = 0; // mass fractions; 0: not known. `pans_`: at `at_`
    Instant at_{};               // of the last load
};

} // namespace panside
