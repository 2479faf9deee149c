#pragma once
// The alarms of a shift as a table: a row each, in words. Pure.
#include "core/boil/alarm_review.h"
#include "ui/look/wall_clock.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace panside {

struct AlarmLine {
    QStringList cells; // one a heading
    QString story;     // what the row has no room for
    bool operator==(const AlarmLine&) const = default;
};

QStringList alarmHeadings();
// In the order of the tallies, so that a row's number is its lane's on the chart.
std::vector<AlarmLine> alarmLines(const AlarmReview& review, const WallClock& clock);
// How many, how many an hour, the busiest ten minutes: one line on all of them.
QString alarmsStory(const AlarmReview& review, const WallClock& clock);

} // namespace panside
