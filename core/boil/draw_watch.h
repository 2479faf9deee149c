#pragma once
#include "core/boil/fact.h"

#include <array>
#include <cstdint>
#include <optional>

namespace panside {

struct State;

// A draw that was shut and nobody keyed it: while syrup is drawn the liquid at the draw-off thins, or stands; what has
// thinned and then climbs for minutes is a pan with its draw shut. A crew that never keys the shutting is believed
// less, and so is a draw that lasts far longer than this crew's: there it is over as soon as the pan, thin by then,
// hardly falls any more.
class DrawWatch {
public:
    // After the mark has taken the fact. True when the draw that is open in the course is seen to be shut.
    bool seesShut(const State& state, const Fact& fact);

private:
    void begin(Instant at);
    bool lastsTooLong(Instant at) const;
    bool climbsAgain(double rise, double mark, Instant at);
    bool fallHasEnded(double rise, double mark, Instant at);
    bool isNeverKeyed() const { return unkeyed_ >= (keys_ ? 2 : 1); }

    float longest_ = 0; // of the draws that were keyed, seconds; fades
    std::optional<Instant> openedAt_, climbsSince_;
    double low_ = 0; // kelvin over boiling water, since it was opened
    Instant lowAt_{}, readAt_{};
    std::uint16_t higher_ = 0; // readings since then that stood well over it
    // Of this shift's draws: whether any was keyed shut, the last one too, and how many in a row were not.
    bool keys_ = false, told_ = true;
    std::uint8_t unkeyed_ = 0;
    struct Level {
        Instant at{};
        float rise = 0; // kelvin over boiling water
    };
    std::array<Level, 8> levels_{};    // of the last minute, the latest first
    float highest_ = 0, steepest_ = 0; // kelvin: since it was opened; the most that it fell in a minute
};

} // namespace panside
