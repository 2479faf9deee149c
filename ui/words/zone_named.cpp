#include "ui/words/zone_named.h"

#include <QFileInfo>
#include <QRegularExpression>

namespace panside {

QStringList zoneNames() {
    QStringList names;
    for (const QByteArray& id : QTimeZone::availableTimeZoneIds())
        names << QString::fromLatin1(id);
    return names;
}

std::optional<QTimeZone> zoneNamed(const QString& name) {
    static const QRegularExpression form{QStringLiteral("^[A-Za-z][A-Za-z0-9_+-]*(/[A-Za-z0-9_+-]+)*$")};
    const QString id = name.trimmed();
    if (!form.match(id).hasMatch())
        return std::nullopt;
    const QTimeZone zone{id.toLatin1()};
    const bool known = id == QStringLiteral("UTC") || zone.id() == QTimeZone::systemTimeZoneId() ||
                       QTimeZone::isTimeZoneIdAvailable(zone.id()) ||
                       QFileInfo{QStringLiteral("/usr/share/zoneinfo/") + id}.isFile();
    return known && zone.isValid() ? std::optional{zone} : std::nullopt;
}

} // namespace panside
