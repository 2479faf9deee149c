#include "ui/words/place_words.h"

#include "core/physics/pack.h"
#include "ui/words/book_words.h"
#include "ui/words/said.h"
#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Places", text); }
// Those that French calls otherwise; the other places' names are the same in both.
[[maybe_unused]] constexpr const char* otherInFrench[] = {
    QT_TR_NOOP("US"),
    QT_TR_NOOP("California"),
    QT_TR_NOOP("District of Columbia"),
    QT_TR_NOOP("Florida"),
    QT_TR_NOOP("Georgia"),
    QT_TR_NOOP("Hawaii"),
    QT_TR_NOOP("Louisiana"),
    QT_TR_NOOP("New Mexico"),
    QT_TR_NOOP("North Carolina"),
    QT_TR_NOOP("North Dakota"),
    QT_TR_NOOP("Pennsylvania"),
    QT_TR_NOOP("South Carolina"),
    QT_TR_NOOP("South Dakota"),
    QT_TR_NOOP("Virginia"),
    QT_TR_NOOP("West Virginia"),
    QT_TR_NOOP("British Columbia"),
    QT_TR_NOOP("New Brunswick"),
    QT_TR_NOOP("Newfoundland and Labrador"),
    QT_TR_NOOP("Northwest Territories"),
    QT_TR_NOOP("Nova Scotia"),
    QT_TR_NOOP("Prince Edward Island"),
    QT_TR_NOOP("Quebec"),
};

// What the places ask is written in core/boil; here it is marked to be put into another language.
[[maybe_unused]] constexpr const char* ruleTexts[] = {
    QT_TRANSLATE_NOOP("Law", "a code on every container over 125 mL that the records explain; bought sap and syrup "
                             "traced too"),
    QT_TRANSLATE_NOOP("Law", "a lot number or production code on every label"),
    QT_TRANSLATE_NOOP("Law", "a batch code on every container"),
    QT_TRANSLATE_NOOP("Law", "none of its own is known here; a record of one step back and one step forward is "
                             "expected"),
    QT_TRANSLATE_NOOP("Law", "the container filled to at least 90 percent"),
    QT_TRANSLATE_NOOP("Law", "packed at 85 °C, laid on its side 5 to 10 minutes"),
    QT_TRANSLATE_NOOP("Law", "packed at 82 to 85 °C or hotter"),
    QT_TRANSLATE_NOOP("Law", "at least 180 °F (82 °C) when the cap goes on"),
    QT_TRANSLATE_NOOP("Law", "processing grade only in containers of 5 gallons and more"),
    QT_TRANSLATE_NOOP("Law", "a rule of its own on grades and labels: ask for it"),
    QT_TRANSLATE_NOOP("Law", "the volume of the label is meant at 68 °F (20 °C)"),
    QT_TRANSLATE_NOOP("Law", "a record of each lot")};

} // namespace

QString ruleWords(std::string_view text) { return QCoreApplication::translate("Law", std::string{text}.c_str()); }

QString placeName(const PlaceLaw& place) { return tr(std::string{place.name}.c_str()); }

QString classOf(double light, const PlaceLaw& place) {
    const auto words = gradeWords(place).words;
    const auto name = colourClass(light);
    if (QLocale{}.language() != QLocale::English && QLocale{}.language() != QLocale::C)
        return choiceWord(name);
    static constexpr std::string_view classes[] = {"golden", "amber", "dark", "very dark"};
    for (std::size_t i = 0; i < 4 && i < words.size(); ++i)
        if (name == classes[i])
            return utf8(words[i]);
    return utf8(name);
}

QString placeNumbers(const PlaceLaw& place, Units units) {
    QString least = figure(place.least).text();
    if (place.leastBaume)
        least = tr("%1 (%2 by its own chart)")
                    .arg(least, Figure{QLocale{}.toString(*place.leastBaume, 'f', 1), symbolOf(Unit::baume)}.text());
    const double degrees = units == Units::us ? place.statedAt.fahrenheit() : place.statedAt.celsius();
    const bool whole = std::abs(degrees - std::round(degrees)) < 0.05;
    const QString at = figure(place.statedAt, units, whole ? 0 : 1).text();
    return place.most ? tr("at least %1 and at most %2, stated at %3.").arg(least, figure(*place.most).text(), at)
                      : tr("at least %1, stated at %2; no most is known.").arg(least, at);
}

QString sourceText(const Source& source) {
    return source.quoted ? tr("%1 (read only as quoted)").arg(utf8(source.text)) : utf8(source.text);
}

} // namespace panside
