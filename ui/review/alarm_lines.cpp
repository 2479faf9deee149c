#include "ui/review/alarm_lines.h"

#include "ui/look/units.h"
#include "ui/words/alarm_words.h"
#include "ui/words/counted.h"

#include <QCoreApplication>
#include <QLocale>

namespace panside {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("AlarmReview", text, comment, n);
}

const QString dot = QStringLiteral(" · ");

QString answer(const AlarmTally& tally) {
    if (!tally.answeredIn)
        return tr(QT_TRANSLATE_NOOP("AlarmReview", "by nobody"));
    const QString span = spanText(*tally.answeredIn);
    return tally.answered == tally.times
               ? span
               : tr(QT_TRANSLATE_NOOP("AlarmReview", "%1 (%2 of %3)")).arg(span).arg(tally.answered).arg(tally.times);
}

QString marks(const AlarmTally& tally) {
    QStringList words;
    if (tally.chattered > 0)
        words << tr(QT_TRANSLATE_NOOP("AlarmReview", "comes and goes"));
    if (tally.stoodLong > 0)
        words << tr(QT_TRANSLATE_NOOP("AlarmReview", "lasted too long"));
    if (tally.standsAtEnd)
        words << tr(QT_TRANSLATE_NOOP("AlarmReview", "to the end"));
    if (tally.shelved > 0)
        words << tr(QT_TRANSLATE_NOOP("AlarmReview", "shelved"));
    return words.join(dot);
}

QString storyOf(const AlarmTally& tally, const WallClock& clock) {
    const AlarmLimits limits;
    QStringList words;
    words << tr(QT_TRANSLATE_NOOP("AlarmReview", "%1: %2, longest %3"))
                 .arg(alarmName(tally.alarm, tally.series),
                      counted(tally.times, tr(QT_TRANSLATE_NOOP("AlarmReview", "once")),
                              tr(QT_TRANSLATE_NOOP("AlarmReview", "%n times"), nullptr, tally.times)),
                      spanText(tally.longest));
    if (tally.chattered > 0)
        words << tr(QT_TRANSLATE_NOOP("AlarmReview", "came and went %1 times, three or more in a minute, from %2"))
                     .arg(tally.chattered)
                     .arg(clock.hourAndMinute(*tally.chatterFrom));
    if (tally.stoodLong > 0)
        words << tr(QT_TRANSLATE_NOOP("AlarmReview", "lasted longer than %1: %2"))
                     .arg(spanText(limits.standing),
                          counted(tally.stoodLong, tr(QT_TRANSLATE_NOOP("AlarmReview", "once")),
                                  tr(QT_TRANSLATE_NOOP("AlarmReview", "%n times"), nullptr, tally.stoodLong)));
    return words.join(dot);
}

} // namespace

QStringList alarmHeadings() {
    return {tr(QT_TRANSLATE_NOOP("AlarmReview", "alarm")),        tr(QT_TRANSLATE_NOOP("AlarmReview", "how urgent")),
            tr(QT_TRANSLATE_NOOP("AlarmReview", "times")),        tr(QT_TRANSLATE_NOOP("AlarmReview", "time in all")),
            tr(QT_TRANSLATE_NOOP("AlarmReview", "longest")),      tr(QT_TRANSLATE_NOOP("AlarmReview", "seen after")),
            tr(QT_TRANSLATE_NOOP("AlarmReview", "what is wrong"))};
}

std::vector<AlarmLine> alarmLines(const AlarmReview& review, const WallClock& clock) {
    std::vector<AlarmLine> lines;
    for (const AlarmTally& tally : review.tallies)
        lines.push_back(
            {.cells = {QString::number(lines.size() + 1) + QStringLiteral("  ") + alarmName(tally.alarm, tally.series),
                       priorityWord(tally.priority), QString::number(tally.times), spanText(tally.total),
                       spanText(tally.longest), answer(tally), marks(tally)},
             .story = storyOf(tally, clock)});
    return lines;
}

QString alarmsStory(const AlarmReview& review, const WallClock& clock) {
    if (review.times == 0)
        return tr(QT_TRANSLATE_NOOP("AlarmReview", "There was no alarm in this shift."));
    QStringList words;
    words << counted(review.times, tr(QT_TRANSLATE_NOOP("AlarmReview", "1 alarm")),
                     tr(QT_TRANSLATE_NOOP("AlarmReview", "%n alarms"), nullptr, review.times));
    if (review.urgent > 0)
        words << counted(review.urgent, tr(QT_TRANSLATE_NOOP("AlarmReview", "1 urgent")),
                         tr(QT_TRANSLATE_NOOP("AlarmReview", "%n urgent"), nullptr, review.urgent));
    if (review.anHour) {
        const QString rate = QLocale{}.toString(*review.anHour, 'f', 1);
        words << (*review.anHour > AlarmLimits{}.bearableAnHour
                      ? tr(QT_TRANSLATE_NOOP("AlarmReview", "%1 an hour, more than one person can answer")).arg(rate)
                      : tr(QT_TRANSLATE_NOOP("AlarmReview", "%1 an hour")).arg(rate));
    }
    if (review.busiest && review.times > 1) {
        const QString most = tr(QT_TRANSLATE_NOOP("AlarmReview", "most in ten minutes: %1, from %2"))
                                 .arg(review.busiest->times)
                                 .arg(clock.hourAndMinute(review.busiest->from));
        words << (review.busiest->flood ? tr(QT_TRANSLATE_NOOP("AlarmReview", "%1 (a flood)")).arg(most) : most);
    }
    return words.join(dot);
}

} // namespace panside
