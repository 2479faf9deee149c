#include "ui/review/review_view.h"

#include "ui/look/wall_clock.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("Review", text, comment, n);
}

const QString unknown = QStringLiteral("–");

// A sum that holds only what was measured says so.
QString partial(const QString& sum, int counted, int measured) {
    if (measured == 0)
        return unknown;
    return measured < counted
               ? tr(QT_TRANSLATE_NOOP("Review", "%1 of %2 measured: %3")).arg(measured).arg(counted).arg(sum)
               : sum;
}

QString howLong(const ShiftSummary& summary) { return spanText(Duration{secondsBetween(summary.first, summary.last)}); }

QString sapOf(const ShiftSummary& summary, Units units) {
    return summary.sap.litre() > 0 ? figure(summary.sap, units).text() : unknown;
}

QString syrupOf(const ShiftSummary& summary, Units units) {
    return partial(figure(summary.syrup, units).text(), summary.draws, summary.drawsMeasured);
}

QString woodOf(const ShiftSummary& summary, Units units) {
    return partial(figure(summary.wood, units).text(), summary.loads, summary.loadsWeighed);
}

// English has no translation to choose its plural from.
QString counted(int count, const QString& one, const QString& several) { return count == 1 ? one : several; }

} // namespace

QStringList reviewHeadings() {
    return {tr(QT_TRANSLATE_NOOP("Review", "shift")),   tr(QT_TRANSLATE_NOOP("Review", "hours")),
            tr(QT_TRANSLATE_NOOP("Review", "sap")),     tr(QT_TRANSLATE_NOOP("Review", "syrup")),
            tr(QT_TRANSLATE_NOOP("Review", "wood")),    tr(QT_TRANSLATE_NOOP("Review", "draws")),
            tr(QT_TRANSLATE_NOOP("Review", "firings")), tr(QT_TRANSLATE_NOOP("Review", "crew"))};
}

QString shiftName(Instant begun) {
    return QLocale{}.toString(WallClock{}.at(begun), QStringLiteral("ddd d MMMM, HH:mm"));
}

std::vector<ReviewRow> reviewRows(const std::vector<ShiftSummary>& summaries, Units units) {
    std::vector<ReviewRow> rows;
    for (const ShiftSummary& summary : summaries) {
        QStringList crew;
        for (const std::string& name : summary.crew)
            crew << QString::fromStdString(name);
        const QString name = shiftName(summary.shift.id);
        rows.push_back(
            {.shift = summary.shift.id,
             .cells = {summary.shift.open ? tr(QT_TRANSLATE_NOOP("Review", "%1 (going on)")).arg(name) : name,
                       howLong(summary), sapOf(summary, units), syrupOf(summary, units), woodOf(summary, units),
                       QString::number(summary.draws), QString::number(summary.loads), crew.join(QStringLiteral(", "))},
             .open = summary.shift.open});
    }
    std::stable_sort(rows.begin(), rows.end(),
                     [](const ReviewRow& a, const ReviewRow& b) { return a.shift > b.shift; });
    return rows;
}

QString shiftStory(const ShiftSummary& summary, Units units) {
    QStringList parts{shiftName(summary.shift.id), howLong(summary)};
    parts << counted(summary.draws, tr(QT_TRANSLATE_NOOP("Review", "1 draw")),
                     tr(QT_TRANSLATE_NOOP("Review", "%n draws"), nullptr, summary.draws))
          << counted(summary.loads, tr(QT_TRANSLATE_NOOP("Review", "1 load")),
                     tr(QT_TRANSLATE_NOOP("Review", "%n loads"), nullptr, summary.loads));
    if (summary.drawsMeasured > 0)
        parts << tr(QT_TRANSLATE_NOOP("Review", "syrup %1")).arg(syrupOf(summary, units));
    if (summary.sap.litre() > 0)
        parts << tr(QT_TRANSLATE_NOOP("Review", "sap %1")).arg(sapOf(summary, units));
    return parts.join(QStringLiteral(" · "));
}

} // namespace panside
