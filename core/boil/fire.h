#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"
#include "core/boil/stack_trace.h"

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
// `loadsToLearn` loads.
class Fire {
public:
    static constexpr int loadsToLearn = 4;
    static constexpr Duration untilLearned{8 * 60};

    void take(const State& state, const Fact& fact);
    // fireDue, fireInterval, fireIntervalLearned, sagsAfter, lastFired, lastFiredInferred, loads, turn, wood, their why
    void show(const State& state, Instant now, Picture& picture) const;

    // When the next load is due; nullopt when nothing is to be fired.
    std::optional<Instant> due(const State& state) const;
    Duration interval(const State& state) const;
    std::optional<Instant> lastFired() const;
    // The wood burnt between two moments: each load burns evenly until the next, the last one for an interval.
    // nullopt where a load's mass is not known.
    struct Burnt {
        Mass wood;
        Energy lowerHeat;
    };
    std::optional<Burnt> burnt(const State& state, Instant from, Instant to) const;

private:
    struct Load {
        Instant at;
        double mass = -1;     // kg, less than zero: not known
        double lowerHeat = 0; // J/kg as fired
        bool inferred = false;
        std::string fire;
    };
    static constexpr std::size_t loadsKept = 24;

    void takeLoad(const State& state, const Load& load, const std::string& by);
    void learn(const State& state, Instant from, Instant to);
    void inferLoad(const State& state, Instant now);
    double loadMass(const State& state, const Load& load) const;

    std::vector<Load> loads_; // the last ones, by time
    int count_ = 0;
    double woodKnown_ = 0; // kg, of all loads with a mass
    int massless_ = 0;     // loads without one
    std::string lastBy_;
    StackTrace stack_;
    std::array<float, 5> sags_{}; // seconds after loading at which the last cycles sank to their mean
    int sagCount_ = 0;
};

} // namespace panside
