#include "core/shift/rehearsal_feed.h"

namespace panside {

namespace {

// A clock that runs so many times faster from here on.
ShiftClock hastened(double speed) {
    const auto start = ShiftClock::systemTicks();
    return ShiftClock{[start, speed] {
        const auto gone = static_cast<double>(ShiftClock::systemTicks().bootUs - start.bootUs);
        const auto hastened = static_cast<std::int64_t>(gone * speed);
        return ShiftClock::Ticks{start.wallUs + hastened, start.bootUs + hastened};
    }};
}

} // namespace

RehearsalFeed::RehearsalFeed(std::uint64_t seed, double speed)
    : RehearsalFeed{rehearsalUnderWay(RehearsalOptions{}, seed,
                                      Instant{std::chrono::microseconds{ShiftClock::systemTicks().wallUs}}),
                    hastened(speed)} {}

RehearsalFeed::RehearsalFeed(RehearsalUnderWay underWay, ShiftClock clock)
    : session_{keeperOfNothing(), std::move(clock)}, rehearsal_{std::move(underWay.rehearsal)} {
    session_.follow(std::move(underWay.past));
    // The crew has seen what there was; the person begins with a clear board.
    std::vector<Fact> seen;
    for (const auto& alarm : session_.picture().alarms)
        seen.push_back({session_.now(), AlarmSeen{std::string{nameOf(alarm.alarm)}}});
    session_.follow(std::move(seen));
}

void RehearsalFeed::advance() {
    const auto now = session_.now();
    if (now > rehearsal_.now() && !rehearsal_.ended())
        session_.follow(rehearsal_.advance(now));
}

void RehearsalFeed::perform(const std::vector<Fact>& facts) {
    for (const auto& fact : facts)
        rehearsal_.perform(fact.what);
}

} // namespace panside
