#include "ui/look/units.h"

#include "core/quantity/enum_count.h"

#include <QCoreApplication>
#include <QLocale>
#include <array>
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

// What a dimension is shown in.
struct UnitRow {
    Dimension dimension;
    Unit us, metric;
};
constexpr std::array unitRows{UnitRow{Dimension::none, Unit::none, Unit::none},
                              UnitRow{Dimension::temperature, Unit::degF, Unit::degC},
                              UnitRow{Dimension::temperatureDifference, Unit::degF, Unit::degC},
                              UnitRow{Dimension::pressure, Unit::inHg, Unit::kPa},
                              UnitRow{Dimension::length, Unit::in, Unit::mm},
                              UnitRow{Dimension::area, Unit::ft2, Unit::m2},
                              UnitRow{Dimension::volume, Unit::gal, Unit::L},
                              UnitRow{Dimension::volumeFlow, Unit::galph, Unit::Lph},
                              UnitRow{Dimension::mass, Unit::lb, Unit::kg},
                              UnitRow{Dimension::sugar, Unit::brix, Unit::brix},
                              UnitRow{Dimension::share, Unit::percent, Unit::percent},
                              UnitRow{Dimension::time, Unit::min, Unit::min},
                              UnitRow{Dimension::voltage, Unit::mV, Unit::mV},
                              UnitRow{Dimension::resistance, Unit::ohm, Unit::ohm},
                              UnitRow{Dimension::trace, Unit::ppb, Unit::ppb},
                              UnitRow{Dimension::age, Unit::years, Unit::years}};
static_assert(inOrder(unitRows, &UnitRow::dimension) && hasCount<Dimension, unitRows.size()>());

QString tr(const char* text) { return QCoreApplication::translate("Units", text); }

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
    const UnitRow& row = unitRows.at(static_cast<std::size_t>(dimension));
    return units == Units::us ? row.us : row.metric;
}

QString symbolOf(Unit unit) {
    static constexpr std::pair<Unit, const char*> signs[] = {
        {Unit::degC, "°C"},    {Unit::degF, "°F"},   {Unit::m2, "m²"},     {Unit::ft2, "ft²"},
        {Unit::brix, "°Brix"}, {Unit::baume, "°Bé"}, {Unit::percent, "%"}, {Unit::ohm, "Ω"}};
    for (const auto& [of, sign] : signs)
        if (of == unit)
            return QString::fromUtf8(sign);
    const auto name = nameOf(unit);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QString hoursText(long long minutes) {
    const QChar joint{0x00a0};
    return QString::number(minutes / 60) + joint + tr("h") + joint +
           QStringLiteral("%1").arg(minutes % 60, 2, 10, QChar{u'0'});
}

QString spanText(Duration span) {
    const auto whole = static_cast<long long>(std::llround(std::abs(span.count())));
    const QChar joint{0x00a0};
    if (whole < 90)
        return QString::number(whole) + joint + tr("s");
    const long long minutes = (whole + 30) / 60;
    if (minutes < 90)
        return QString::number(minutes) + joint + tr("min");
    const long long hours = (minutes + 30) / 60;
    if (hours < 48)
        return hoursText(minutes);
    const QString days = QString::number(hours / 24) + joint + tr("d");
    if (hours >= 240 || hours % 24 == 0)
        return days;
    return days + joint + QString::number(hours % 24) + joint + tr("h");
}

QString leftText(Duration left) {
    if (left < nearest)
        return tr("under 2 min");
    const auto minutes = static_cast<long long>(left.count() / 60);
    return minutes < 90 ? QString::number(minutes) + QChar{0x00a0} + tr("min") : hoursText(minutes);
}

} // namespace panside
