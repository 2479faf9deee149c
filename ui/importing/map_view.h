#pragma once
// Mapping another logger's table: what its columns may be, and what its first row would become. Pure.
#include "core/journal/foreign_log.h"
#include "ui/look/units.h"

#include <QString>
#include <QStringList>
#include <QTimeZone>
#include <vector>

namespace panside {

// What may stand beside a column: nothing, the time, the date, or a reading.
struct ColumnRole {
    enum class Kind { none, time, date, reading };
    Kind kind = Kind::none;
    Series series{}; // of a reading
    bool operator==(const ColumnRole&) const = default;
};
std::vector<ColumnRole> columnRoles(); // none, the readings, date, time
QString roleWord(const ColumnRole& role);
std::vector<Unit> logUnits(Series series); // that may stand beside it
QStringList timeFormWords();               // in the order of TimeForm
ColumnRole roleOf(const ForeignMap& map, int column);
void setRole(ForeignMap& map, int column, const ColumnRole& role, Unit unit);
Unit usualUnit(Series series, Units units);

// The clock of a zone, for reading a whole table: quick where rows follow one another.
ZoneClock zoneClock(const QTimeZone& zone);

struct MapAnswer {
    bool good = false;
    QString words; // what the first row would become, or what is missing and what to do
};
MapAnswer mapAnswer(const std::string& beginning, const ForeignMap& map, Units units);

} // namespace panside
