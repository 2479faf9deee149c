#pragma once
#include "core/quantity/quantity.h"

#include <array>
#include <cstdint>
#include <optional>

namespace panside {

// How fast a level in a pan climbs, from its readings of the last while in bins of some minutes: what the pans take up
// leaves the tank too, and is not boiled off. Unlike a tank's, a pan's level heaves with the float and the fire, so
// only a straight line through many minutes tells. Plain numbers: metres an hour.
class PanFill {
public:
    struct Rate {
        double metrePerHour, sd;
    };
    void addSample(Instant at, double metre);
    // Since `from`; nullopt where less than ten minutes of it were read, or nothing lately.
    std::optional<Rate> rate(Instant from, Instant now) const;

private:
    struct Bin {
        Instant at{}; // mean time
        float metre = 0;
        std::uint16_t samples = 0;
    };
    static constexpr std::size_t kept = 24;
    const Bin& back(std::size_t i) const { return bins_[(count_ - 1 - i) % kept]; }
    std::array<Bin, kept> bins_{};
    std::size_t count_ = 0;
    Instant begun_{};
};

} // namespace panside
