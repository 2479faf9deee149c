#include "ui/board/card_view.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Cards", text); }

long long wholeMinutes(Duration span) { return std::llround(std::max(0.0, span.count()) / 60); }

// Both ends in the unit of the larger: "9 to 16 min", "1 h 20 to 2 h 05". Hours carry their own.
QString endOf(Duration end, Duration larger) {
    const auto minutes = wholeMinutes(end);
    return larger.count() < 5400 ? QString::number(minutes) : hoursText(minutes);
}

// Without the gap of a unit that is not there.
QString withoutGap(const QString& words) {
    return QString{words}.replace(QStringLiteral("\u00a0 "), QStringLiteral(" ")).trimmed();
}

QString unitOfEnd(Duration larger) { return larger.count() >= 5400 ? QString{} : tr("min"); }

} // namespace

std::vector<Piece> waitPieces(Duration left) {
    const QString minutesWord = tr("min");
    if (left < nearest)
        return {{tr("under"), true}, {QStringLiteral("2")}, {minutesWord, true}};
    const auto minutes = static_cast<long long>(left.count() / 60);
    if (minutes < 90)
        return {{QString::number(minutes)}, {minutesWord, true}};
    return {
        {QString::number(minutes / 60)}, {tr("h"), true}, {QStringLiteral("%1").arg(minutes % 60, 2, 10, QChar{u'0'})}};
}

std::vector<Piece> pastPieces(Duration span) {
    const auto size = std::abs(span.count());
    if (size < nearest.count())
        return {{QString::number(std::llround(size))}, {tr("s"), true}};
    return waitPieces(Duration{size});
}

QString rangeText(const Range& range) {
    const Duration larger = range.p90.value_or(range.p50);
    if (range.p90 && larger < nearest)
        return {};
    const QString low = endOf(range.p10, larger), unit = unitOfEnd(larger);
    if (!range.p90)
        return withoutGap(tr("%1 %2 or more").arg(low, unit));
    const QString high = endOf(*range.p90, larger);
    if (low == high)
        return withoutGap(tr("about %1 %2").arg(low, unit));
    return withoutGap(tr("%1 to %2 %3").arg(low, high, unit));
}

QString CardView::spoken() const {
    QStringList words{title};
    QString number;
    for (const Piece& piece : chief)
        number += piece.text + u' ';
    words << (order.isEmpty() ? number.trimmed() : order) << doubt << beside << under << reason << figure;
    for (const QString& line : lines)
        words << line;
    words.removeAll(QString{});
    return words.join(QStringLiteral(", "));
}

} // namespace panside
