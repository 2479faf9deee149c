#pragma once
// How the alarms of a shift did: how often, how long, how soon answered, which chatter, which stand too long. The
// measures are those of ANSI/ISA-18.2, IEC 62682 and EEMUA 191; their numbers are from memory where it says so.
#include "core/boil/alarm_history.h"

namespace panside {

struct AlarmLimits {
    // Chattering: three or more times in a minute (ISA-18.2 and EEMUA 191, from memory).
    int chatterTimes = 3;
    Duration chatterWithin{60};
    // Standing too long. The standards say a day (from memory), for plants that never stop; a boil is over by then. A
    // fire is fed every seven to ten minutes: what stood through three firings was looked past, not acted on.
    Duration standing{1800};
    // A flood: more than ten in ten minutes (ISA-18.2, from memory).
    int floodOver = 10;
    Duration floodWithin{600};
    // What one person can deal with in the long run: six an hour (EEMUA 191 and ISA-18.2, from memory).
    double bearableAnHour = 6;
};

// One alarm, about one reading where it is about one.
struct AlarmTally {
    Alarm alarm;
    std::optional<Series> series;
    Priority priority;
    int times = 0;
    Duration total{0}, longest{0};
    int answered = 0;                        // of `times`
    std::optional<Duration> answeredIn = {}; // the median, from its beginning, of those that were
    int chattered = 0;                       // of `times`: those in a minute with too many
    std::optional<Instant> chatterFrom = {}; // the first of them
    int stoodLong = 0;                       // of `times`
    bool standsAtEnd = false;
    int shelved = 0;                   // how often it was shelved while it stood
    std::vector<AlarmSpan> spans = {}; // by time
    bool operator==(const AlarmTally&) const = default;
};

struct AlarmReview {
    Instant from{}, until{};
    std::vector<AlarmTally> tallies = {}; // highest priority first, then those that stood longest
    int times = 0;                        // of all
    int urgent = 0;                       // of them, of high priority
    std::optional<double> anHour = {};    // none under half an hour: too short to tell
    struct Busiest {
        Instant from;
        int times;
        bool flood;
        bool operator==(const Busiest&) const = default;
    };
    std::optional<Busiest> busiest = {}; // the ten minutes with the most; none without alarms
    bool operator==(const AlarmReview&) const = default;
};

AlarmReview alarmReview(const AlarmHistory& history, const AlarmLimits& limits = {});

} // namespace panside
