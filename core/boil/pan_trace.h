#pragma once
// The last three quarters of an hour of a reading, for what is told of it afterwards. Plain numbers, kelvin and
// seconds: points of fitted lines, a rise as well as a temperature.
#include "core/quantity/quantity.h"

#include <array>
#include <cstdint>
#include <optional>

namespace panside {

class PanTrace {
public:
    // Kept as means of ten seconds; times do not run backwards.
    void add(Instant at, double kelvin);
    // Between the two nearest; nullopt where none was kept within five minutes of that time.
    std::optional<double> at(Instant time) const;
    // The same freed of its noise: what a parabola through the 35 s on both sides is at that time. Where that much was
    // not read yet a straight line through the 60 s before and the 10 s after; as `at` where less than three were kept
    // before it. Once a draw runs the reading turns: what comes later, or lies off
    // the line, is left out, and so is what came before `turned`, where it turned well before that time.
    std::optional<double> smooth(Instant time, std::optional<Instant> turned = {}) const;
    static constexpr std::chrono::seconds bendsOver{35}; // on both sides, through which smooth() looks
    // Seconds from that time to the nearest that was kept.
    double away(Instant time) const;
    // How fast it moved about that time, kelvin a second: over the half minute on both sides, or between what was kept
    // nearest to its ends; 0 where nothing was.
    double slope(Instant time) const;

private:
    struct Mean {
        float seconds; // since start_
        float kelvin;
    };
    static constexpr std::size_t size = 270;
    std::optional<double> bent(double when) const;
    const Mean& mean(std::size_t back) const { return ring_[(next_ + size - 1 - back) % size]; }

    std::optional<Instant> start_;
    std::array<Mean, size> ring_{};
    float begun_ = 0;
    std::uint16_t next_ = 0, count_ = 0, inLast_ = 0;
};

} // namespace panside
