#include "ui/look/local_time.h"

#include <QFileInfo>
#include <QRegularExpression>
#include <algorithm>

namespace panside {

std::vector<Instant> momentsShown(QDate date, QTime time, const QTimeZone& zone) {
    const QDateTime asIfUtc{date, time, QTimeZone::utc()};
    std::vector<Instant> moments;
    // The offsets in force a day before and a day after are all that can be in question.
    for (const int day : {-1, 1}) {
        const int offset = zone.offsetFromUtc(asIfUtc.addDays(day));
        const QDateTime moment = asIfUtc.addSecs(-offset);
        if (zone.offsetFromUtc(moment) != offset)
            continue;
        const Instant at{std::chrono::milliseconds{moment.toMSecsSinceEpoch()}};
        if (std::ranges::find(moments, at) == moments.end())
            moments.push_back(at);
    }
    std::ranges::sort(moments);
    return moments;
}

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
