#include "ui/words/place_words.h"

#include "ui/words/said.h"
#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Places", text); }
// Those that French calls otherwise; the other places' names are the same in both.
[[maybe_unused]] constexpr const char* otherInFrench[] = {
    QT_TRANSLATE_NOOP("Places", "US"),
    QT_TRANSLATE_NOOP("Places", "California"),
    QT_TRANSLATE_NOOP("Places", "District of Columbia"),
    QT_TRANSLATE_NOOP("Places", "Florida"),
    QT_TRANSLATE_NOOP("Places", "Georgia"),
    QT_TRANSLATE_NOOP("Places", "Hawaii"),
    QT_TRANSLATE_NOOP("Places", "Louisiana"),
    QT_TRANSLATE_NOOP("Places", "New Mexico"),
    QT_TRANSLATE_NOOP("Places", "North Carolina"),
    QT_TRANSLATE_NOOP("Places", "North Dakota"),
    QT_TRANSLATE_NOOP("Places", "Pennsylvania"),
    QT_TRANSLATE_NOOP("Places", "South Carolina"),
    QT_TRANSLATE_NOOP("Places", "South Dakota"),
    QT_TRANSLATE_NOOP("Places", "Virginia"),
    QT_TRANSLATE_NOOP("Places", "West Virginia"),
    QT_TRANSLATE_NOOP("Places", "British Columbia"),
    QT_TRANSLATE_NOOP("Places", "New Brunswick"),
    QT_TRANSLATE_NOOP("Places", "Newfoundland and Labrador"),
    QT_TRANSLATE_NOOP("Places", "Northwest Territories"),
    QT_TRANSLATE_NOOP("Places", "Nova Scotia"),
    QT_TRANSLATE_NOOP("Places", "Prince Edward Island"),
    QT_TRANSLATE_NOOP("Places", "Quebec"),
};

} // namespace

QString placeName(const PlaceLaw& place) { return tr(std::string{place.name}.c_str()); }

QString placeNumbers(const PlaceLaw& place, Units units) {
    QString least = figure(place.least).text();
    if (place.leastBaume)
        least = tr(QT_TRANSLATE_NOOP("Places", "%1 (%2 by its own chart)"))
                    .arg(least, Figure{QLocale{}.toString(*place.leastBaume, 'f', 1), symbolOf(Unit::baume)}.text());
    const double degrees = units == Units::us ? place.statedAt.fahrenheit() : place.statedAt.celsius();
    const bool whole = std::abs(degrees - std::round(degrees)) < 0.05;
    const QString at = figure(place.statedAt, units, whole ? 0 : 1).text();
    return place.most ? tr(QT_TRANSLATE_NOOP("Places", "at least %1 and at most %2, stated at %3."))
                            .arg(least, figure(*place.most).text(), at)
                      : tr(QT_TRANSLATE_NOOP("Places", "at least %1, stated at %2; no most is known.")).arg(least, at);
}

QString sourceText(const Source& source) {
    return source.quoted ? tr(QT_TRANSLATE_NOOP("Places", "%1 (read only as quoted)")).arg(utf8(source.text))
                         : utf8(source.text);
}

} // namespace panside
