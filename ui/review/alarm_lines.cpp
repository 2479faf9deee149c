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
        return tr("by nobody");
    const QString span = spanText(*tally.answeredIn);
    return tally.answered == tally.times ? span : tr("%1 (%2 of %3)").arg(span).arg(tally.answered).arg(tally.times);
}

QString marks(const AlarmTally& tally) {
    QStringList words;
    if (tally.chattered > 0)
        words << tr("comes and goes");
    if (tally.stoodLong > 0)
        words << tr("lasted too long");
    if (tally.standsAtEnd)
        words << tr("to the end");
    if (tally.shelved > 0)
        words << tr("shelved");
    return words.join(dot);
}

QString storyOf(const AlarmTally& tally, const WallClock& clock) {
    const AlarmLimits limits;
    QStringList words;
    words << tr("%1: %2, longest %3")
                 .arg(alarmName(tally.alarm, tally.series),
                      counted(tally.times, tr("once"), tr("%n times", nullptr, tally.times)), spanText(tally.longest));
    if (tally.chattered > 0)
        words << tr("came and went %1 times, three or more in a minute, from %2")
                     .arg(tally.chattered)
                     .arg(clock.hourAndMinute(*tally.chatterFrom));
    if (tally.stoodLong > 0)
        words << tr("lasted longer than %1: %2")
                     .arg(spanText(limits.standing),
                          counted(tally.stoodLong, tr("once"), tr("%n times", nullptr, tally.stoodLong)));
    return words.join(dot);
}

} // namespace

QStringList alarmHeadings() {
    return {tr("alarm"),   tr("how urgent"), tr("times"),        tr("time in all"),
            tr("longest"), tr("seen after"), tr("what is wrong")};
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
        return tr("There was no alarm in this shift.");
    QStringList words;
    words << counted(review.times, tr("1 alarm"), tr("%n alarms", nullptr, review.times));
    if (review.urgent > 0)
        words << counted(review.urgent, tr("1 urgent"), tr("%n urgent", nullptr, review.urgent));
    if (review.anHour) {
        const QString rate = QLocale{}.toString(*review.anHour, 'f', 1);
        words << (*review.anHour > AlarmLimits{}.bearableAnHour
                      ? tr("%1 an hour, more than one person can answer").arg(rate)
                      : tr("%1 an hour").arg(rate));
    }
    if (review.busiest && review.times > 1) {
        const QString most = tr("most in ten minutes: %1, from %2")
                                 .arg(review.busiest->times)
                                 .arg(clock.hourAndMinute(review.busiest->from));
        words << (review.busiest->flood ? tr("%1 (a flood)").arg(most) : most);
    }
    return words.join(dot);
}

} // namespace panside
