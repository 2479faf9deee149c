#pragma once
// Every alarm of a shift from its beginning to its end: the very moments at which the engine lets it begin and end, so
// a span stands wherever a picture of those facts shows its alarm. Derived from the facts alone: a fact entered late
// counts at its own time and one withdrawn not at all, so an alarm that only sounded until then is not in it. Nor is
// journal_trouble: what could not be kept cannot be told from what was.
#include "core/boil/boil.h"
#include "core/boil/watch.h"

#include <vector>

namespace panside {

struct AlarmSpan {
    Alarm alarm;
    std::optional<Series> series; // which reading, where it is about one
    Priority priority;
    Instant began;
    std::optional<Instant> ended = {}; // none: it stood to the end
    std::optional<Instant> seen = {};  // when somebody answered, may be after it ended; none: nobody did before the
                                       // shift was over or it began anew
    std::string seenBy = {};           // empty: nobody said who
    struct Shelf {
        Instant from, until; // `from` is before `began` where it began on the shelf
        std::string by;
        bool operator==(const Shelf&) const = default;
    };
    std::vector<Shelf> shelved = {}; // by time
    bool operator==(const AlarmSpan&) const = default;
};

struct AlarmHistory {
    Instant from{}, until{};      // the first fact, and the end of the shift or of what is known of it
    std::vector<AlarmSpan> spans; // by `began`
};

// Folds a shift's facts, by time, and notes what the alarms do. Takes the place of absorb() for whoever folds them
// anyway.
class AlarmRecorder {
public:
    void absorb(State& state, const Fact& fact);
    // `until` not before the last fact; what the clock alone brings by then is in it. None: up to the last fact.
    AlarmHistory history(const State& state, std::optional<Instant> until = {}) const;

private:
    struct Slot {
        std::optional<std::size_t> span; // the last one about it
        bool stands = false;
        AlarmSpan::Shelf shelf{};
    };
    void step(Watch& watch, const State& state, Instant until);
    void note(const Watch& watch);
    void begin(std::size_t index, Instant at);
    void seen(const AlarmSeen& seen, const Fact& fact);
    void shelved(const AlarmShelved& shelved, const Fact& fact);

    std::vector<Slot> slots_;
    std::vector<AlarmSpan> spans_;
    std::optional<Instant> from_, over_;
    Instant last_{};
};

AlarmHistory alarmHistory(const Facts& facts, std::optional<Instant> until = {});

} // namespace panside
