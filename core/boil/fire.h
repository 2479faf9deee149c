#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"
#include "core/boil/stack_trace.h"

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
    // Of the stack while the fire was fed, over a quarter of an hour; nullopt without a probe.
    std::optional<Temperature> usualStack() const;

private:
    struct Load {
        Instant at;
        double mass = -1;     // kg, less than zero: not known
        double lowerHeat = 0; // J/kg as fired
        bool inferred = false;
        std::string fire, wood, by;
        // Seconds after it at which its heat sank to its mean, less than zero: not known; and as the stack showed it.
        float sag = -1, stackSag = -1;
    };
    static constexpr std::size_t loadsKept = 24;

    void takeLoad(const State& state, Load load);
    bool sameAsLast(const Load& load);
    void learn(const State& state, Load& load, Instant to);
    void inferLoad(const State& state, Instant now);
    void putOff(const State& state, Instant now);
    void noteStack(const State& state, double celsius, Instant at);
    double loadMass(const State& state, const Load& load) const;
    bool stackTells(const State& state, const std::string& fire) const;
    int learnedFrom(const std::string& fire) const;
    Duration intervalAfter(const State& state, const Load& load) const;
    const Load* lastOf(const std::string& fire) const;
    // The last load of each fire; and of those that were not let go out while others were fed.
    std::vector<const Load*> lastOfEach() const;
    std::vector<const Load*> lastOfFed(const State& state) const;
    // The load that burns where the next one is due.
    const Load* next(const State& state) const;
    Instant dueAfter(const State& state, const Load& load) const;
    FireStanding standing(const State& state, Instant now) const;
    void showFires(const State& state, Instant now, Picture& picture) const;
    void showTurn(const State& state, Picture& picture) const;

    std::vector<Load> loads_; // the last ones, by time
    int count_ = 0;
    double woodKnown_ = 0;       // kg, of all loads with a mass
    double heatPerKilogram_ = 0; // J, mean of all loads as fired
    int massless_ = 0;           // loads without one
    std::string lastBy_, stackFire_;
    StackTrace stack_;
    Duration putOff_{0}; // of the call at the fire of the stack: its last load still burns high
    std::optional<CallMoved> moved_;
    double stackMean_ = 0, stackFor_ = 0; // of the fire while it was fed; seconds
    double stackNow_ = 0;                 // over half a minute
    Instant stackAt_{};
};

} // namespace panside
