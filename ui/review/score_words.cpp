#include "ui/review/score_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("DrawScores", text); }

QString minutesOff(double seconds) {
    const double minutes = std::round(std::abs(seconds) / 6) / 10;
    const QString digits = QLocale{}.toString(minutes, 'f', 1);
    return minutes == 0 ? digits : (seconds > 0 ? QStringLiteral("+") : QStringLiteral("−")) + digits;
}

// The usual size of an error: as many are larger as smaller. A dash where no wait was so long.
QString usually(const std::vector<DrawScore>& scores, std::optional<Duration> DrawScore::*lead) {
    std::vector<double> sizes;
    for (const DrawScore& score : scores)
        if (const auto& error = score.*lead)
            sizes.push_back(std::abs(seconds(*error)));
    if (sizes.empty())
        return QStringLiteral("–");
    const auto middle = sizes.begin() + static_cast<std::ptrdiff_t>(sizes.size() / 2);
    std::nth_element(sizes.begin(), middle, sizes.end());
    return QLocale{}.toString(*middle / 60, 'f', 1);
}

QString percent(double share) { return QLocale{}.toString(std::lround(100 * share)); }

} // namespace

QString scoreStory(const std::vector<DrawScore>& scores) {
    if (scores.empty())
        return {};
    double inside = 0;
    for (const DrawScore& score : scores)
        inside += score.inside / static_cast<double>(scores.size());
    const auto draws = static_cast<int>(scores.size());
    return (draws == 1 ? tr("one draw predicted")
                       : QCoreApplication::translate("DrawScores", "%n draws predicted", nullptr, draws)) +
           QStringLiteral(" · ") + tr("inside the range %1 % of the wait (80 is the aim)").arg(percent(inside)) +
           QStringLiteral(" · ") +
           tr("off by %1 min ten minutes before, %2 five, %3 two")
               .arg(usually(scores, &DrawScore::tenBefore), usually(scores, &DrawScore::fiveBefore),
                    usually(scores, &DrawScore::twoBefore));
}

QString scoreList(const std::vector<DrawScore>& scores, const WallClock& clock) {
    QStringList draws;
    for (const DrawScore& score : scores) {
        QStringList errors;
        for (const auto& error : {score.tenBefore, score.fiveBefore, score.twoBefore})
            errors << (error ? minutesOff(seconds(*error)) : QStringLiteral("–"));
        draws << tr("%1: %2 min, inside %3 %")
                     .arg(clock.hourAndMinute(score.at), errors.join(QStringLiteral(" / ")), percent(score.inside));
    }
    return draws.join(QStringLiteral(" · "));
}

} // namespace panside
