#include "ui/review/review_view.h"

#include "ui/look/wall_clock.h"
#include "ui/words/counted.h"

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
QString partial(const QString& sum, int all, int measured) {
    if (measured == 0)
        return unknown;
    return measured < all ? tr("%1 of %2 measured: %3").arg(measured).arg(all).arg(sum) : sum;
}

QString howLong(const ShiftSummary& summary) { return spanText(Duration{secondsBetween(summary.first, summary.last)}); }

QString sapOf(const ShiftSummary& summary, Units units) {
    return summary.sap.litre() > 0 ? figure(summary.sap, units).text() : unknown;
}

QString syrupOf(const ShiftSummary& summary, Units units) {
    return partial(figure(summary.syrup, units).text(), summary.draws, summary.drawsMeasured);
}

// For a narrow list: at least as much, where not every draw was measured.
QString measuredSyrup(const ShiftSummary& summary, Units units) {
    if (summary.drawsMeasured == 0)
        return unknown;
    const QString text = figure(summary.syrup, units).text();
    return summary.drawsMeasured < summary.draws ? QStringLiteral("≥ ") + text : text;
}

} // namespace

std::vector<TableColumn> reviewColumns() { return {{tr("night")}, {tr("syrup"), true}}; }

QString shiftName(Instant begun) {
    return QLocale{}.toString(WallClock{}.at(begun), QStringLiteral("ddd d MMMM, HH:mm"));
}

std::vector<ReviewRow> reviewRows(const std::vector<ShiftSummary>& summaries, Units units) {
    std::vector<ReviewRow> rows;
    for (const ShiftSummary& summary : summaries) {
        const QString name =
            QLocale{}.toString(WallClock{}.at(summary.shift.id), QStringLiteral("ddd d MMM yyyy, HH:mm"));
        rows.push_back(
            {.shift = summary.shift.id,
             .cells = {summary.shift.open ? tr("%1 (going on)").arg(name) : name, measuredSyrup(summary, units)},
             .open = summary.shift.open});
    }
    std::ranges::stable_sort(rows, [](const ReviewRow& a, const ReviewRow& b) { return a.shift > b.shift; });
    return rows;
}

QString shiftStory(const ShiftSummary& summary, Units units) {
    QStringList parts{shiftName(summary.shift.id), howLong(summary)};
    parts << counted(summary.draws, tr("1 draw"), tr("%n draws", nullptr, summary.draws))
          << counted(summary.loads, tr("1 load"), tr("%n loads", nullptr, summary.loads));
    if (summary.drawsMeasured > 0)
        parts << tr("syrup %1").arg(syrupOf(summary, units));
    if (summary.sap.litre() > 0)
        parts << tr("sap %1").arg(sapOf(summary, units));
    return parts.join(QStringLiteral(" · "));
}

} // namespace panside
