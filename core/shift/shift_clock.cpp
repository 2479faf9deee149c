#include "core/shift/shift_clock.h"

#include <algorithm>
#include <cmath>
#include <ctime>

namespace panside {
namespace {

std::int64_t microseconds(clockid_t clock) {
    timespec time{};
    clock_gettime(clock, &time);
    return std::int64_t{time.tv_sec} * 1'000'000 + time.tv_nsec / 1'000;
}

constexpr std::int64_t smallestStepUs = 500'000;

} // namespace

ShiftClock::Ticks ShiftClock::systemTicks() { return {microseconds(CLOCK_REALTIME), microseconds(CLOCK_BOOTTIME)}; }

ShiftClock::ShiftClock(std::function<Ticks()> ticks) : ticks_{std::move(ticks)} { startAtWall(); }

Instant ShiftClock::now() {
    latest_ = std::max(latest_, Instant{std::chrono::microseconds{ticks_().bootUs + fromBootUs_}});
    return latest_;
}

void ShiftClock::startAtWall() {
    const auto ticks = ticks_();
    fromBootUs_ = wallAheadUs_ = ticks.wallUs - ticks.bootUs;
    latest_ = Instant{std::chrono::microseconds{ticks.wallUs}};
}

std::optional<Duration> ShiftClock::resume(Instant last, Duration steps) {
    startAtWall();
    fromBootUs_ -= std::llround(steps.count() * 1e6);
    const auto resumed = Instant{std::chrono::microseconds{ticks_().bootUs + fromBootUs_}};
    latest_ = last;
    if (resumed >= last)
        return std::nullopt;
    fromBootUs_ += (last - resumed).count();
    return resumed - last;
}

std::optional<Duration> ShiftClock::step() {
    const auto ticks = ticks_();
    const auto ahead = ticks.wallUs - ticks.bootUs;
    const auto moved = ahead - wallAheadUs_;
    wallAheadUs_ = ahead;
    if (std::abs(moved) < smallestStepUs)
        return std::nullopt;
    return Duration{static_cast<double>(moved) * 1e-6};
}

} // namespace panside
