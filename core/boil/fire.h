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
// The interval is learned where there is a stack reading. Heat follows the stack: it dips while the door is open,
// surges as the load catches and sags as it turns to coals. Firing pays as soon as the heat has sunk to its own mean
// since the last loading, the dip included (the marginal value theorem: waiting longer lowers the mean, firing sooner
// pays for one more dip). Without a stack reading the crew's own rhythm is followed. Neither is trusted before
// `loadsToLearn` loads. The wood of the last load and the hand that laid it count: loads of the same wood where there
// are enough of them, and as much of that hand's difference as its loads bear out.
//
// Several fires have a rhythm each and one call, of the next to fall due; the stack probe is taken to stand on the
// first of them. One that nobody feeds while three loads go into others was let go out and is called no more.
class Fire {
public:
    static constexpr int loadsToLearn = 4;
    static constexpr Duration untilLearned{8 * 60};

    void take(const State& state, const Fact& fact);
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
    // When the heat of a load had sunk to its mean, seconds after it; and the same as the stack showed it. Less than
    // zero: not known.
    struct Sag {
        float heat = -1, stack = -1;
    };
    struct CallBefore {
        Duration interval;
        float stackSag;
    };
    const Sag& sagOf(const Load& load) const { return sags_[static_cast<std::size_t>(load.number) % sags_.size()]; }
    Sag& sagOf(const Load& load) { return sags_[static_cast<std::size_t>(load.number) % sags_.size()]; }

    std::optional<CallBefore> begins(const State& state, const Load& load);
    void begun(const State& state, const Load& load, const std::optional<CallBefore>& before);
    void learn(const State& state, const Load& load, Instant to);
    void putOff(const State& state, Instant now);
    void noteStack(const State& state, double celsius, Instant at);
    bool stackTells(const State& state, const std::string& fire) const;
    int learnedFrom(const std::string& fire) const;
    Duration intervalAfter(const State& state, const Load& load) const;
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
    std::array<Sag, 32> sags_;   // of the loads in it, by their numbers
    double heatPerKilogram_ = 0; // J, mean of all loads as fired
    std::string lastBy_;
    Duration putOff_{0}; // of the call at the fire of the stack: its last load still burns high
    std::optional<CallMoved> moved_;
    double stackMean_ = 0, stackFor_ = 0; // of the fire while it was fed; seconds
    double stackNow_ = 0;                 // over half a minute
    Instant stackAt_{};
};

} // namespace panside
