#pragma once
#include "core/rehearsal/rehearsal.h"
#include "core/shift/rehearsal_house.h"
#include "core/shift/session.h"

#include <set>

namespace panside {

// A made-up boil under way, and the session that shows it. It is kept in the made-up house, and goes with it; without
// one it is kept nowhere.
class RehearsalFeed {
public:
    // `speed`: how many times faster than life its clock runs.
    RehearsalFeed(std::uint64_t seed, double speed, std::unique_ptr<RehearsalHouse> house = nullptr);
    const RehearsalHouse* house() const { return house_.get(); }

    Session& session() { return session_; }
    // What has happened in the boil since the last time; nothing any more once the crew has gone home.
    void advance();
    // The crew has gone home, or the lesson's time is up.
    bool isOver();

    // Begins anew: the same night, the next one, or one in which things go wrong.
    enum class Evening { same, another, lesson };
    void again(Evening evening);
    std::uint64_t seed() const { return seed_; }
    bool isLesson() const { return !troubles_.empty(); }
    // A teacher has this happen now. The first makes a lesson of the evening, which counts from here on.
    void throwIn(Trouble trouble);
    const std::vector<Trouble>& troubles() const { return troubles_; }
    // What came of it since the person came.
    LessonScore score() const;

    // The person does it, and the pan answers.
    void perform(const std::vector<Fact>& facts);
    // The person takes the crew's part, or gives it back.
    void sendCrewAway(bool away);
    bool isCrewAway() const { return crewAway_; }

private:
    RehearsalFeed(RehearsalUnderWay underWay, std::uint64_t seed, double speed, std::unique_ptr<RehearsalHouse> house);
    void begin(RehearsalUnderWay underWay);
    void beginCounting();
    Session tonight() const;
    std::uint64_t seed_;
    double speed_;
    std::unique_ptr<RehearsalHouse> house_; // outlives what is kept in it
    Session session_;
    Rehearsal rehearsal_;
    std::vector<Trouble> troubles_;
    struct Thrown {
        Trouble trouble;
        double after; // seconds since the evening was taken over
    };
    std::vector<Thrown> thrown_;     // by a teacher, this time or the time before: the same again has them again
    std::size_t befallen_ = 0;       // of those
    Instant began_{}, countsFrom_{}; // taken over; a lesson's beginning
    bool crewAway_ = false;
    std::set<std::pair<Alarm, Instant>> missed_;
};

} // namespace panside
