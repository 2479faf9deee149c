#pragma once
#include "core/quantity/quantity.h"

#include <array>
#include <optional>
#include <vector>

namespace panside {

// The last twenty minutes of the stack in steps of five seconds, and what can be read from its shape. Steps in which
// nothing was read are bridged up to `bridged`; readings further apart than that tell nothing here.
class StackTrace {
public:
    static constexpr Duration step{5};
    static constexpr int kept = 260;
    static constexpr Duration bridged{40};

    // True when this reading begins a new step.
    bool addSample(Instant at, Temperature stack);

    // Somebody loaded the fire, no sooner than `after`: the time at which the door opened. An open door lets cold air
    // into the stack, which falls within seconds; with the door shut again a fire that got nothing is back on its old
    // path within a minute, while a load first dries, then burns above it.
    std::optional<Instant> loading(Instant now, Instant after) const;

    // How the heat of one load went, in seconds after it.
    struct Sag {
        Duration heat;  // the fire's heat had sunk to its own mean since the loading
        Duration stack; // the same of the stack as it reads, which follows late: what a person sees
        bool seen;      // false: the next load came before; followed on as it fell
    };
    // nullopt where the stack was not read closely enough, or nothing points to an end.
    std::optional<Sag> sag(Instant from, Instant to) const;
    // Does the load of `from` still burn above its own mean? nullopt: cannot be told.
    std::optional<bool> burnsHigh(Instant from, Instant now) const;

private:
    std::optional<double> at(std::int64_t index) const;
    // Steps first to last, bridged and freed of single spikes; empty where there is a longer gap.
    std::vector<double> between(std::int64_t first, std::int64_t last) const;
    static std::int64_t indexOf(Instant at);

    std::array<float, kept> mean_{}; // degrees Celsius
    std::array<std::uint8_t, kept> samples_{};
    std::int64_t newest_ = -1;
};

} // namespace panside
