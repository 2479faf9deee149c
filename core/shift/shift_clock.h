#pragma once
#include "core/quantity/quantity.h"

#include <cstdint>
#include <functional>
#include <optional>

namespace panside {

// The clock that facts are stamped by. It starts at the wall clock's time and runs on by one that nobody can set and
// that counts through sleep, so a wall clock put right, or back an hour, moves no interval.
class ShiftClock {
public:
    struct Ticks {
        std::int64_t wallUs; // CLOCK_REALTIME, microseconds since 1970, UTC
        std::int64_t bootUs; // CLOCK_BOOTTIME
    };
    static Ticks systemTicks();

    explicit ShiftClock(std::function<Ticks()> ticks = systemTicks);

    // Never earlier than any moment told before, until startAtWall().
    Instant now();
    // A new shift: the wall clock's time from here on.
    void startAtWall();
    // A shift taken up again: `steps` is how far the wall clock was moved during it, `last` its latest fact. Where the
    // wall clock now stands before that, it was set back meanwhile: the time runs on from `last`, and how far is
    // returned.
    std::optional<Duration> resume(Instant last, Duration steps);
    // How far the wall clock was moved since the last call; nullopt if it was not. What a time server slews (less than
    // half a second from one call to the next) is no step.
    std::optional<Duration> step();

private:
    std::function<Ticks()> ticks_;
    std::int64_t fromBootUs_ = 0;  // now = boot clock + this
    std::int64_t wallAheadUs_ = 0; // wall clock - boot clock, as last seen
    Instant latest_{};
};

} // namespace panside
