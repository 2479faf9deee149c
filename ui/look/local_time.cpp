#include "ui/look/local_time.h"

#include <algorithm>

namespace panside {

std::vector<Instant> momentsShown(QDate date, QTime time, const QTimeZone& zone) {
    const QDateTime asIfUtc{date, time, QTimeZone::utc()};
    std::vector<Instant> moments;
    // The offsets in force a day before and a day after are all that can be in question.
    for (const int day : {-1, 1}) {
        const int offset = zone.offsetFromUtc(asIfUtc.addDays(day));
        const QDateTime moment = asIfUtc.addSecs(-offset);
        if (zone.offsetFromUtc(moment) != offset)
            continue;
        const Instant at{std::chrono::milliseconds{moment.toMSecsSinceEpoch()}};
        if (std::ranges::find(moments, at) == moments.end())
            moments.push_back(at);
    }
    std::ranges::sort(moments);
    return moments;
}

} // namespace panside
