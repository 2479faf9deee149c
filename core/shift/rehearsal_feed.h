#pragma once
#include "core/rehearsal/rehearsal.h"
#include "core/shift/session.h"

namespace panside {

// A made-up boil under way, and the session that shows it: nothing of it is kept.
class RehearsalFeed {
public:
    // `speed`: how many times faster than life its clock runs.
    RehearsalFeed(std::uint64_t seed, double speed);

    Session& session() { return session_; }
    // What has happened in the boil since the last time.
    void advance();
    // The person does it, and the pan answers.
    void perform(const std::vector<Fact>& facts);

private:
    explicit RehearsalFeed(RehearsalUnderWay underWay, ShiftClock clock);
    Session session_;
    Rehearsal rehearsal_;
};

} // namespace panside
