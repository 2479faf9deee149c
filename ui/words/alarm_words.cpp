#include "ui/words/alarm_words.h"

#include "ui/look/units.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("AlarmWords", text); }

// Probes are named by what they read: a person thinks "the stack probe", not a channel.
QString probe(const AlarmPicture& alarm) {
    QString names = alarm.series ? readingName(*alarm.series) : tr(QT_TRANSLATE_NOOP("AlarmWords", "a probe"));
    for (const Series series : alarm.also)
        names += QStringLiteral(", ") + readingName(series);
    return names;
}

QString scorchLine(const AlarmPicture& alarm) {
    if (!alarm.left)
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "The syrup pan is about to scorch"));
    if (alarm.left->count() <= 0)
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "The syrup pan is scorching"));
    return tr(QT_TRANSLATE_NOOP("AlarmWords", "The syrup pan scorches in %1")).arg(spanText(*alarm.left));
}

QString sapLine(const AlarmPicture& alarm) {
    return alarm.left ? tr(QT_TRANSLATE_NOOP("AlarmWords", "Sap for %1 more")).arg(spanText(*alarm.left))
                      : tr(QT_TRANSLATE_NOOP("AlarmWords", "Sap is running short"));
}

// Which tank and whom it calls are among its grounds.
QString named(const AlarmPicture& alarm, GroundKind kind) {
    for (const Ground& ground : alarm.why)
        if (const auto* name = std::get_if<std::string>(&ground.seen); name && ground.kind == kind)
            return QString::fromStdString(*name);
    return {};
}

QString overflowLine(const AlarmPicture& alarm) {
    QString tank = named(alarm, GroundKind::tankNamed);
    if (tank.isEmpty())
        tank = tr(QT_TRANSLATE_NOOP("AlarmWords", "The feed tank"));
    const bool soon = !alarm.left || *alarm.left < Duration{60};
    const QString line =
        soon ? tr(QT_TRANSLATE_NOOP("AlarmWords", "%1: full to the rim")).arg(tank)
             : tr(QT_TRANSLATE_NOOP("AlarmWords", "%1: runs over in %2")).arg(tank, spanText(*alarm.left));
    const QString whom = named(alarm, GroundKind::callsFor);
    return whom.isEmpty() ? line : tr(QT_TRANSLATE_NOOP("AlarmWords", "%1. Call %2")).arg(line, whom);
}

// Steps are parted by an upright stroke, so that a translation may have fewer commas or more.

// What runs dry is flooded and not drawn from. What has turned to syrup is drawn on, and thinned where it is drawn: sap
// that strikes hot metal flashes to steam, so it goes in from the side.
QString scorchSteps(const AlarmPicture& alarm, bool drawing) {
    switch (scorchCause(alarm)) {
    case ScorchCause::runsDry:
        return drawing ? tr(QT_TRANSLATE_NOOP("AlarmWords",
                                              "flood the pan with sap from the side|close the draw|damp the fire"))
                       : tr(QT_TRANSLATE_NOOP("AlarmWords",
                                              "flood the pan with sap from the side|keep the draw shut|damp the fire"));
    case ScorchCause::allSyrup:
        return drawing
                   ? tr(QT_TRANSLATE_NOOP("AlarmWords", "keep drawing|let thin sap in at the draw end, from the side"))
                   : tr(QT_TRANSLATE_NOOP("AlarmWords",
                                          "open the draw|let thin sap in at the draw end, from the side"));
    case ScorchCause::unknown:
        break;
    }
    return drawing
               ? tr(QT_TRANSLATE_NOOP(
                     "AlarmWords",
                     "look how deep the pan is; if it is low, close the draw|let sap in from the side|damp the fire"))
               : tr(QT_TRANSLATE_NOOP("AlarmWords", "look how deep the pan is; if it is low, keep the draw shut|let "
                                                    "sap in from the side|damp the fire"));
}

QString stepsOf(const AlarmPicture& alarm, bool drawing) {
    switch (alarm.alarm) {
    case Alarm::scorch_risk:
        return scorchSteps(alarm, drawing);
    case Alarm::pan_low:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "look at the pan|open the feed|have cold sap at hand"));
    case Alarm::stack_hot:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "shut the draft|look at roof jack and rafters|do not fire"));
    case Alarm::filter_pressure_high:
        return tr(QT_TRANSLATE_NOOP("AlarmWords",
                                    "stop the pump|stand clear|let the pressure off before you open the press"));
    case Alarm::probe_silent:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "watch the pan itself|look at plug, cable and box"));
    case Alarm::journal_trouble:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "write on paper|look at the disk: full or pulled out"));
    case Alarm::above_target:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "open the draw|check the density"));
    case Alarm::draw_overdue:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "close the draw|check the density"));
    case Alarm::fire_overdue:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "fire, gloves on|or press Fired if it is done"));
    case Alarm::sap_low:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "bring sap|or stop firing while it still covers the pans"));
    case Alarm::last_load:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "keep the sap that is left to cover the pans"));
    case Alarm::tank_overflow:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "shut it off or pump it on|dip it where the book is wrong"));
    case Alarm::probe_stuck:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "trust the hydrometer|look at the probe and its box"));
    case Alarm::reading_implausible:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "trust the hydrometer|see where the probe sits"));
    case Alarm::clock_changed:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "nothing to do: intervals did not jump"));
    }
    return {};
}

} // namespace

QString alarmName(Alarm alarm) {
    switch (alarm) {
    case Alarm::scorch_risk:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "scorch risk"));
    case Alarm::pan_low:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "syrup pan low"));
    case Alarm::stack_hot:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "stack hot"));
    case Alarm::filter_pressure_high:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "filter pressure high"));
    case Alarm::probe_silent:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "probe silent"));
    case Alarm::journal_trouble:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "nothing can be kept"));
    case Alarm::above_target:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "over the target"));
    case Alarm::draw_overdue:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "draw still open"));
    case Alarm::fire_overdue:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "firing overdue"));
    case Alarm::sap_low:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "sap low"));
    case Alarm::last_load:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "last load"));
    case Alarm::tank_overflow:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "tank runs over"));
    case Alarm::probe_stuck:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "probe stuck"));
    case Alarm::reading_implausible:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "reading not believable"));
    case Alarm::clock_changed:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "clock moved"));
    }
    return {};
}

QString alarmLine(const AlarmPicture& alarm) {
    switch (alarm.alarm) {
    case Alarm::scorch_risk:
        return scorchLine(alarm);
    case Alarm::pan_low:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "The syrup pan is half empty"));
    case Alarm::stack_hot:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "The stack is hotter than it should be"));
    case Alarm::filter_pressure_high:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "Filter press over its limit"));
    case Alarm::probe_silent:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "No reading: %1")).arg(probe(alarm));
    case Alarm::journal_trouble:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "The log cannot be kept"));
    case Alarm::above_target:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "Over the target, draw shut"));
    case Alarm::draw_overdue:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "Draw open, syrup too light"));
    case Alarm::fire_overdue:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "The fire needs wood"));
    case Alarm::sap_low:
        return sapLine(alarm);
    case Alarm::last_load:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "The next load should be the last"));
    case Alarm::tank_overflow:
        return overflowLine(alarm);
    case Alarm::probe_stuck:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "Not moving: %1")).arg(probe(alarm));
    case Alarm::reading_implausible:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "Not believable: %1")).arg(probe(alarm));
    case Alarm::clock_changed:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "The computer's clock was moved"));
    }
    return {};
}

QStringList alarmSteps(const AlarmPicture& alarm, bool drawing) {
    return stepsOf(alarm, drawing).split(u'|', Qt::SkipEmptyParts);
}

QString alarmFirst(const AlarmPicture& alarm, bool drawing) {
    return alarmSteps(alarm, drawing).join(QStringLiteral(", "));
}

QString alarmName(Alarm alarm, std::optional<Series> series) {
    return series ? tr(QT_TRANSLATE_NOOP("AlarmWords", "%1: %2")).arg(alarmName(alarm), readingName(*series))
                  : alarmName(alarm);
}

QString alarmSpan(const AlarmSpan& span, Instant until, const WallClock& clock) {
    const QString length = spanText(Duration{secondsBetween(span.began, span.ended.value_or(until))});
    QStringList words;
    words << (span.ended ? tr(QT_TRANSLATE_NOOP("AlarmWords", "%1 to %2, %3"))
                               .arg(clock.hourAndMinute(span.began), clock.hourAndMinute(*span.ended), length)
                         : tr(QT_TRANSLATE_NOOP("AlarmWords", "%1 to the end, %2"))
                               .arg(clock.hourAndMinute(span.began), length));
    if (span.seen) {
        const QString after = spanText(Duration{secondsBetween(span.began, *span.seen)});
        words << (span.seenBy.empty() ? tr(QT_TRANSLATE_NOOP("AlarmWords", "seen after %1")).arg(after)
                                      : tr(QT_TRANSLATE_NOOP("AlarmWords", "seen after %1 by %2"))
                                            .arg(after, QString::fromStdString(span.seenBy)));
    } else {
        words << tr(QT_TRANSLATE_NOOP("AlarmWords", "not seen by anybody"));
    }
    for (const AlarmSpan::Shelf& shelf : span.shelved) {
        const QString from = clock.hourAndMinute(shelf.from), to = clock.hourAndMinute(shelf.until);
        words << (shelf.by.empty() ? tr(QT_TRANSLATE_NOOP("AlarmWords", "shelved %1 to %2")).arg(from, to)
                                   : tr(QT_TRANSLATE_NOOP("AlarmWords", "shelved %1 to %2 by %3"))
                                         .arg(from, to, QString::fromStdString(shelf.by)));
    }
    return words.join(QStringLiteral(" · "));
}

QString priorityWord(Priority priority) {
    switch (priority) {
    case Priority::high:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "urgent"));
    case Priority::medium:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "soon"));
    case Priority::low:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "to know"));
    }
    return {};
}

QString stateWord(AlarmState state) {
    switch (state) {
    case AlarmState::normal:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "over"));
    case AlarmState::unseen:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "not yet seen"));
    case AlarmState::seen:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "seen"));
    case AlarmState::goneUnseen:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "gone, not yet seen"));
    case AlarmState::shelved:
        return tr(QT_TRANSLATE_NOOP("AlarmWords", "shelved"));
    }
    return {};
}

} // namespace panside
