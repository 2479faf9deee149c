#include "ui/words/alarm_words.h"

#include "core/quantity/enum_count.h"
#include "ui/look/units.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <array>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("AlarmWords", text); }

// Probes are named by what they read: a person thinks "the stack probe", not a channel.
QString probe(const AlarmPicture& alarm) {
    QString names = alarm.series ? readingName(*alarm.series) : tr("a probe");
    for (const Series series : alarm.also)
        names += QStringLiteral(", ") + readingName(series);
    return names;
}

QString scorchLine(const AlarmPicture& alarm) {
    if (!alarm.left)
        return tr("The syrup pan is about to scorch");
    if (alarm.left->count() <= 0)
        return tr("The syrup pan is scorching");
    return tr("The syrup pan scorches in %1").arg(spanText(*alarm.left));
}

QString sapLine(const AlarmPicture& alarm) {
    return alarm.left ? tr("Sap for %1 more").arg(spanText(*alarm.left)) : tr("Sap is running short");
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
        tank = tr("The feed tank");
    const bool soon = !alarm.left || *alarm.left < Duration{60};
    const QString line =
        soon ? tr("%1: full to the rim").arg(tank) : tr("%1: runs over in %2").arg(tank, spanText(*alarm.left));
    const QString whom = named(alarm, GroundKind::callsFor);
    return whom.isEmpty() ? line : tr("%1. Call %2").arg(line, whom);
}

// Steps are parted by an upright stroke, so that a translation may have fewer commas or more.

// What runs dry is flooded and not drawn from. What has turned to syrup is drawn on, and thinned where it is drawn: sap
// that strikes hot metal flashes to steam, so it goes in from the side.
QString scorchSteps(const AlarmPicture& alarm, bool drawing) {
    switch (scorchCause(alarm)) {
    case ScorchCause::runsDry:
        return drawing ? tr("flood the pan with sap from the side|close the draw|damp the fire")
                       : tr("flood the pan with sap from the side|keep the draw shut|damp the fire");
    case ScorchCause::allSyrup:
        return drawing ? tr("keep drawing|let thin sap in at the draw end, from the side")
                       : tr("open the draw|let thin sap in at the draw end, from the side");
    case ScorchCause::unknown:
        break;
    }
    return drawing ? tr("look how deep the pan is; if it is low, close the draw|let sap in from the side|damp the fire")
                   : tr("look how deep the pan is; if it is low, keep the draw shut|let sap in from the side|damp the "
                        "fire");
}

QString stepsOf(const AlarmPicture& alarm, bool drawing) {
    switch (alarm.alarm) {
    case Alarm::scorch_risk:
        return scorchSteps(alarm, drawing);
    case Alarm::pan_low:
        return tr("look at the pan|open the feed|have cold sap at hand");
    case Alarm::stack_hot:
        return tr("shut the draft|look at roof jack and rafters|do not fire");
    case Alarm::filter_pressure_high:
        return tr("stop the pump|stand clear|let the pressure off before you open the press");
    case Alarm::probe_silent:
        return tr("watch the pan itself|look at plug, cable and box");
    case Alarm::journal_trouble:
        return tr("write on paper|look at the disk: full or pulled out");
    case Alarm::above_target:
        return tr("open the draw|check the density");
    case Alarm::draw_overdue:
        return tr("close the draw|check the density");
    case Alarm::fire_overdue:
        return tr("fire, gloves on|or press Fired if it is done");
    case Alarm::sap_low:
        return tr("bring sap|or stop firing while it still covers the pans");
    case Alarm::last_load:
        return tr("keep the sap that is left to cover the pans");
    case Alarm::tank_overflow:
        return tr("shut it off or pump it on|dip it where the book is wrong");
    case Alarm::probe_stuck:
        return tr("trust the hydrometer|look at the probe and its box");
    case Alarm::reading_implausible:
        return tr("trust the hydrometer|see where the probe sits");
    case Alarm::clock_changed:
        return tr("nothing to do: intervals did not jump");
    }
    return {};
}

} // namespace

QString alarmName(Alarm alarm) {
    struct Row {
        Alarm of;
        const char* words;
    };
    static constexpr std::array rows{Row{Alarm::scorch_risk, QT_TR_NOOP("scorch risk")},
                                     Row{Alarm::pan_low, QT_TR_NOOP("syrup pan low")},
                                     Row{Alarm::stack_hot, QT_TR_NOOP("stack hot")},
                                     Row{Alarm::filter_pressure_high, QT_TR_NOOP("filter pressure high")},
                                     Row{Alarm::probe_silent, QT_TR_NOOP("probe silent")},
                                     Row{Alarm::journal_trouble, QT_TR_NOOP("nothing can be kept")},
                                     Row{Alarm::above_target, QT_TR_NOOP("over the target")},
                                     Row{Alarm::draw_overdue, QT_TR_NOOP("draw still open")},
                                     Row{Alarm::fire_overdue, QT_TR_NOOP("firing overdue")},
                                     Row{Alarm::sap_low, QT_TR_NOOP("sap low")},
                                     Row{Alarm::last_load, QT_TR_NOOP("last load")},
                                     Row{Alarm::tank_overflow, QT_TR_NOOP("tank runs over")},
                                     Row{Alarm::probe_stuck, QT_TR_NOOP("probe stuck")},
                                     Row{Alarm::reading_implausible, QT_TR_NOOP("reading not believable")},
                                     Row{Alarm::clock_changed, QT_TR_NOOP("clock moved")}};
    static_assert(inOrder(rows, &Row::of) && hasCount<Alarm, rows.size()>());
    const auto row = static_cast<std::size_t>(alarm);
    return row < rows.size() ? tr(rows[row].words) : QString{};
}

QString alarmLine(const AlarmPicture& alarm) {
    switch (alarm.alarm) {
    case Alarm::scorch_risk:
        return scorchLine(alarm);
    case Alarm::pan_low:
        return tr("The syrup pan is half empty");
    case Alarm::stack_hot:
        return tr("The stack is hotter than it should be");
    case Alarm::filter_pressure_high:
        return tr("Filter press over its limit");
    case Alarm::probe_silent:
        return tr("No reading: %1").arg(probe(alarm));
    case Alarm::journal_trouble:
        return tr("The log cannot be kept");
    case Alarm::above_target:
        return tr("Over the target, draw shut");
    case Alarm::draw_overdue:
        return tr("Draw open, syrup too light");
    case Alarm::fire_overdue:
        return tr("The fire needs wood");
    case Alarm::sap_low:
        return sapLine(alarm);
    case Alarm::last_load:
        return tr("The next load should be the last");
    case Alarm::tank_overflow:
        return overflowLine(alarm);
    case Alarm::probe_stuck:
        return tr("Not moving: %1").arg(probe(alarm));
    case Alarm::reading_implausible:
        return tr("Not believable: %1").arg(probe(alarm));
    case Alarm::clock_changed:
        return tr("The computer's clock was moved");
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
    return series ? tr("%1: %2").arg(alarmName(alarm), readingName(*series)) : alarmName(alarm);
}

QString alarmSpan(const AlarmSpan& span, Instant until, const WallClock& clock) {
    const QString length = spanText(Duration{secondsBetween(span.began, span.ended.value_or(until))});
    QStringList words;
    words << (span.ended
                  ? tr("%1 to %2, %3").arg(clock.hourAndMinute(span.began), clock.hourAndMinute(*span.ended), length)
                  : tr("%1 to the end, %2").arg(clock.hourAndMinute(span.began), length));
    if (span.seen) {
        const QString after = spanText(Duration{secondsBetween(span.began, *span.seen)});
        words << (span.seenBy.empty() ? tr("seen after %1").arg(after)
                                      : tr("seen after %1 by %2").arg(after, QString::fromStdString(span.seenBy)));
    } else {
        words << tr("not seen by anybody");
    }
    for (const AlarmSpan::Shelf& shelf : span.shelved) {
        const QString from = clock.hourAndMinute(shelf.from), to = clock.hourAndMinute(shelf.until);
        words << (shelf.by.empty() ? tr("shelved %1 to %2").arg(from, to)
                                   : tr("shelved %1 to %2 by %3").arg(from, to, QString::fromStdString(shelf.by)));
    }
    return words.join(QStringLiteral(" · "));
}

QString priorityWord(Priority priority) {
    switch (priority) {
    case Priority::high:
        return tr("urgent");
    case Priority::medium:
        return tr("soon");
    case Priority::low:
        return tr("to know");
    }
    return {};
}

QString stateWord(AlarmState state) {
    switch (state) {
    case AlarmState::normal:
        return tr("over");
    case AlarmState::unseen:
        return tr("not yet seen");
    case AlarmState::seen:
        return tr("seen");
    case AlarmState::goneUnseen:
        return tr("gone, not yet seen");
    case AlarmState::shelved:
        return tr("shelved");
    }
    return {};
}

} // namespace panside
