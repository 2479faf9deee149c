#include "ui/words/reading_words.h"

#include "core/boil/vocabulary.h"
#include "core/quantity/enum_count.h"
#include "ui/keys/actions.h"
#include "ui/keys/places.h"

#include <QCoreApplication>
#include <array>

namespace panside {
namespace {
QString tr(const char* text) { return QCoreApplication::translate("ReadingWords", text); }

struct ReasonRow {
    Reason reason;
    const char* words; // %1: a span of time, or the key that helps
};
constexpr auto reasonRows = std::to_array<ReasonRow>({
    {Reason::none, ""},
    {Reason::silent, QT_TRANSLATE_NOOP("ReadingWords", "silent for %1")},
    {Reason::stuck, QT_TRANSLATE_NOOP("ReadingWords", "stuck for %1")},
    {Reason::jumping, QT_TRANSLATE_NOOP("ReadingWords", "jumping")},
    {Reason::outsidePhysics, QT_TRANSLATE_NOOP("ReadingWords", "cannot be true")},
    {Reason::tooFast, QT_TRANSLATE_NOOP("ReadingWords", "changes too fast")},
    {Reason::inSteamOrFoam, QT_TRANSLATE_NOOP("ReadingWords", "in steam or foam")},
    {Reason::wrongUnit, QT_TRANSLATE_NOOP("ReadingWords", "°F or °C? The unit looks wrong.")},
    {Reason::touchingPan, QT_TRANSLATE_NOOP("ReadingWords", "touching the pan?")},
    {Reason::outOfPan, QT_TRANSLATE_NOOP("ReadingWords", "out of the pan, or wet?")},
    {Reason::plugsExchanged, QT_TRANSLATE_NOOP("ReadingWords", "plugs exchanged?")},
    {Reason::otherHeight, QT_TRANSLATE_NOOP("ReadingWords", "reduced to sea level?")},
    {Reason::noWeather, QT_TRANSLATE_NOOP("ReadingWords", "no such weather: unit or height?")},
    {Reason::notYetRead, QT_TRANSLATE_NOOP("ReadingWords", "not read yet")},
    {Reason::noPressure, QT_TRANSLATE_NOOP("ReadingWords", "no barometer: do a water check (%1)")},
    {Reason::checkDoubted, QT_TRANSLATE_NOOP("ReadingWords", "water check in doubt: check again")},
    {Reason::noBarometer, QT_TRANSLATE_NOOP("ReadingWords", "no barometer: by the water check")},
    {Reason::noElevation, QT_TRANSLATE_NOOP("ReadingWords", "elevation not set (%1)")},
    {Reason::noPanReading, QT_TRANSLATE_NOOP("ReadingWords", "no pan reading")},
    {Reason::panReadingDoubtful, QT_TRANSLATE_NOOP("ReadingWords", "pan reading in doubt")},
    {Reason::noGradient, QT_TRANSLATE_NOOP("ReadingWords", "too early to say")},
    {Reason::fireDying, QT_TRANSLATE_NOOP("ReadingWords", "the fire is dying")},
    {Reason::drawing, QT_TRANSLATE_NOOP("ReadingWords", "drawing")},
    {Reason::notDrawing, QT_TRANSLATE_NOOP("ReadingWords", "draw shut")},
    {Reason::notLit, QT_TRANSLATE_NOOP("ReadingWords", "fire not lit")},
    {Reason::tooFewDraws, QT_TRANSLATE_NOOP("ReadingWords", "too few draws yet")},
    {Reason::stoppedFiring, QT_TRANSLATE_NOOP("ReadingWords", "firing stopped")},
    {Reason::noTankLevel, QT_TRANSLATE_NOOP("ReadingWords", "sap tank not read")},
    {Reason::tooShort, QT_TRANSLATE_NOOP("ReadingWords", "not watched long enough")},
    {Reason::noLoadMass, QT_TRANSLATE_NOOP("ReadingWords", "weight of a load not set")},
    {Reason::noPanArea, QT_TRANSLATE_NOOP("ReadingWords", "pan size not set")},
    {Reason::noSapSugar, QT_TRANSLATE_NOOP("ReadingWords", "sugar of the sap not known")},
    {Reason::notBoiling, QT_TRANSLATE_NOOP("ReadingWords", "not boiling")},
    {Reason::shiftEnded, QT_TRANSLATE_NOOP("ReadingWords", "the shift is over")},
    {Reason::notReached, QT_TRANSLATE_NOOP("ReadingWords", "may never get there")},
    {Reason::tankRises, QT_TRANSLATE_NOOP("ReadingWords", "tank rises, no sap entered")},
    {Reason::nearWater, QT_TRANSLATE_NOOP("ReadingWords", "too near boiling water")},
    {Reason::moreThanBoils, QT_TRANSLATE_NOOP("ReadingWords", "more than the pans can boil: a leak?")},
    {Reason::noSapRunsIn, QT_TRANSLATE_NOOP("ReadingWords", "no sap runs in")},
    {Reason::overfull, QT_TRANSLATE_NOOP("ReadingWords", "far over its running depth: a float stuck open?")},
});
static_assert(hasCount<Reason, reasonRows.size()>());
static_assert(inOrder(reasonRows, &ReasonRow::reason));

} // namespace

QString readingName(Series series) {
    switch (series) {
    case Series::syrup_pan:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "syrup pan"));
    case Series::flue_pan:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "flue pan"));
    case Series::stack:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "stack"));
    case Series::feed:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "sap feed"));
    case Series::air:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "outside air"));
    case Series::pressure:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "barometer"));
    case Series::sea_level_pressure:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "reported pressure"));
    case Series::pan_level:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "syrup pan level"));
    case Series::flue_level:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "flue pan level"));
    case Series::tank_level:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "sap tank"));
    case Series::feed_flow:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "sap flow"));
    case Series::filter_pressure:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "filter press"));
    }
    return {};
}

// The filter's gauge is read in psi, the barometer in inches of mercury.
Unit readingUnit(Series series, Units units) {
    return series == Series::filter_pressure && units == Units::us ? Unit::psi : unitOf(rowOf(series).dimension, units);
}

QString trustWord(Trust trust) {
    switch (trust) {
    case Trust::good:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "good"));
    case Trust::doubtful:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "in doubt"));
    case Trust::gone:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "gone"));
    }
    return {};
}

QString reasonWords(const Why& why) {
    const auto at = static_cast<std::size_t>(why.reason);
    const char* words = at < reasonRows.size() ? reasonRows[at].words : "";
    if (*words == '\0')
        return {};
    switch (why.reason) {
    case Reason::silent:
    case Reason::stuck:
        return tr(words).arg(spanText(Duration{why.amount}));
    case Reason::noPressure:
        return tr(words).arg(keyOf(Action::waterCheck));
    case Reason::noElevation:
        return tr(words).arg(keyOf(Place::rig));
    default:
        return tr(words);
    }
}

QString reasonWords(const ReadingPicture& reading) {
    return reasonWords(Why{{}, reading.reason, reading.forSoLong.count()});
}

QString whyNot(const Picture& picture, Shown figure) {
    for (const Why& why : picture.why)
        if (why.of == std::variant<Shown, Series>{figure})
            return reasonWords(why);
    return {};
}

} // namespace panside
