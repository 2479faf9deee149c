#include "ui/words/season_words.h"

#include "ui/look/wall_clock.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Season", text); }

Unit unitFor(SeasonFigure figure, Units units) { return unitOf(rowOf(figure).dimension, units); }

} // namespace

QString seasonShiftName(Instant shift) {
    return QLocale{}.toString(WallClock{}.at(shift), QStringLiteral("ddd d MMM yyyy, HH:mm"));
}

QString headingOf(SeasonFigure figure) {
    switch (figure) {
    case SeasonFigure::hours:
        return tr("hours");
    case SeasonFigure::sapIn:
        return tr("sap in");
    case SeasonFigure::sapTaken:
        return tr("sap boiled");
    case SeasonFigure::sapSugar:
        return tr("its sugar");
    case SeasonFigure::syrup:
        return tr("syrup");
    case SeasonFigure::draws:
        return tr("draws");
    case SeasonFigure::inBand:
        return tr("in the band");
    case SeasonFigure::wood:
        return tr("wood");
    case SeasonFigure::loads:
        return tr("loads");
    case SeasonFigure::evaporation:
        return tr("boiled off");
    case SeasonFigure::efficiency:
        return tr("efficiency");
    case SeasonFigure::syrupPerCord:
        return tr("syrup a cord");
    case SeasonFigure::alarms:
        return tr("alarms");
    case SeasonFigure::checks:
        return tr("checks");
    case SeasonFigure::fireInterval:
        return tr("fired every");
    case SeasonFigure::loadMass:
        return tr("a load");
    case SeasonFigure::moisture:
        return tr("moisture");
    case SeasonFigure::depth:
        return tr("pan depth");
    case SeasonFigure::stack:
        return tr("stack");
    case SeasonFigure::pressure:
        return tr("air pressure");
    }
    return {};
}

QString unitWordOf(SeasonFigure figure, Units units) {
    switch (rowOf(figure).dimension) {
    case Dimension::none:
        return {};
    case Dimension::time:
        return figure == SeasonFigure::hours ? tr("h") : symbolOf(Unit::min);
    default:
        return symbolOf(unitFor(figure, units));
    }
}

double inUnits(SeasonFigure figure, double si, Units units) {
    if (figure == SeasonFigure::hours)
        return si / 3600;
    if (rowOf(figure).dimension == Dimension::none)
        return si;
    return fromSi(si, unitFor(figure, units));
}

QString numberOf(SeasonFigure figure, const Told& told, Units units) {
    const double value = inUnits(figure, told.si, units);
    int decimals = std::abs(value) < 20 ? 1 : 0;
    switch (rowOf(figure).dimension) {
    case Dimension::none:
    case Dimension::share:
    case Dimension::temperature:
        decimals = 0;
        break;
    case Dimension::length:
        decimals = units == Units::us ? 2 : 0;
        break;
    case Dimension::pressure:
        decimals = units == Units::us ? 2 : 1;
        break;
    default:
        break;
    }
    const QString number =
        QLocale{}.toString(value, 'f', decimals).replace(u'-', QChar{0x2212}); // no hyphen for a minus
    return told.atLeast ? QStringLiteral("≥\u00a0") + number : number;
}

} // namespace panside
