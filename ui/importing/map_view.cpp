#include "ui/importing/map_view.h"

#include "core/boil/vocabulary.h"
#include "ui/look/local_time.h"
#include "ui/words/fact_words.h"
#include "ui/words/fault_words.h"
#include "ui/words/reading_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <algorithm>
#include <sstream>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Import", text); }

// Zones change on a quarter of an hour at the finest.
constexpr int quarter = 15;

} // namespace

std::vector<ColumnRole> columnRoles() {
    std::vector<ColumnRole> roles{{}};
    for (const ReadingRow& row : allReadings())
        roles.push_back({ColumnRole::Kind::reading, row.series});
    // Last: whoever steps through the readings by keys must not take the time away from its column in passing.
    roles.push_back({ColumnRole::Kind::date});
    roles.push_back({ColumnRole::Kind::time});
    return roles;
}

QString roleWord(const ColumnRole& role) {
    switch (role.kind) {
    case ColumnRole::Kind::none:
        return tr("not kept");
    case ColumnRole::Kind::time:
        return tr("the time");
    case ColumnRole::Kind::date:
        return tr("the date alone");
    case ColumnRole::Kind::reading:
        return readingName(role.series);
    }
    return {};
}

std::vector<Unit> logUnits(Series series) {
    std::vector<Unit> units;
    for (int i = 0; i < unitCount; ++i)
        if (takesUnit(series, static_cast<Unit>(i)))
            units.push_back(static_cast<Unit>(i));
    return units;
}

QStringList timeFormWords() {
    QStringList words;
    for (int i = 0; i < timeFormCount; ++i)
        words << QString::fromUtf8(exampleOf(static_cast<TimeForm>(i)).data());
    words[3] = tr("seconds since 1970 (%1)").arg(words[3]);
    words[4] = tr("milliseconds since 1970 (%1)").arg(words[4]);
    return words;
}

ColumnRole roleOf(const ForeignMap& map, int column) {
    if (map.date == column)
        return {ColumnRole::Kind::date};
    if (map.time == column)
        return {ColumnRole::Kind::time};
    for (const ForeignColumn& mapped : map.columns)
        if (mapped.column == column)
            return {ColumnRole::Kind::reading, mapped.series};
    return {};
}

void setRole(ForeignMap& map, int column, const ColumnRole& role, Unit unit) {
    std::erase_if(map.columns, [&](const ForeignColumn& mapped) { return mapped.column == column; });
    if (map.date == column)
        map.date.reset();
    if (role.kind == ColumnRole::Kind::time)
        map.time = column;
    else if (map.time == column)
        map.time = -1;
    if (role.kind == ColumnRole::Kind::date)
        map.date = column;
    if (role.kind == ColumnRole::Kind::reading)
        map.columns.push_back({column, role.series, unit});
}

Unit usualUnit(Series series, Units units) {
    const auto all = logUnits(series);
    const Unit usual = readingUnit(series, units);
    return std::ranges::find(all, usual) == all.end() ? all.front() : usual;
}

ZoneClock zoneClock(const QTimeZone& zone) {
    return [zone, last = ShownTime{}, moments = std::vector<Instant>{}](const ShownTime& shown) mutable {
        const ShownTime begun{shown.year, shown.month, shown.day, shown.hour, shown.minute / quarter * quarter, 0, 0};
        if (!(begun == last)) {
            last = begun;
            moments = momentsShown({begun.year, begun.month, begun.day}, {begun.hour, begun.minute}, zone);
        }
        auto meant = moments;
        for (Instant& moment : meant)
            moment += std::chrono::minutes{shown.minute % quarter} + std::chrono::seconds{shown.second};
        return meant;
    };
}

MapAnswer mapAnswer(const std::string& beginning, const ForeignMap& map, Units units) {
    if (map.time < 0)
        return {false, tr("Say which column is the time.")};
    if (map.columns.empty())
        return {false, tr("Say of one column at least what it reads, and in which unit.")};
    for (const ForeignColumn& one : map.columns)
        for (const ForeignColumn& other : map.columns)
            if (one.column < other.column && one.series == other.series)
                return {
                    false,
                    tr("Two columns are said to read the same: %1. Keep one of them.").arg(readingName(one.series))};
    const auto zone = zoneNamed(QString::fromStdString(map.zone));
    if (!zone)
        return {false,
                tr("“%1” is not a time zone. Write one like America/New_York.").arg(QString::fromStdString(map.zone))};
    // Only lines that are there whole.
    std::istringstream table{beginning.substr(0, beginning.rfind('\n') + 1)};
    ForeignRows rows{table, map, zoneClock(*zone)};
    const auto read = rows.next();
    if (!read || (read->facts.empty() && read->faults.empty()))
        return {false, tr("There is no reading in the first rows.")};
    if (!read->faults.empty()) {
        const QString said = faultWords(read->faults.front(), QStringLiteral("-"));
        return {false, tr("line %1").arg(said.mid(2))};
    }
    const Instant first = read->facts.front().at;
    QStringList words;
    for (const Fact& fact : read->facts)
        if (fact.at == first)
            words << factWords(fact, units);
    const auto millis = std::chrono::floor<std::chrono::milliseconds>(first).time_since_epoch().count();
    return {true,
            QLocale{}.toString(QDateTime::fromMSecsSinceEpoch(millis), QStringLiteral("ddd d MMM yyyy HH:mm:ss")) +
                QStringLiteral(" · ") + words.join(QStringLiteral(" · "))};
}

} // namespace panside
