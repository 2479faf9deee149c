#include "core/shift/rehearsal_feed.h"

namespace panside {
namespace {

constexpr Duration patience = std::chrono::minutes{2}; // for an alarm that nobody has seen

// A clock that runs so many times faster from here on.
ShiftClock hastened(double speed) {
    const auto start = ShiftClock::systemTicks();
    return ShiftClock{[start, speed] {
        const auto gone = static_cast<double>(ShiftClock::systemTicks().bootUs - start.bootUs);
        const auto hastened = static_cast<std::int64_t>(gone * speed);
        return ShiftClock::Ticks{start.wallUs + hastened, start.bootUs + hastened};
    }};
}

RehearsalUnderWay underWay(std::uint64_t seed, bool lesson) {
    const Instant now{std::chrono::microseconds{ShiftClock::systemTicks().wallUs}};
    return lesson ? lessonUnderWay(seed, now) : rehearsalUnderWay(RehearsalOptions{}, seed, now);
}

} // namespace

RehearsalFeed::RehearsalFeed(std::uint64_t seed, double speed, std::unique_ptr<RehearsalHouse> house)
    : RehearsalFeed{panside::underWay(seed, false), seed, speed, std::move(house)} {}

RehearsalFeed::RehearsalFeed(RehearsalUnderWay underWay, std::uint64_t seed, double speed,
                             std::unique_ptr<RehearsalHouse> house)
    : seed_{seed}, speed_{speed}, house_{std::move(house)}, session_{tonight()}, rehearsal_{
                                                                                     std::move(underWay.rehearsal)} {
    begin(std::move(underWay));
}

Session RehearsalFeed::tonight() const {
    return Session{house_ ? keeperIn(Journal::open(house_->journal())) : keeperOfNothing(), hastened(speed_)};
}

// Whose boil is taken over already.
void RehearsalFeed::begin(RehearsalUnderWay underWay) {
    troubles_ = std::move(underWay.troubles);
    crewAway_ = false;
    session_.follow(std::move(underWay.past));
    // The crew has seen what there was; the person begins with a clear board.
    std::vector<Fact> seen;
    for (const auto& alarm : session_.picture().alarms)
        seen.push_back({session_.now(), AlarmSeen{std::string{nameOf(alarm.alarm)}}});
    session_.follow(std::move(seen));
    began_ = session_.now();
    befallen_ = 0;
    beginCounting();
}

void RehearsalFeed::beginCounting() {
    countsFrom_ = session_.now();
    rehearsal_.beginLesson();
    missed_.clear();
}

void RehearsalFeed::throwIn(Trouble trouble) {
    advance();                 // up to now, what was to come before
    thrown_.resize(befallen_); // what is still to come of the time before gives way
    thrown_.push_back({trouble, secondsBetween(began_, session_.now())});
    advance();
}

void RehearsalFeed::again(Evening evening) {
    const bool lesson = evening == Evening::lesson || (evening == Evening::same && isLesson() && thrown_.empty());
    if (evening != Evening::same)
        thrown_.clear();
    seed_ += evening == Evening::same ? 0 : 1;
    auto next = panside::underWay(seed_, lesson);
    if (house_) {
        session_.letGo();
        house_->asItWas();
    }
    session_ = tonight();
    rehearsal_ = std::move(next.rehearsal);
    begin(std::move(next));
}

bool RehearsalFeed::isOver() {
    return rehearsal_.ended() || (isLesson() && secondsBetween(countsFrom_, session_.now()) > lessonLasts.count());
}

void RehearsalFeed::advance() {
    const auto now = session_.now();
    for (; befallen_ < thrown_.size() && secondsBetween(began_, now) >= thrown_[befallen_].after; ++befallen_) {
        const Thrown& next = thrown_[befallen_];
        session_.follow(rehearsal_.advance(began_ + Duration{next.after}));
        if (!isLesson())
            beginCounting();
        rehearsal_.befall(next.trouble);
        troubles_.push_back(next.trouble);
    }
    if (now <= rehearsal_.now() || isOver())
        return;
    session_.follow(rehearsal_.advance(now));
    if (!isLesson())
        return;
    for (const AlarmPicture& alarm : session_.picture().alarms)
        if (alarm.state == AlarmState::unseen && alarm.priority != Priority::low &&
            secondsBetween(alarm.since, now) > patience.count())
            missed_.emplace(alarm.alarm, alarm.since);
}

LessonScore RehearsalFeed::score() const {
    LessonScore score = rehearsal_.score();
    score.alarmsMissed = static_cast<int>(missed_.size());
    return score;
}

void RehearsalFeed::perform(const std::vector<Fact>& facts) {
    for (const auto& fact : facts)
        rehearsal_.perform(fact.what);
}

void RehearsalFeed::sendCrewAway(bool away) {
    crewAway_ = away;
    rehearsal_.sendCrewAway(away);
}

} // namespace panside
