#include "ui/words/reading_words.h"

#include "core/boil/vocabulary.h"
#include "ui/keys/actions.h"
#include "ui/keys/places.h"

#include <QCoreApplication>

namespace panside {
namespace {
QString tr(const char* text) { return QCoreApplication::translate("ReadingWords", text); }
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
    const QString span = spanText(Duration{why.amount});
    switch (why.reason) {
    case Reason::none:
        return {};
    case Reason::silent:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "silent for %1")).arg(span);
    case Reason::stuck:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "stuck for %1")).arg(span);
    case Reason::jumping:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "jumping"));
    case Reason::outsidePhysics:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "cannot be true"));
    case Reason::tooFast:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "changes too fast"));
    case Reason::inSteamOrFoam:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "in steam or foam"));
    case Reason::wrongUnit:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "°F or °C? The unit looks wrong."));
    case Reason::touchingPan:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "touching the pan?"));
    case Reason::outOfPan:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "out of the pan, or wet?"));
    case Reason::otherHeight:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "reduced to sea level?"));
    case Reason::notYetRead:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "not read yet"));
    case Reason::noPressure:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "no barometer: do a water check (%1)"))
            .arg(keyOf(Action::waterCheck));
    case Reason::checkDoubted:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "water check in doubt: check again"));
    case Reason::noBarometer:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "no barometer: by the water check"));
    case Reason::noElevation:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "elevation not set (%1)")).arg(keyOf(Place::rig));
    case Reason::noPanReading:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "no pan reading"));
    case Reason::panReadingDoubtful:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "pan reading in doubt"));
    case Reason::noGradient:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "too early to say"));
    case Reason::fireDying:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "the fire is dying"));
    case Reason::drawing:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "drawing"));
    case Reason::notDrawing:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "draw shut"));
    case Reason::notLit:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "fire not lit"));
    case Reason::tooFewDraws:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "too few draws yet"));
    case Reason::stoppedFiring:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "firing stopped"));
    case Reason::noTankLevel:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "sap tank not read"));
    case Reason::tooShort:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "not watched long enough"));
    case Reason::noLoadMass:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "weight of a load not set"));
    case Reason::noPanArea:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "pan size not set"));
    case Reason::noSapSugar:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "sugar of the sap not known"));
    case Reason::notBoiling:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "not boiling"));
    case Reason::shiftEnded:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "the shift is over"));
    case Reason::notReached:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "may never get there"));
    case Reason::nearWater:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "too near boiling water"));
    case Reason::noSapRunsIn:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "no sap runs in"));
    case Reason::moreThanBoils:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "more than the pans can boil: a leak?"));
    case Reason::overfull:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "far over its running depth: a float stuck open?"));
    case Reason::tankRises:
        return tr(QT_TRANSLATE_NOOP("ReadingWords", "tank rises, no sap entered"));
    }
    return {};
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
