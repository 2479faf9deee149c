#pragma once
// Has a probe frozen? A true reading never stands still to its last digit for long: how long it may depends on its
// steps, and where they are coarse on how long it held before. What is shown is a plain number, as the probe wrote it:
// its last digit is of that unit and no other.
#include "core/quantity/quantity.h"

#include <array>
#include <cstdint>

namespace panside {

class LastDigit {
public:
    struct Around {
        bool boiling;          // only what boils must move
        bool othersMove;       // over a fire, since this one last did: what coarse steps are held against
        bool flickers = false; // flue gas: by whole degrees even, where liquid stands
    };
    // `shown` in the unit it came in, `spacing` seconds between samples as usual.
    void addSample(double shown, Instant at, double spacing, const Around& around);

    bool stuck() const { return stuck_; }
    Instant unchangedSince() const { return since_; }

private:
    void holdEnds(double held, Instant at);
    double limit() const;

    static constexpr std::size_t blocksKept = 7;
    double last_ = 0;
    Instant since_{}, heardAt_{}, blockFrom_{};
    std::uint32_t unchanged_ = 0, moves_ = 0;
    float step_ = 0; // the smallest that was seen; 0: none yet
    // The longest hold of each of the last stretches of boil, seconds, and of the one that runs.
    std::array<float, blocksKept> longest_{};
    float longestNow_ = 0;
    std::uint16_t blocks_ = 0;
    bool stuck_ = false, flickers_ = false;
};

} // namespace panside
