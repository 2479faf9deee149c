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
        account.lit
            ? tr("The fire was lit at %1, and the last entry is of %2.").arg(clock.hourAndMinute(*account.lit), last)
            : tr("Nobody said when the fire was lit; the shift runs from %1 to %2.")
                  .arg(clock.hourAndMinute(account.first), last);
    QStringList names;
    for (const auto& [name, span] : account.crew)
        names << QString::fromStdString(name);
    return names.isEmpty() ? words
                           : words + QStringLiteral(" ") + tr("At the pans: %1.").arg(names.join(QStringLiteral(", ")));
}

QString sapWords(const ShiftAccount& account, Units units) {
    const bool cameIn = account.sapIn && account.sapIn->si() > 0; // none entered is not a zero that was measured
    if (!cameIn && !account.evaporation)
        return {};
    QStringList parts;
    if (cameIn)
        parts << (account.sapSugar
                      ? tr("%1 of sap at %2 came in")
                            .arg(figure(*account.sapIn, units).text(), figure(*account.sapSugar).text())
                      : tr("%1 of sap came in, its sugar unknown").arg(figure(*account.sapIn, units).text()));
    if (account.evaporation)
        parts << tr("the pans boiled off %1").arg(figure(*account.evaporation, units).text());
    QString words = parts.join(tr("; "));
    words[0] = words[0].toUpper();
    return words + QStringLiteral(".");
}

QString drawWords(const ShiftAccount& account, Units units) {
    if (account.draws == 0)
        return tr("Nothing was drawn off.");
    QString words = account.draws == 1 ? tr("One draw") : tr("%1 draws").arg(account.draws);
    if (account.drawsMeasured == 0)
        words += tr(", none of them measured");
    else
        words += (account.drawsMeasured < account.draws ? tr(" gave at least %1 of syrup: not all were measured")
                                                        : tr(" gave %1 of syrup"))
                     .arg(figure(account.syrup, units).text());
    if (account.drawsJudged > 0)
        words += tr("; in the band, by the probe: %1 of %2").arg(account.drawsInBand).arg(account.drawsJudged);
    return words + QStringLiteral(".");
}

QString woodWords(const ShiftAccount& account, Units units) {
    if (account.loads == 0)
        return {};
    QString words = account.loads == 1 ? tr("One load of wood") : tr("%1 loads of wood").arg(account.loads);
    if (account.loadsWeighed == account.loads)
        words += QStringLiteral(", ") + figure(account.wood, units).text();
    else if (account.loadsWeighed > 0)
        words += tr(", at least %1").arg(figure(account.wood, units).text());
    if (account.fireInterval)
        words += tr(", one every %1").arg(spanText(*account.fireInterval));
    if (account.efficiency)
        words += tr("; %1 of their heat went into the sap").arg(percent(*account.efficiency));
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
    return tr("Ten minutes before a draw the forecast was usually off by %1 min.")
        .arg(QLocale{}.toString(*middle / 60, 'f', 1));
}

QString alarmWords(const ShiftAccount& account) {
    if (account.alarms.empty())
        return tr("There was no alarm.");
    QStringList names;
    for (const auto& [alarm, times] : account.alarms)
        names << (times > 1 ? QStringLiteral("%1 (%2×)").arg(alarmName(alarm)).arg(times) : alarmName(alarm));
    return tr("Alarms: %1.").arg(names.join(QStringLiteral(", ")));
}

} // namespace

QStringList nightStory(const ShiftAccount& account, const std::vector<DrawScore>& scores, Units units) {
    QStringList story{fireWords(account),        sapWords(account, units), drawWords(account, units),
                      woodWords(account, units), foretoldWords(scores),    alarmWords(account)};
    story.removeAll(QString{});
    return story;
}

} // namespace panside
