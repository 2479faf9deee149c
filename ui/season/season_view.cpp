#include "ui/season/season_view.h"

#include "ui/words/alarm_words.h"
#include "ui/words/season_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

namespace panside {
namespace {

QString tr(const char* text, const char* comment = nullptr, int n = -1) {
    return QCoreApplication::translate("Season", text, comment, n);
}

const QString unknown = QStringLiteral("–");

QString crewOf(const ShiftAccount& account) {
    QStringList names;
    for (const auto& [name, time] : account.crew)
        names << QString::fromStdString(name);
    return names.join(QStringLiteral(", "));
}

bool answers(const SeasonShift& shift, const QString& filter) {
    const auto has = [&](const QString& words) { return words.contains(filter, Qt::CaseInsensitive); };
    if (filter.isEmpty() || has(seasonShiftName(shift.id)))
        return true;
    if (!shift.account)
        return false;
    const ShiftAccount& account = *shift.account;
    return has(crewOf(account)) ||
           std::ranges::any_of(account.woods,
                               [&](const auto& wood) { return has(QString::fromStdString(wood.first)); }) ||
           std::ranges::any_of(account.alarms, [&](const auto& alarm) { return has(alarmName(alarm.first)); });
}

// Shifts that do not know it stand last, whichever way it is sorted.
void sort(std::vector<SeasonShift>& shifts, const SeasonChoice& choice) {
    std::ranges::stable_sort(shifts, [&](const SeasonShift& a, const SeasonShift& b) {
        if (!choice.sortBy)
            return choice.falling ? a.id > b.id : a.id < b.id;
        const auto x = figureOf(a, *choice.sortBy), y = figureOf(b, *choice.sortBy);
        if (!x || !y)
            return x && !y;
        return choice.falling ? x->si > y->si : x->si < y->si;
    });
}

SeasonLine lineOf(const SeasonShift& shift, const SeasonChoice& choice, Units units) {
    SeasonLine line{shift.id, {}};
    const QString name = seasonShiftName(shift.id);
    line.cells << (shift.open ? tr("%1 (going on)").arg(name) : name);
    for (const SeasonFigure figure : choice.columns) {
        const auto told = figureOf(shift, figure);
        line.cells << (told ? numberOf(figure, *told, units) : shift.account ? unknown : QStringLiteral("…"));
    }
    line.cells << (shift.account ? crewOf(*shift.account) : QString{});
    return line;
}

QString totalText(const std::vector<SeasonShift>& shifts, SeasonFigure figure, Units units) {
    const Total total = totalOf(shifts, figure);
    return total.told ? numberOf(figure, *total.told, units) : unknown;
}

QString title(const SeasonChoice& choice, std::size_t shown, std::size_t all) {
    const QString season = choice.year ? tr("Season %1").arg(*choice.year) : tr("All seasons");
    const QString count = shown == 1 ? tr("1 shift") : tr("%1 shifts").arg(shown);
    if (shown == all)
        return season + QStringLiteral(" · ") + count;
    return season + QStringLiteral(" · ") + tr("%1 of %2, those with \"%3\"").arg(count).arg(all).arg(choice.filter);
}

QString differenceOf(SeasonFigure figure, const std::optional<Told>& first, const std::optional<Told>& second,
                     Units units) {
    if (!first || !second || first->atLeast || second->atLeast)
        return unknown;
    const QString text = rowOf(figure).dimension == Dimension::temperature // a step on the scale is no point on it
                             ? panside::figure(TemperatureDifference::kelvin(second->si - first->si), units, 0).number
                             : numberOf(figure, {second->si - first->si}, units);
    const bool none = std::ranges::none_of(text, [](QChar c) { return c.isDigit() && c != u'0'; });
    return second->si > first->si && !none ? QStringLiteral("+") + text : text;
}

} // namespace

std::vector<SeasonShift> chosenShifts(const std::vector<SeasonShift>& shifts, const SeasonChoice& choice) {
    std::vector<SeasonShift> chosen;
    for (const SeasonShift& shift : shifts)
        if ((!choice.year || seasonOf(shift.id) == *choice.year) && answers(shift, choice.filter))
            chosen.push_back(shift);
    std::ranges::sort(chosen, [](const auto& a, const auto& b) { return a.id < b.id; });
    return chosen;
}

SeasonTable seasonTable(const std::vector<SeasonShift>& shifts, const SeasonChoice& choice, Units units) {
    SeasonTable table;
    auto chosen = chosenShifts(shifts, choice);
    const auto all = static_cast<std::size_t>(std::ranges::count_if(
        shifts, [&](const SeasonShift& one) { return !choice.year || seasonOf(one.id) == *choice.year; }));
    table.title = title(choice, chosen.size(), all);
    table.working =
        static_cast<int>(std::ranges::count_if(chosen, [](const SeasonShift& one) { return !one.account; }));

    table.headings << tr("shift");
    table.totals << tr("together");
    for (const SeasonFigure figure : choice.columns) {
        const QString unit = unitWordOf(figure, units);
        table.headings << (unit.isEmpty() ? headingOf(figure) : headingOf(figure) + QStringLiteral("\n") + unit);
        table.totals << totalText(chosen, figure, units);
    }
    table.headings << tr("crew");
    table.totals << QString{};
    sort(chosen, choice);
    for (const SeasonShift& shift : chosen)
        table.lines.push_back(lineOf(shift, choice, units));
    return table;
}

std::vector<SeasonBar> seasonBars(const std::vector<SeasonShift>& chosen, SeasonFigure figure, Units units) {
    std::vector<SeasonBar> bars;
    for (const SeasonShift& shift : chosen) {
        const auto told = figureOf(shift, figure);
        bars.push_back(
            {shift.id, told ? std::optional{inUnits(figure, told->si, units)} : std::nullopt, told && told->atLeast});
    }
    return bars;
}

std::vector<BesideLine> besideLines(const SeasonShift& first, const SeasonShift& second, Units units) {
    std::vector<BesideLine> lines;
    for (const FigureRow& row : allSeasonFigures()) {
        const auto a = figureOf(first, row.figure), b = figureOf(second, row.figure);
        const QString unit = unitWordOf(row.figure, units);
        const QString what = unit.isEmpty() ? headingOf(row.figure) : headingOf(row.figure) + ", " + unit;
        lines.push_back({what, a ? numberOf(row.figure, *a, units) : unknown,
                         b ? numberOf(row.figure, *b, units) : unknown, differenceOf(row.figure, a, b, units)});
    }
    const auto crew = [](const SeasonShift& shift) { return shift.account ? crewOf(*shift.account) : QString{}; };
    lines.push_back({tr("crew"), crew(first), crew(second), {}});
    const auto wood = [](const SeasonShift& shift) {
        QStringList names;
        if (shift.account)
            for (const auto& [name, mass] : shift.account->woods)
                if (!name.empty())
                    names << QString::fromStdString(name);
        return names.isEmpty() ? unknown : names.join(QStringLiteral(", "));
    };
    lines.push_back({tr("kinds of wood"), wood(first), wood(second), {}});
    const auto alarms = [](const SeasonShift& shift) {
        QStringList names;
        if (shift.account)
            for (const auto& [alarm, times] : shift.account->alarms)
                names << QStringLiteral("%1 × %2").arg(times).arg(alarmName(alarm));
        return names.isEmpty() ? unknown : names.join(QStringLiteral(", "));
    };
    lines.push_back({tr("which alarms"), alarms(first), alarms(second), {}});
    return lines;
}

} // namespace panside
