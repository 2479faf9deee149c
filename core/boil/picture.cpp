#include "core/boil/picture.h"

#include <algorithm>

namespace panside {

void insertAlarm(Picture& picture, const AlarmPicture& alarm) {
    const auto before = [](const AlarmPicture& a, const AlarmPicture& b) {
        return a.priority != b.priority ? a.priority < b.priority : a.since < b.since;
    };
    picture.alarms.insert(std::upper_bound(picture.alarms.begin(), picture.alarms.end(), alarm, before), alarm);
}

std::string_view nameOf(Shown figure) {
    switch (figure) {
    case Shown::pressureKPa:
        return "pressureKPa";
    case Shown::waterBoilsC:
        return "waterBoilsC";
    case Shown::syrupPanC:
        return "syrupPanC";
    case Shown::riseC:
        return "riseC";
    case Shown::targetRiseC:
        return "targetRiseC";
    case Shown::targetC:
        return "targetC";
    case Shown::brix:
        return "brix";
    case Shown::drawEta:
        return "drawEta";
    case Shown::closeEta:
        return "closeEta";
    case Shown::fireDueS:
        return "fireDueS";
    case Shown::keepBackL:
        return "keepBackL";
    case Shown::lastLoadS:
        return "lastLoadS";
    case Shown::evaporationLph:
        return "evaporationLph";
    case Shown::sapLeftS:
        return "sapLeftS";
    case Shown::efficiency:
        return "efficiency";
    }
    return {};
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
