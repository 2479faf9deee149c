#include "core/boil/calls.h"

namespace panside {
namespace {

// A probe that fails while another one reads the pan takes no time away.
bool blindsThePan(const Picture& picture, const AlarmPicture& alarm) {
    const auto& pan = picture.reading(Series::syrup_pan);
    return alarm.series.value_or(Series::syrup_pan) == Series::syrup_pan && !(pan && pan->trust == Trust::good);
}

// What each alarm's first action contradicts. The last load is no ban: the next load is still to go in.
bool contradicts(const Picture& picture, const AlarmPicture& alarm, Call call) {
    switch (alarm.alarm) {
    case Alarm::scorch_risk: // what has turned to syrup is drawn on
        return call == Call::fire || scorchCause(alarm) != ScorchCause::allSyrup;
    case Alarm::pan_low:
        return true;
    case Alarm::stack_hot:
    case Alarm::sap_low:
    case Alarm::draw_overdue: // hands are at the valve
        return call == Call::fire;
    case Alarm::probe_silent:
    case Alarm::probe_stuck:
    case Alarm::reading_implausible: // no time is known
        return call == Call::draw && blindsThePan(picture, alarm);
    case Alarm::filter_pressure_high:
    case Alarm::journal_trouble:
    case Alarm::above_target:
    case Alarm::fire_overdue:
    case Alarm::last_load:
    case Alarm::tank_overflow:
    case Alarm::clock_changed:
        break;
    }
    return false;
}

} // namespace

const AlarmPicture* forbids(const Picture& picture, Call call) {
    for (const AlarmPicture& alarm : picture.alarms) // the highest first
        if (alarm.stands() && alarm.state != AlarmState::shelved && contradicts(picture, alarm, call))
            return &alarm;
    return nullptr;
}

bool isDue(const Picture& picture, Call call) {
    if (picture.endedAt || forbids(picture, call))
        return false;
    if (call == Call::fire)
        return picture.fireDue && picture.fireDue->count() <= 0;
    return picture.drawDue;
}

} // namespace panside
