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
    // What has happened in the boil since the last time; nothing any more once the crew has gone home.
    void advance();
    bool isOver() const { return rehearsal_.ended(); }
    // Begins anew: the same night, or the next one.
    void again(bool same);
    std::uint64_t seed() const { return seed_; }
    // The person does it, and the pan answers.
    void perform(const std::vector<Fact>& facts);

private:
    RehearsalFeed(RehearsalUnderWay underWay, std::uint64_t seed, double speed);
    void begin(std::vector<Fact> past);
    std::uint64_t seed_;
    double speed_;
    Session session_;
    Rehearsal rehearsal_;
};

} // namespace panside
