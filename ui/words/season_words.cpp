#include "ui/words/season_words.h"

#include "core/quantity/enum_count.h"
#include "ui/look/wall_clock.h"

#include <QCoreApplication>
#include <QLocale>
#include <array>
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
    struct Row {
        SeasonFigure of;
        const char* words;
    };
    static constexpr std::array rows{Row{SeasonFigure::hours, QT_TR_NOOP("hours")},
                                     Row{SeasonFigure::sapIn, QT_TR_NOOP("sap in")},
                                     Row{SeasonFigure::sapTaken, QT_TR_NOOP("sap boiled")},
                                     Row{SeasonFigure::sapSugar, QT_TR_NOOP("its sugar")},
                                     Row{SeasonFigure::syrup, QT_TR_NOOP("syrup")},
                                     Row{SeasonFigure::draws, QT_TR_NOOP("draws")},
                                     Row{SeasonFigure::inBand, QT_TR_NOOP("in the band")},
                                     Row{SeasonFigure::wood, QT_TR_NOOP("wood")},
                                     Row{SeasonFigure::loads, QT_TR_NOOP("loads")},
                                     Row{SeasonFigure::evaporation, QT_TR_NOOP("boiled off")},
                                     Row{SeasonFigure::efficiency, QT_TR_NOOP("efficiency")},
                                     Row{SeasonFigure::syrupPerCord, QT_TR_NOOP("syrup a cord")},
                                     Row{SeasonFigure::alarms, QT_TR_NOOP("alarms")},
                                     Row{SeasonFigure::checks, QT_TR_NOOP("checks")},
                                     Row{SeasonFigure::fireInterval, QT_TR_NOOP("fired every")},
                                     Row{SeasonFigure::loadMass, QT_TR_NOOP("a load")},
                                     Row{SeasonFigure::moisture, QT_TR_NOOP("moisture")},
                                     Row{SeasonFigure::depth, QT_TR_NOOP("pan depth")},
                                     Row{SeasonFigure::stack, QT_TR_NOOP("stack")},
                                     Row{SeasonFigure::pressure, QT_TR_NOOP("air pressure")}};
    static_assert(inOrder(rows, &Row::of) && hasCount<SeasonFigure, rows.size()>());
    const auto row = static_cast<std::size_t>(figure);
    return row < rows.size() ? tr(rows[row].words) : QString{};
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
