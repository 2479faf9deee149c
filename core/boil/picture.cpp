#include "core/boil/picture.h"

#include <algorithm>

namespace panside {

void insertAlarm(Picture& picture, const AlarmPicture& alarm) {
    const auto before = [](const AlarmPicture& a, const AlarmPicture& b) {
        return a.priority != b.priority ? a.priority < b.priority : a.since < b.since;
    };
    picture.alarms.insert(std::upper_bound(picture.alarms.begin(), picture.alarms.end(), alarm, before), alarm);
}

std::string_view nameOf(Trust trust) {
    switch (trust) {
    case Trust::good:
        return "good";
    case Trust::doubtful:
        return "doubtful";
    case Trust::gone:
        return "gone";
    }
    return {};
}

} // namespace panside
