#pragma once
// What each alarm stands for: one pure function of the state and a moment, and one row of the table.
#include "core/boil/fact.h"
#include "core/boil/ground.h"
#include "core/boil/picture.h"

#include <span>

namespace panside {

struct State;

// What an alarm's function says. Its delay is not in it: that is counted from when it first holds.
struct Condition {
    bool holds = false;
    std::optional<Instant> changes = {}; // when the clock alone may change it
    std::optional<Duration> left = {};   // time to the harm
    bool over = false;                   // what it was about is over: it ends at once, without its release
    bool doubtful = false;               // it holds, but within the doubt of what it is judged by: it waits longer
    Grounds grounds = {};                // why it holds
};

struct AlarmRow {
    Alarm alarm;
    std::string_view name;
    Priority priority;
    // Seconds, plain: a table that is read like one.
    double delay;          // seconds it must hold before it stands
    double doubtfulDelay;  // seconds where it holds within the doubt of what it is judged by
    double release;        // seconds it must not hold before it is gone
    double rest;           // seconds between two looks at the readings: for what is slow and costly to tell
    bool perReading;       // one for each reading
    std::uint16_t looksAt; // bits of Series: which readings can change it (events always can)
    // `standing`: it stands now, so that the limit at which it ends may be another than that at which it begins.
    Condition (*judge)(const State& state, Series series, Instant now, bool standing);
};
const AlarmRow& rowOf(Alarm alarm);
Priority priorityOf(Alarm alarm, Series series);

// Are two silent readings of one box? Its probes bear one name, and fell silent within their spacing.
bool silentTogether(const State& state, Series a, Series b, Instant now);

Condition scorchRisk(const State& state, Series, Instant now, bool standing);
Condition tankOverflow(const State& state, Series, Instant now, bool standing);

} // namespace panside
