#include "ui/look/wall_clock.h"

namespace panside {

QDateTime WallClock::at(Instant when) const {
    Instant shown = when;
    for (const Step& step : steps_)
        if (step.at <= when)
            shown = shown + step.by;
    return QDateTime::fromMSecsSinceEpoch(
        std::chrono::duration_cast<std::chrono::milliseconds>(shown.time_since_epoch()).count());
}

QString WallClock::hourAndMinute(Instant when) const { return at(when).toString(QStringLiteral("HH:mm")); }

} // namespace panside
