#pragma once
#include "core/boil/fact.h"

#include <cstdint>
#include <optional>

namespace panside {

struct State;

// A draw that was shut and nobody keyed it: while syrup is drawn the liquid at the draw-off thins, or stands; what has
// thinned and then climbs for minutes is a pan with its draw shut.
class DrawWatch {
public:
    // After the mark has taken the fact. True when the draw that is open in the course is seen to be shut.
    bool seesShut(const State& state, const Fact& fact);

private:
    void begin(Instant at);
    bool lastsTooLong(Instant at) const;

    float longest_ = 0; // of the draws that were keyed, seconds; fades
    std::optional<Instant> openedAt_, climbsSince_;
    double low_ = 0; // kelvin over boiling water, since it was opened
    Instant lowAt_{}, readAt_{};
    std::uint16_t higher_ = 0; // readings since then that stood well over it
};

} // namespace panside
