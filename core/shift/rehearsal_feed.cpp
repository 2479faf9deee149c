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

RehearsalUnderWay underWay(std::uint64_t seed) {
    return rehearsalUnderWay(RehearsalOptions{}, seed,
                             Instant{std::chrono::microseconds{ShiftClock::systemTicks().wallUs}});
}

} // namespace

RehearsalFeed::RehearsalFeed(std::uint64_t seed, double speed) : RehearsalFeed{panside::underWay(seed), seed, speed} {}

RehearsalFeed::RehearsalFeed(RehearsalUnderWay underWay, std::uint64_t seed, double speed)
    : seed_{seed}, speed_{speed}, session_{keeperOfNothing(), hastened(speed)}, rehearsal_{
                                                                                    std::move(underWay.rehearsal)} {
    begin(std::move(underWay.past));
}

void RehearsalFeed::begin(std::vector<Fact> past) {
    session_.follow(std::move(past));
    // The crew has seen what there was; the person begins with a clear board.
    std::vector<Fact> seen;
    for (const auto& alarm : session_.picture().alarms)
        seen.push_back({session_.now(), AlarmSeen{std::string{nameOf(alarm.alarm)}}});
    session_.follow(std::move(seen));
}

void RehearsalFeed::again(bool same) {
    seed_ += same ? 0 : 1;
    auto next = panside::underWay(seed_);
    session_ = Session{keeperOfNothing(), hastened(speed_)};
    rehearsal_ = std::move(next.rehearsal);
    begin(std::move(next.past));
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
