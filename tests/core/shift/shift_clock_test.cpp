#include "core/shift/shift_clock.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

using namespace std::chrono_literals;

// Two clocks that a test winds: the wall's, and the one that only runs.
struct Clocks {
    std::int64_t wallUs = 1'800'000'000'000'000;
    std::int64_t bootUs = 5'000'000;
    void run(std::int64_t seconds) {
        wallUs += seconds * 1'000'000;
        bootUs += seconds * 1'000'000;
    }
    ShiftClock clock() {
        return ShiftClock{[this] { return ShiftClock::Ticks{wallUs, bootUs}; }};
    }
};

TEST(ShiftClock, StartsAtTheWallClockAndRunsOn) {
    Clocks clocks;
    auto clock = clocks.clock();
    const auto start = clock.now();
    EXPECT_EQ(start.time_since_epoch(), 1'800'000'000s);
    clocks.run(90);
    EXPECT_EQ(clock.now() - start, 90s);
    EXPECT_FALSE(clock.step());
}

TEST(ShiftClock, DoesNotJumpWhenTheWallClockIsSetBackAnHour) {
    Clocks clocks;
    auto clock = clocks.clock();
    const auto start = clock.now();
    clocks.run(10);
    clocks.wallUs -= 3600 * 1'000'000LL;
    EXPECT_EQ(clock.now() - start, 10s);
    EXPECT_EQ(clock.step().value(), -3600s);
    EXPECT_FALSE(clock.step());
}

TEST(ShiftClock, TakesASlewForNoStep) {
    Clocks clocks;
    auto clock = clocks.clock();
    for (int second = 0; second < 7200; ++second) {
        clocks.run(1);
        clocks.wallUs += 500; // 500 parts in a million, the most that a time server slews
        EXPECT_FALSE(clock.step());
    }
}

TEST(ShiftClock, CountsThroughSleep) {
    Clocks clocks;
    auto clock = clocks.clock();
    const auto start = clock.now();
    clocks.run(8 * 3600);
    EXPECT_EQ(clock.now() - start, 8h);
    EXPECT_FALSE(clock.step());
}

TEST(ShiftClock, TakesUpAShiftWhoseWallClockWasMoved) {
    Clocks clocks;
    const auto last = Instant{std::chrono::microseconds{clocks.wallUs}} - 3600s - 20s;
    auto clock = clocks.clock();
    // During the shift the wall clock was moved an hour ahead; the shift's own time stayed behind it.
    EXPECT_FALSE(clock.resume(last, 3600s));
    EXPECT_EQ(clock.now() - last, 20s);
}

TEST(ShiftClock, NeverRunsBackOverAShiftTakenUpAgain) {
    Clocks clocks;
    const auto last = Instant{std::chrono::microseconds{clocks.wallUs}} + 1800s;
    auto clock = clocks.clock();
    EXPECT_EQ(clock.resume(last, 0s).value(), -1800s);
    EXPECT_GE(clock.now(), last);
    clocks.run(5);
    EXPECT_EQ(clock.now() - last, 5s);
}

} // namespace
} // namespace panside
