#include "ui/review/night_story.h"

#include "ui/look/wall_clock.h"
#include "ui/words/alarm_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Story", text); }

QString percent(double share) {
    return QLocale{}.toString(static_cast<qlonglong>(std::llround(100 * share))) + QStringLiteral("\u00a0%");
}

QString fireWords(const ShiftAccount& account) {
    const WallClock clock;
    const QString last = clock.hourAndMinute(account.last);
    const QString words =
        account.lit ? tr(QT_TRANSLATE_NOOP("Story", "The fire was lit at %1, and the last entry is of %2."))
                          .arg(clock.hourAndMinute(*account.lit), last)
                    : tr(QT_TRANSLATE_NOOP("Story", "Nobody said when the fire was lit; the shift runs from %1 to %2."))
                          .arg(clock.hourAndMinute(account.first), last);
    QStringList names;
    for (const auto& [name, span] : account.crew)
        names << QString::fromStdString(name);
    return names.isEmpty()
               ? words
               : words + QStringLiteral(" ") +
                     tr(QT_TRANSLATE_NOOP("Story", "At the pans: %1.")).arg(names.join(QStringLiteral(", ")));
}

QString sapWords(const ShiftAccount& account, Units units) {
    const bool cameIn = account.sapIn && account.sapIn->si() > 0; // none entered is not a zero that was measured
    if (!cameIn && !account.evaporation)
        return {};
    QStringList parts;
    if (cameIn)
        parts << (account.sapSugar ? tr(QT_TRANSLATE_NOOP("Story", "%1 of sap at %2 came in"))
                                         .arg(figure(*account.sapIn, units).text(), figure(*account.sapSugar).text())
                                   : tr(QT_TRANSLATE_NOOP("Story", "%1 of sap came in, its sugar unknown"))
                                         .arg(figure(*account.sapIn, units).text()));
    if (account.evaporation)
        parts
            << tr(QT_TRANSLATE_NOOP("Story", "the pans boiled off %1")).arg(figure(*account.evaporation, units).text());
    QString words = parts.join(tr(QT_TRANSLATE_NOOP("Story", "; ")));
    words[0] = words[0].toUpper();
    return words + QStringLiteral(".");
}

QString drawWords(const ShiftAccount& account, Units units) {
    if (account.draws == 0)
        return tr(QT_TRANSLATE_NOOP("Story", "Nothing was drawn off."));
    QString words = account.draws == 1 ? tr(QT_TRANSLATE_NOOP("Story", "One draw"))
                                       : tr(QT_TRANSLATE_NOOP("Story", "%1 draws")).arg(account.draws);
    if (account.drawsMeasured == 0)
        words += tr(QT_TRANSLATE_NOOP("Story", ", none of them measured"));
    else
        words += (account.drawsMeasured < account.draws
                      ? tr(QT_TRANSLATE_NOOP("Story", " gave at least %1 of syrup: not all were measured"))
                      : tr(QT_TRANSLATE_NOOP("Story", " gave %1 of syrup")))
                     .arg(figure(account.syrup, units).text());
    if (account.drawsJudged > 0)
        words += tr(QT_TRANSLATE_NOOP("Story", "; in the band, by the probe: %1 of %2"))
                     .arg(account.drawsInBand)
                     .arg(account.drawsJudged);
    return words + QStringLiteral(".");
}

QString woodWords(const ShiftAccount& account, Units units) {
    if (account.loads == 0)
        return {};
    QString words = account.loads == 1 ? tr(QT_TRANSLATE_NOOP("Story", "One load of wood"))
                                       : tr(QT_TRANSLATE_NOOP("Story", "%1 loads of wood")).arg(account.loads);
    if (account.loadsWeighed == account.loads)
        words += QStringLiteral(", ") + figure(account.wood, units).text();
    else if (account.loadsWeighed > 0)
        words += tr(QT_TRANSLATE_NOOP("Story", ", at least %1")).arg(figure(account.wood, units).text());
    if (account.fireInterval)
        words += tr(QT_TRANSLATE_NOOP("Story", ", one every %1")).arg(spanText(*account.fireInterval));
    if (account.efficiency)
        words +=
            tr(QT_TRANSLATE_NOOP("Story", "; %1 of their heat went into the sap")).arg(percent(*account.efficiency));
    return words + QStringLiteral(".");
}

QString foretoldWords(const std::vector<DrawScore>& scores) {
    std::vector<double> errors;
    for (const DrawScore& score : scores)
        if (score.tenBefore)
            errors.push_back(std::abs(seconds(*score.tenBefore)));
    if (errors.empty())
        return {};
    const auto middle = errors.begin() + static_cast<std::ptrdiff_t>(errors.size() / 2);
    std::nth_element(errors.begin(), middle, errors.end());
    return tr(QT_TRANSLATE_NOOP("Story", "Ten minutes before a draw the forecast was usually off by %1 min."))
        .arg(QLocale{}.toString(*middle / 60, 'f', 1));
}

QString alarmWords(const ShiftAccount& account) {
    if (account.alarms.empty())
        return tr(QT_TRANSLATE_NOOP("Story", "There was no alarm."));
    QStringList names;
    for (const auto& [alarm, times] : account.alarms)
        names << (times > 1 ? QStringLiteral("%1 (%2×)").arg(alarmName(alarm)).arg(times) : alarmName(alarm));
    return tr(QT_TRANSLATE_NOOP("Story", "Alarms: %1.")).arg(names.join(QStringLiteral(", ")));
}

} // namespace

QStringList nightStory(const ShiftAccount& account, const std::vector<DrawScore>& scores, Units units) {
    QStringList story{fireWords(account),        sapWords(account, units), drawWords(account, units),
                      woodWords(account, units), foretoldWords(scores),    alarmWords(account)};
    story.removeAll(QString{});
    return story;
}

} // namespace panside
