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
    {Reason::silent, QT_TR_NOOP("silent for %1")},
    {Reason::stuck, QT_TR_NOOP("stuck for %1")},
    {Reason::jumping, QT_TR_NOOP("jumping")},
    {Reason::outsidePhysics, QT_TR_NOOP("cannot be true")},
    {Reason::tooFast, QT_TR_NOOP("changes too fast")},
    {Reason::inSteamOrFoam, QT_TR_NOOP("in steam or foam")},
    {Reason::wrongUnit, QT_TR_NOOP("°F or °C? The unit looks wrong.")},
    {Reason::touchingPan, QT_TR_NOOP("touching the pan?")},
    {Reason::outOfPan, QT_TR_NOOP("out of the pan, or wet?")},
    {Reason::plugsExchanged, QT_TR_NOOP("plugs exchanged?")},
    {Reason::otherHeight, QT_TR_NOOP("reduced to sea level?")},
    {Reason::noWeather, QT_TR_NOOP("no such weather: unit or height?")},
    {Reason::notYetRead, QT_TR_NOOP("not read yet")},
    {Reason::noPressure, QT_TR_NOOP("no barometer: do a water check (%1)")},
    {Reason::checkDoubted, QT_TR_NOOP("water check in doubt: check again")},
    {Reason::noBarometer, QT_TR_NOOP("no barometer: by the water check")},
    {Reason::noElevation, QT_TR_NOOP("elevation not set (%1)")},
    {Reason::noPanReading, QT_TR_NOOP("no pan reading")},
    {Reason::panReadingDoubtful, QT_TR_NOOP("pan reading in doubt")},
    {Reason::noGradient, QT_TR_NOOP("too early to say")},
    {Reason::fireDying, QT_TR_NOOP("the fire is dying")},
    {Reason::drawing, QT_TR_NOOP("drawing")},
    {Reason::notDrawing, QT_TR_NOOP("draw shut")},
    {Reason::notLit, QT_TR_NOOP("fire not lit")},
    {Reason::tooFewDraws, QT_TR_NOOP("too few draws yet")},
    {Reason::stoppedFiring, QT_TR_NOOP("firing stopped")},
    {Reason::noTankLevel, QT_TR_NOOP("sap tank not read")},
    {Reason::tooShort, QT_TR_NOOP("not watched long enough")},
    {Reason::noLoadMass, QT_TR_NOOP("weight of a load not set")},
    {Reason::noPanArea, QT_TR_NOOP("pan size not set")},
    {Reason::noSapSugar, QT_TR_NOOP("sugar of the sap not known")},
    {Reason::notBoiling, QT_TR_NOOP("not boiling")},
    {Reason::shiftEnded, QT_TR_NOOP("the shift is over")},
    {Reason::notReached, QT_TR_NOOP("may never get there")},
    {Reason::tankRises, QT_TR_NOOP("tank rises, no sap entered")},
    {Reason::nearWater, QT_TR_NOOP("too near boiling water")},
    {Reason::moreThanBoils, QT_TR_NOOP("more than the pans can boil: a leak?")},
    {Reason::noSapRunsIn, QT_TR_NOOP("no sap runs in")},
    {Reason::pastTables, QT_TR_NOOP("over 78 brix: sweeter than the tables reach")},
    {Reason::overfull, QT_TR_NOOP("far over its running depth: a float stuck open?")},
});
static_assert(hasCount<Reason, reasonRows.size()>());
static_assert(inOrder(reasonRows, &ReasonRow::reason));

} // namespace

QString readingName(Series series) {
    struct Row {
        Series of;
        const char* words;
    };
    static constexpr std::array rows{Row{Series::syrup_pan, QT_TR_NOOP("syrup pan")},
                                     Row{Series::flue_pan, QT_TR_NOOP("flue pan")},
                                     Row{Series::stack, QT_TR_NOOP("stack")},
                                     Row{Series::feed, QT_TR_NOOP("sap feed")},
                                     Row{Series::air, QT_TR_NOOP("outside air")},
                                     Row{Series::pressure, QT_TR_NOOP("barometer")},
                                     Row{Series::sea_level_pressure, QT_TR_NOOP("reported pressure")},
                                     Row{Series::pan_level, QT_TR_NOOP("syrup pan level")},
                                     Row{Series::flue_level, QT_TR_NOOP("flue pan level")},
                                     Row{Series::tank_level, QT_TR_NOOP("sap tank")},
                                     Row{Series::feed_flow, QT_TR_NOOP("sap flow")},
                                     Row{Series::filter_pressure, QT_TR_NOOP("filter press")}};
    static_assert(inOrder(rows, &Row::of) && hasCount<Series, rows.size()>());
    const auto row = static_cast<std::size_t>(series);
    return row < rows.size() ? tr(rows[row].words) : QString{};
}

// The filter's gauge is read in psi, the barometer in inches of mercury.
Unit readingUnit(Series series, Units units) {
    return series == Series::filter_pressure && units == Units::us ? Unit::psi : unitOf(rowOf(series).dimension, units);
}

QString trustWord(Trust trust) {
    switch (trust) {
    case Trust::good:
        return tr("good");
    case Trust::doubtful:
        return tr("in doubt");
    case Trust::gone:
        return tr("gone");
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
