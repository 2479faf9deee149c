#include "ui/paperlog/paper_time.h"

#include "ui/look/local_time.h"

#include <QRegularExpression>

namespace panside {
namespace {

using namespace std::chrono_literals;

// The one time of day in a window as long as the day (or, `half`, as half of it) that begins at `from`.
std::optional<std::pair<QDate, QTime>> inWindow(const PaperTime& time, const QDateTime& from) {
    const int window = time.half ? 12 : 24;
    for (int day = 0; day <= 1; ++day)
        for (const int hour : {time.half ? time.hour % 12 : time.hour, time.hour % 12 + 12}) {
            const QDateTime meant{from.date().addDays(day), QTime{hour, time.minute}, QTimeZone::utc()};
            if (meant >= from && meant < from.addSecs(window * 3600))
                return std::pair{meant.date(), meant.time()};
            if (!time.half)
                break;
        }
    return std::nullopt;
}

} // namespace

std::optional<PaperTime> paperTimeIn(const QString& text) {
    const QString lower = text.trimmed().toLower();
    if (lower == u"noon" || lower == u"midi")
        return PaperTime{12, 0, false};
    if (lower == u"midnight" || lower == u"minuit")
        return PaperTime{0, 0, false};
    static const QRegularExpression form{
        QStringLiteral("^(\\d{1,2})(?:\\s*[:.h]\\s*(\\d{2})|(\\d{2})|\\s*h)?\\s*(?:([ap])(?:\\.?m\\.?)?)?$")};
    const auto match = form.match(lower);
    if (!match.hasMatch())
        return std::nullopt;
    PaperTime time{match.captured(1).toInt(), (match.captured(2) + match.captured(3)).toInt(), false};
    const QString half = match.captured(4);
    if (time.minute > 59 || time.hour > 23)
        return std::nullopt;
    if (half.isEmpty()) {
        time.half = time.hour >= 1 && time.hour <= 12 && !lower.startsWith(u'0') && !lower.contains(u'h');
        return time;
    }
    if (time.hour < 1 || time.hour > 12)
        return std::nullopt;
    time.hour = time.hour % 12 + (half == u"p" ? 12 : 0);
    return time;
}

std::variant<Instant, PaperTimeSlip> paperMoment(const PaperTime& time, QDate date, const QTimeZone& zone,
                                                 std::optional<Instant> above) {
    QTime clock{time.hour, time.minute};
    if (above) {
        const auto millis = std::chrono::floor<std::chrono::milliseconds>(*above).time_since_epoch().count();
        QDateTime shown = QDateTime::fromMSecsSinceEpoch(millis, zone);
        const QDateTime from =
            QDateTime{shown.date(), shown.time(), QTimeZone::utc()}.addSecs(time.half ? -7200 : -6 * 3600);
        if (const auto meant = inWindow(time, from)) {
            date = meant->first;
            clock = meant->second;
        }
    }
    const auto moments = momentsShown(date, clock, zone);
    if (moments.empty())
        return PaperTimeSlip::notShown;
    // An hour that came twice: the first time it did, unless the row above is later than that.
    return above && moments.size() > 1 && moments[0] < *above ? moments[1] : moments[0];
}

} // namespace panside
