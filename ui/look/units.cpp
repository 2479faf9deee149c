#include "ui/look/units.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace panside {
namespace {

QString number(double value, int decimals) {
    if (std::abs(value) < 0.5 * std::pow(10.0, -decimals))
        value = 0; // no "-0.0"
    QString text = QLocale{}.toString(value, 'f', decimals);
    return text.replace(u'-', QChar{0x2212});
}

// Few digits where there are many before the point: 0.53, 5.3, 53, 1530.
int decimalsFor(double value) {
    const double size = std::abs(value);
    return size < 1 ? 2 : size < 20 ? 1 : 0;
}

Figure in(Unit unit, double si) {
    const double value = fromSi(si, unit);
    return {number(value, decimalsFor(value)), symbolOf(unit)};
}

QString unitWord(const char* word) { return QCoreApplication::translate("Units", word); }

} // namespace

QString Figure::text() const { return unit.isEmpty() ? number : number + QChar{0x00a0} + unit; }

Figure figure(Temperature temperature, Units units, int decimals) {
    return units == Units::us ? Figure{number(temperature.fahrenheit(), decimals), symbolOf(Unit::degF)}
                              : Figure{number(temperature.celsius(), decimals), symbolOf(Unit::degC)};
}

Figure figure(TemperatureDifference step, Units units, int decimals) {
    return units == Units::us ? Figure{number(step.fahrenheit(), decimals), symbolOf(Unit::degF)}
                              : Figure{number(step.kelvin(), decimals), symbolOf(Unit::degC)};
}

Figure figure(Pressure pressure, Units units) {
    return units == Units::us ? Figure{number(pressure.inchesOfMercury(), 2), symbolOf(Unit::inHg)}
                              : Figure{number(pressure.kilopascal(), 2), symbolOf(Unit::kPa)};
}

Figure gaugeFigure(Pressure pressure, Units units) {
    return units == Units::us ? Figure{number(pressure.psi(), 0), symbolOf(Unit::psi)}
                              : Figure{number(pressure.kilopascal(), 0), symbolOf(Unit::kPa)};
}

Figure figure(Volume volume, Units units) { return in(unitOf(Dimension::volume, units), volume.si()); }
Figure figure(VolumeFlow flow, Units units) { return in(unitOf(Dimension::volumeFlow, units), flow.si()); }
Figure figure(Mass mass, Units units) { return in(unitOf(Dimension::mass, units), mass.si()); }

Figure figure(Length depth, Units units) {
    return units == Units::us ? Figure{number(depth.inch(), 1), symbolOf(Unit::in)}
                              : Figure{number(depth.millimetre(), 0), symbolOf(Unit::mm)};
}

Figure figure(Brix sugar) { return {number(sugar.degrees(), 1), symbolOf(Unit::brix)}; }

Unit unitOf(Dimension dimension, Units units) {
    const bool us = units == Units::us;
    switch (dimension) {
    case Dimension::temperature:
    case Dimension::temperatureDifference:
        return us ? Unit::degF : Unit::degC;
    case Dimension::pressure:
        return us ? Unit::inHg : Unit::kPa;
    case Dimension::length:
        return us ? Unit::in : Unit::mm;
    case Dimension::area:
        return us ? Unit::ft2 : Unit::m2;
    case Dimension::volume:
        return us ? Unit::gal : Unit::L;
    case Dimension::volumeFlow:
        return us ? Unit::galph : Unit::Lph;
    case Dimension::mass:
        return us ? Unit::lb : Unit::kg;
    case Dimension::sugar:
        return Unit::brix;
    case Dimension::share:
        return Unit::percent;
    case Dimension::time:
        return Unit::min;
    case Dimension::voltage:
        return Unit::mV;
    case Dimension::resistance:
        return Unit::ohm;
    case Dimension::trace:
        return Unit::ppb;
    case Dimension::age:
        return Unit::years;
    case Dimension::none:
        break;
    }
    return Unit::none;
}

QString symbolOf(Unit unit) {
    switch (unit) {
    case Unit::degC:
        return QStringLiteral("°C");
    case Unit::degF:
        return QStringLiteral("°F");
    case Unit::m2:
        return QStringLiteral("m²");
    case Unit::ft2:
        return QStringLiteral("ft²");
    case Unit::brix:
        return QStringLiteral("°Brix");
    case Unit::baume:
        return QStringLiteral("°Bé");
    case Unit::percent:
        return QStringLiteral("%");
    case Unit::ohm:
        return QStringLiteral("Ω");
    default: {
        const auto name = nameOf(unit);
        return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
    }
    }
}

QString hoursText(long long minutes) {
    const QChar joint{0x00a0};
    return QString::number(minutes / 60) + joint + unitWord(QT_TRANSLATE_NOOP("Units", "h")) + joint +
           QStringLiteral("%1").arg(minutes % 60, 2, 10, QChar{u'0'});
}

QString spanText(Duration span) {
    const auto whole = static_cast<long long>(std::llround(std::abs(span.count())));
    const QChar joint{0x00a0};
    if (whole < 90)
        return QString::number(whole) + joint + unitWord(QT_TRANSLATE_NOOP("Units", "s"));
    const long long minutes = (whole + 30) / 60;
    if (minutes < 90)
        return QString::number(minutes) + joint + unitWord(QT_TRANSLATE_NOOP("Units", "min"));
    const long long hours = (minutes + 30) / 60;
    if (hours < 48)
        return hoursText(minutes);
    const QString days = QString::number(hours / 24) + joint + unitWord(QT_TRANSLATE_NOOP("Units", "d"));
    if (hours >= 240 || hours % 24 == 0)
        return days;
    return days + joint + QString::number(hours % 24) + joint + unitWord(QT_TRANSLATE_NOOP("Units", "h"));
}

QString leftText(Duration left) {
    if (left < nearest)
        return unitWord(QT_TRANSLATE_NOOP("Units", "under 2 min"));
    const auto minutes = static_cast<long long>(left.count() / 60);
    return minutes < 90 ? QString::number(minutes) + QChar{0x00a0} + unitWord(QT_TRANSLATE_NOOP("Units", "min"))
                        : hoursText(minutes);
}

} // namespace panside
