#pragma once
#include <QStringList>
#include <QTimeZone>
#include <optional>

namespace panside {

// The time zone of this name; nullopt where this machine knows none. Qt takes any word for the name of a zone without
// an offset, and does not list all that there are: the zone of a machine set to Etc/UTC, or US/Eastern, is not among
// them.
std::optional<QTimeZone> zoneNamed(const QString& name);
// Those that Qt lists.
QStringList zoneNames();

} // namespace panside
