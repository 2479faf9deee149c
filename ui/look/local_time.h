#pragma once
// A time as a clock on the wall showed it, in a time zone: which moment that was. Twice a year it is none, or two.
#include "core/boil/fact.h"

#include <QDateTime>
#include <QStringList>
#include <QTimeZone>
#include <optional>
#include <vector>

namespace panside {

// The moments at which a clock of that zone showed this date and time, the earlier first: none in the hour that is left
// out when clocks go forward, two in the one that comes twice when they go back. Source of the rules: the system's IANA
// time zone database.
std::vector<Instant> momentsShown(QDate date, QTime time, const QTimeZone& zone);

// The time zone of this name; nullopt where this machine knows none. Qt takes any word for the name of a zone without
// an offset, and does not list all that there are: the zone of a machine set to Etc/UTC, or US/Eastern, is not among
// them.
std::optional<QTimeZone> zoneNamed(const QString& name);
// Those that Qt lists.
QStringList zoneNames();

} // namespace panside
