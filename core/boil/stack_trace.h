#pragma once
#include "core/quantity/quantity.h"

#include <array>
#include <optional>

namespace panside {

// The last twenty minutes of the stack in steps of five seconds, and what can be read from its shape.
class StackTrace {
public:
    static constexpr Duration step{5};
    static constexpr int kept = 240;

    // True when this reading begins a new step.
    bool take(Instant at, Temperature stack);

    // Somebody loaded the fire: the dip of the open door, then a surge above the level before it. The time at which the
    // door opened. A door that was only opened dips too, but does not surge.
    std::optional<Instant> loading(Instant now) const;
    // Seconds after `from` at which the heat sank to its own mean since then; where the next load came sooner, what its
    // fall till then points to. nullopt where the stack was not read closely enough.
    std::optional<Duration> sag(Instant from, Instant to) const;

private:
    // Mean of a step, degrees above the freezing point of water; nullopt where nothing was read in it.
    std::optional<double> at(std::int64_t index) const;
    static std::int64_t indexOf(Instant at);

    std::array<float, kept> mean_{};
    std::array<std::uint8_t, kept> samples_{};
    std::int64_t newest_ = -1;
};

} // namespace panside
