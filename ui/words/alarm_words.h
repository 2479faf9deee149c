#pragma once
// What an alarm says: one line for what is wrong, one for what to do first. First actions are general advice; the hands
// at the pan, local codes and the instruments on the pan come before them.
#include "core/boil/alarm_history.h"
#include "ui/look/wall_clock.h"

#include <QStringList>

namespace panside {

QString alarmName(Alarm alarm);               // "scorch risk": in lists and reviews
QString alarmLine(const AlarmPicture& alarm); // "The syrup pan scorches in 4 min"
// What to do, at most three steps, a verb each and true to what is known: by an alarm's cause, and a draw that is shut
// is kept shut.
QStringList alarmSteps(const AlarmPicture& alarm, bool drawing);
QString alarmFirst(const AlarmPicture& alarm, bool drawing);  // "flood the pan with sap, close the draw, damp the fire"
QString alarmName(Alarm alarm, std::optional<Series> series); // "probe silent: stack"
// One time that it stood: "21:14 to 21:26, 12 min · seen after 2 min by Maud". `until`: the end of the shift.
QString alarmSpan(const AlarmSpan& span, Instant until, const WallClock& clock);
QString priorityWord(Priority priority);
QString stateWord(AlarmState state); // "not yet seen", "seen", "gone, not yet seen", "shelved"

} // namespace panside
