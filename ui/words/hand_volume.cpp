#include "ui/words/hand_volume.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

namespace panside {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("BookWords", text); }

constexpr double cupsInGallon = 16, spoonsInCup = 16;       // tablespoons
constexpr double fromQuarts = 0.47, fromPints = 0.11;       // gallons
constexpr double fromLitres = 0.9995, fewMillilitres = 5.0; // litres; millilitres

QString numbered(double number, int decimals, const QString& unit) {
    return QLocale{}.toString(number, 'f', decimals) + QChar{0x00a0} + unit;
}

// Quarts and pints are shortened; a cup is a word and takes its plural: over one in English, from two on in French.
QString jugWord(Unit unit, long long quarters) {
    if (unit != Unit::cup)
        return symbolOf(unit);
    return quarters <= 4 ? tr("cup")
                         : QCoreApplication::translate("BookWords", "cups", nullptr, static_cast<int>(quarters / 4));
}

// How much as a cook says it, in quarters of a measure of so many in a gallon; empty where it is none.
HandAmount inQuarters(Volume volume, double inGallon, Unit unit) {
    const auto quarters = static_cast<long long>(std::llround(volume.gallon() * inGallon * 4));
    if (quarters == 0)
        return {};
    static const QString parts[] = {QString{}, QStringLiteral("¼"), QStringLiteral("½"), QStringLiteral("¾")};
    const QString whole = quarters / 4 > 0 ? QString::number(quarters / 4) : QString{};
    return {whole + parts[quarters % 4] + QChar{0x00a0} + jugWord(unit, quarters),
            Volume::gallon(static_cast<double>(quarters) / 4 / inGallon)};
}

bool isWithin(const HandAmount& amount, Volume volume, Volume within) {
    return !amount.text.isEmpty() && std::abs((amount.said - volume).litre()) <= within.litre();
}

// Cups and what is over: in tablespoons, or as fine as half teaspoons, of which there are three in one.
HandAmount inSpoons(Volume volume, Volume within) {
    const double quarters = std::floor(volume.gallon() * cupsInGallon * 4 + 1e-9) / 4;
    HandAmount whole = inQuarters(Volume::gallon(quarters / cupsInGallon), cupsInGallon, Unit::cup);
    const Volume over = volume - whole.said;
    const auto with = [&whole](const HandAmount& spoons) {
        if (whole.text.isEmpty() || spoons.text.isEmpty())
            return whole.text.isEmpty() ? spoons : whole;
        return HandAmount{whole.text + QStringLiteral(" + ") + spoons.text, whole.said + spoons.said};
    };
    const double inGallon = spoonsInCup * cupsInGallon;
    const auto spoons = std::llround(over.gallon() * inGallon);
    const HandAmount table = spoons == 0 ? HandAmount{}
                                         : HandAmount{numbered(static_cast<double>(spoons), 0, tr("tbsp")),
                                                      Volume::gallon(static_cast<double>(spoons) / inGallon)};
    if (const HandAmount all = with(table); isWithin(all, volume, within))
        return all;
    const auto halves = std::max(1LL, std::llround(over.gallon() * inGallon * 6));
    return with({(halves > 1 ? QString::number(halves / 2) : QString{}) +
                     (halves % 2 == 1 ? QStringLiteral("½") : QString{}) + QChar{0x00a0} + tr("tsp"),
                 Volume::gallon(static_cast<double>(halves) / 6 / inGallon)});
}

HandAmount rounded(Volume volume, Unit unit, int decimals) {
    const double step = std::pow(10, -decimals), number = std::round(fromSi(volume.si(), unit) / step) * step;
    return {numbered(number, decimals, symbolOf(unit)), Volume::ofSi(toSi(number, unit))};
}

HandAmount metricAmount(Volume volume, Volume within) {
    if (volume.litre() >= fromLitres)
        for (int decimals = 1; decimals <= 2; ++decimals)
            if (const HandAmount amount = rounded(volume, Unit::L, decimals); isWithin(amount, volume, within))
                return amount;
    const double millilitres = std::round(volume.litre() * 1000 / fewMillilitres) * fewMillilitres;
    const HandAmount few{numbered(millilitres, 0, symbolOf(Unit::mL)), Volume::litre(millilitres / 1000)};
    return isWithin(few, volume, within) && millilitres > 0 ? few : rounded(volume, Unit::mL, 0);
}

} // namespace

QString handVolume(Volume volume, Units units) {
    if (units == Units::metric)
        return volume.litre() >= fromLitres || volume.si() == 0
                   ? figure(volume, units).text()
                   : numbered(std::round(volume.litre() * 1000 / fewMillilitres) * fewMillilitres, 0,
                              symbolOf(Unit::mL));
    if (volume.gallon() >= 1.5 || volume.si() == 0)
        return figure(volume, units).text();
    // Quarts, pints and cups: what stands on the jug that a hand takes.
    if (volume.gallon() >= fromQuarts)
        return inQuarters(volume, 4, Unit::qt).text;
    if (volume.gallon() >= fromPints)
        return inQuarters(volume, 8, Unit::pt).text;
    const QString cups = inQuarters(volume, cupsInGallon, Unit::cup).text;
    return cups.isEmpty() ? QStringLiteral("¼") + QChar{0x00a0} + jugWord(Unit::cup, 1) : cups;
}

HandAmount handAmount(Volume volume, Units units, Volume within) {
    if (units == Units::metric)
        return metricAmount(volume, within);
    if (volume.gallon() >= 1.5)
        for (int decimals = 1; decimals <= 2; ++decimals)
            if (const HandAmount amount = rounded(volume, Unit::gal, decimals); isWithin(amount, volume, within))
                return amount;
    const struct {
        double from, inGallon;
        Unit unit;
    } jugs[] = {{fromQuarts, 4, Unit::qt}, {fromPints, 8, Unit::pt}, {0, cupsInGallon, Unit::cup}};
    for (const auto& jug : jugs)
        if (volume.gallon() >= jug.from)
            if (const HandAmount amount = inQuarters(volume, jug.inGallon, jug.unit); isWithin(amount, volume, within))
                return amount;
    return inSpoons(volume, within);
}

} // namespace panside
