#pragma once
#include "core/boil/fact.h"
#include "core/boil/loads.h"
#include "core/boil/picture.h"

#include <array>
#include <string>
#include <vector>

namespace panside {

struct State;

// Loads of wood and their rhythm: when the next is due, by the interval set or learned; whose turn it is.
//
// The interval that is learned is the crew's own rhythm: loads are sized for it, and a stack that sags soon is one of
// quick gas over coals that go on giving heat to the pans. The wood of the last load and the hand that laid it count:
// loads of the same wood where there are enough of them, and as much of that hand's difference as its loads bear out.
// Where the stack is read its heat bounds the rhythm: it dips while the door is open, surges as the load catches and
// sinks as it turns to coals, and by three times the time in which it has sunk to its own mean since the loading little
// of the load is left. The call waits a little while the last load still burns above that mean. Nothing is believed
// before `loadsToLearn` loads.
//
// Several fires have a rhythm each and one call, of the next to fall due; the stack probe is taken to stand on the
// first of them. One that nobody feeds while three loads go into others was let go out and is called no more.
class Fire {
public:
    static constexpr int loadsToLearn = 4;
    static constexpr Duration untilLearned{8 * 60};

    void absorb(const State& state, const Fact& fact);
    // fireDue, fireInterval, fireIntervalLearned, callMoved, fires, fireStanding, lastFired, lastFiredInferred, loads,
    // turn, wood, their why
    void show(const State& state, Instant now, Picture& picture) const;

    const Loads& loads() const { return loads_; }
    // When the next load is due; nullopt when nothing is to be fired.
    std::optional<Instant> due(const State& state) const;
    // Of the fire that is due next.
    Duration interval(const State& state) const;
    std::optional<Instant> lastFired() const;
    // The wood burnt between two moments: each load burns evenly until the next, the last one for an interval.
    // nullopt where a load's mass is not known.
    struct Burnt {
        Mass wood;
        Energy lowerHeat;
    };
    std::optional<Burnt> burnt(const State& state, Instant from, Instant to) const;
    // All the wood of the shift but what of the last load is not burnt yet.
    std::optional<Burnt> burntInAll(const State& state, Instant now) const;
    // The heat has gone down far under its mean, and the firing is due: nullopt: not so, or it cannot be told.
    struct Sagging {
        Temperature now, usual;
    };
    std::optional<Sagging> sags(const State& state, Instant now, bool already) const;
    // Of the stack while the fire was fed, over a quarter of an hour; nullopt without a probe.
    std::optional<Temperature> usualStack() const;

private:
    // From a load to the next, as it counts for the rhythm; when its heat had sunk to its mean, and the same as the
    // stack showed it. Seconds after the load.
    struct Cycle {
        std::optional<float> rhythm, heat, stack;
        Duration learned = untilLearned; // how long after it the next is due, where no interval is set
    };
    const Cycle& cycleOf(const Load& load) const {
        return cycles_[static_cast<std::size_t>(load.number) % cycles_.size()];
    }
    Cycle& cycleOf(const Load& load) { return cycles_[static_cast<std::size_t>(load.number) % cycles_.size()]; }

    std::optional<Duration> begins(const State& state, const Load& load);
    void begun(const State& state, const Load& load, const std::optional<Duration>& before);
    void learn(const State& state, const Load& load, Instant to);
    void putOff(const State& state, Instant now);
    void noteStack(const State& state, double celsius, Instant at);
    bool stackTells(const State& state, const std::string& fire) const;
    int learnedFrom(const std::string& fire) const;
    Duration intervalAfter(const State& state, const Load& load) const;
    Duration learnedAfter(const Load& load) const;
    void learnIntervals(); // whenever a load comes or changes: they are asked for many times a second
    // No heap: asked at every load.
    struct Cycles {
        std::array<float, 9> each{};
        std::size_t count = 0;
        bool empty() const { return count == 0; }
        double median() const; // not of none
    };
    Cycles latest(const Load& load, std::optional<float> Cycle::*what, bool thisWood) const;
    // So long after it next to nothing of its heat is left, as the stack shows of such loads.
    std::optional<Duration> sunkBy(const Load& load) const;
    // The last load of each fire; and of those that were not let go out while others were fed.
    std::vector<const Load*> lastOfEach() const;
    std::vector<const Load*> lastOfFed(const State& state) const;
    // The load that burns where the next one is due.
    const Load* next(const State& state) const;
    Instant dueAfter(const State& state, const Load& load) const;
    FireStanding standing(const State& state, Instant now) const;
    void showFires(const State& state, Instant now, Picture& picture) const;
    void showTurn(const State& state, Picture& picture) const;

    Loads loads_;
    std::array<Cycle, 32> cycles_; // of the loads in it, by their numbers
    double heatPerKilogram_ = 0;   // J, mean of all loads as fired
    std::string lastBy_;
    Duration putOff_{0}; // of the call at the fire of the stack: its last load still burns high
    std::optional<CallMoved> moved_;
    double stackMean_ = 0, stackFor_ = 0; // of the fire while it was fed; seconds
    double stackNow_ = 0;                 // over half a minute
    Instant stackAt_{};
};

} // namespace panside
