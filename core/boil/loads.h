#pragma once
// What counts as a load of wood: the one rule, asked by board, report, season and woodpile alike. Facts in, loads out.
//
// A load is told by a press (`fired`), noticed at the stack, or both; all that is told of one load is one load:
// - the same hand again within 45 s, unless each telling has a mass of its own and they differ;
// - a press within 250 s of what the stack showed, whichever came first: the person's word stands, and the time it was
//   seen at;
// - a load that was noticed while the shift ran is kept as a fact of that time (`inferred=yes`, `entered=` when it was
//   noticed). It is the same load as the one the stack shows again when the log is folded again, and counts from the
//   moment at which it was noticed;
// - an inferred load of no wood (a mass of 0) is somebody's word that there was none, whatever the stack showed.
// A load that was not weighed has the `load_mass` in force at its time, or the first that was set after it.
#include "core/boil/course.h"
#include "core/boil/fact.h"
#include "core/boil/settings.h"
#include "core/boil/stack_trace.h"

#include <string>
#include <utility>
#include <vector>

namespace panside {

struct Load {
    Instant at{};
    std::optional<Mass> mass{}; // as weighed, or as set for every load at that time
    std::string wood, fire, by;
    WetBasis moisture = WetBasis::percent(20);
    bool moistureSaid = false;        // by the load or by a setting
    SpecificEnergy lowerHeat{};       // as fired
    bool inferred = false;            // nobody pressed: the stack showed it
    bool weighed = false;             // the load itself, not as every load is
    bool told = false;                // some fact tells of it that counts at once
    bool kept = false;                // some fact is the record of what the stack showed
    std::optional<Instant> noticed{}; // when the stack showed it
    int number = 0;                   // of the shift's loads, from 1
};

// Is it somebody's word that there was no load?
bool deniesLoad(const Fired& fired);
// The fact that says so of a load that was taken for one.
Fact denialOf(const Fact& noticed, Instant now);

class Loads {
public:
    // A load that the fact brings is shown to `before` while it is not in recent() yet, and to `after` when it is.
    // `settings` and `course` have absorbed the fact.
    template <class Before, class After>
    void absorb(const Settings& settings, const Course& course, const Fact& fact, Before before, After after) {
        const auto add = [&](std::optional<Load> load) {
            if (!load)
                return false;
            before(std::as_const(*load));
            append(std::move(*load));
            after(recent_.back());
            return true;
        };
        add(hear(settings, course, fact));
        while (!waiting_.empty() && add(released(fact.at)))
            ;
    }

    // The last ones, by time of telling.
    const std::vector<Load>& recent() const { return recent_; }
    const Load* lastOf(const std::string& fire) const;
    int count() const { return count_; }
    // The mass of a load, by the rule above.
    std::optional<Mass> massOf(const Load& load) const { return load.mass ? load.mass : laterMass_; }
    // All the wood; nullopt where the mass of one load is not known.
    std::optional<Mass> wood() const;
    const std::optional<Mass>& laterMass() const { return laterMass_; }
    // The fact just absorbed told for the first time of a load.
    bool newlyTold() const { return newlyTold_; }
    // A load that the stack showed and no fact tells of, as the fact that would; the oldest such. For whoever keeps
    // facts.
    std::optional<Fact> noticed() const;

    const StackTrace& stack() const { return stack_; }
    bool follows(const Reading& reading, Instant at) const; // of several stack probes
    bool stackStepped() const { return stackStepped_; }     // the fact just absorbed began a new step of it
    const std::string& stackFire() const { return stackFire_; }

    // A fact that is only the record of what the stack shows, to be counted when it was noticed.
    static bool waits(const Fact& fact);

private:
    std::optional<Load> hear(const Settings& settings, const Course& course, const Fact& fact);
    std::optional<Load> press(const Settings& settings, const Fact& fact, const Fired& fired);
    std::optional<Load> look(const Settings& settings, const Course& course, Instant now);
    std::optional<Load> merged(Load load);
    std::optional<Load> released(Instant now);
    void append(Load load);
    Load* last(const std::string& fire);
    void weigh(Load& load, std::optional<Mass> mass);

    static constexpr std::size_t kept = 24;
    std::vector<Load> recent_;
    std::vector<Load> waiting_; // kept as noticed; `noticed` is when they were
    int count_ = 0;
    double weighed_ = 0; // kg
    int unweighed_ = 0;
    std::optional<Mass> laterMass_;
    StackTrace stack_;
    std::string stackFire_, stackProbe_;
    std::optional<Instant> stackAt_, denied_;
    bool newlyTold_ = false, stackStepped_ = false;
};

// The loads of one shift in full, from its facts by time: those but `set`, `lit`, `fired`, `shutdown`, `shift_end` and
// the stack's readings may be left out.
class LoadsOfShift {
public:
    void add(const Fact& fact);
    // The same from a Loads that another folds.
    void follow(const Loads& loads);
    // By the order of their telling. `mass` is by the rule; none: not known.
    std::vector<Load> all() const;
    static bool needs(const Fact& fact);

private:
    Settings settings_;
    Course course_;
    Loads loads_;
    std::vector<Load> all_;
    std::optional<Mass> laterMass_;
};

} // namespace panside
