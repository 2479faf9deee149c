// Sums of where water and syrup boil.
#include "core/physics/air.h"
#include "core/physics/range.h"
#include "core/physics/reckon_kinds.h"
#include "core/physics/sugar.h"
#include "core/physics/water.h"

#include <cmath>

namespace panside::sums {
namespace {

constexpr double leastKilopascal = 50;
constexpr double mostKilopascal = 110;
constexpr double mostBoiled = 78;                    // brix: as far as boilingRise reaches
constexpr Pressure barometer = Pressure::pascal(50); // standard uncertainty of one that was set with care
constexpr std::string_view hydrometerDecides =
    "A temperature is advice: the hydrometer decides. Boiling syrup and steam burn.";
constexpr std::string_view pressureCaution =
    "Only station pressure boils water. Check it once a day in plain boiling water, on the probe that you use.";

struct Station {
    Pressure pressure;
    Pressure uncertainty;
    Sentence how;
};

Station fromBarometer(Reader& in) {
    const Pressure pressure = in.pressure("pressure", leastKilopascal, mostKilopascal);
    return {pressure, barometer, say("The barometer at the pan reads %1 kPa.", {number(pressure.kilopascal(), 2)})};
}

Station fromWeatherReport(Reader& in) {
    const auto sea = in.pressure("sea-level", 85, mostKilopascal);
    const auto height = in.amount<Length>("elevation", {-500, 5000, Unit::m});
    std::optional<Temperature> air;
    if (in.has("air"))
        air = in.temperature("air", -50, 50);
    const std::string pressure = number(sea.kilopascal(), 2);
    const std::string metres = number(height.metre(), 0);
    return {
        *stationFromSeaLevel(sea, height, air), *stationFromSeaLevelUncertainty(sea, height, air),
        air ? say("Sea level pressure %1 kPa less the weight of %2 m of air at %3 °C.",
                  {pressure, metres, number(air->celsius(), 1)})
            : say("Sea level pressure %1 kPa less the weight of %2 m of air, taken to be at %3 °C as it is not known.",
                  {pressure, metres, "0.0"})};
}

Station fromAirfield(Reader& in) {
    const auto setting = in.pressure("altimeter", 85, mostKilopascal);
    const auto height = in.amount<Length>("elevation", {-500, 5000, Unit::m});
    return {*stationFromAltimeter(setting, height), barometer,
            say("Altimeter setting %1 kPa less %2 m of the standard atmosphere (no thermometer is needed).",
                {number(setting.kilopascal(), 2), number(height.metre(), 0)})};
}

Station stationOf(Reader& in) {
    const int ways = in.has("pressure") + in.has("sea-level") + in.has("altimeter");
    if (ways == 0)
        in.refuseUsage("pressure", {say("it is needed here, as in %1; or --sea-level or --altimeter with --elevation.",
                                        {"98.7kPa"})});
    if (ways > 1)
        in.refuseUsage("pressure", {say("give one pressure: --pressure, --sea-level or --altimeter.")});
    if (in.has("pressure") && in.has("elevation"))
        in.refuseUsage("elevation", {say("a station pressure needs no elevation. If it was reduced to sea level, write "
                                         "--sea-level in place of --pressure.")});
    if (in.has("air") && !in.has("sea-level"))
        in.refuseUsage("air", {say("it goes with --sea-level only.")});
    return in.has("pressure") ? fromBarometer(in) : in.has("sea-level") ? fromWeatherReport(in) : fromAirfield(in);
}

TemperatureDifference boilingUncertainty(const Station& station) {
    const auto above = waterBoilingPoint(station.pressure + station.uncertainty);
    return *above - *waterBoilingPoint(station.pressure);
}

Sentence boilsAt(const Station& station, Temperature water) {
    return say("At %1 kPa water boils at %2 °C.",
               {number(station.pressure.kilopascal(), 2), number(water.celsius(), 2)});
}

Answer targetAnswer(const Station& station, Brix sugar, TemperatureDifference rise, std::vector<Sentence> sum) {
    const Temperature water = *waterBoilingPoint(station.pressure);
    const double ofRise = boilingRiseUncertainty(sugar)->kelvin();
    const double uncertainty = std::hypot(ofRise, boilingUncertainty(station).kelvin());
    const auto ofSugar = sugarAtRiseUncertainty(rise, station.pressure, TemperatureDifference::kelvin(0));
    sum.push_back(say("Boiling water and the rise together: %1 °C.", {number((water + rise).celsius(), 2)}));
    return {.figures = {{"targetC", (water + rise).celsius(), "Syrup boils at", sayTemperature(water + rise)},
                        {"riseC", rise.kelvin(), "Rise above boiling water", sayDifference(rise)},
                        {"brix", sugar.degrees(), "Density", saySugar(sugar)},
                        {"uncertaintyC", uncertainty, "Standard uncertainty",
                         sayDifference(TemperatureDifference::kelvin(uncertainty))}},
            .sum = std::move(sum),
            .uncertainty =
                say("One standard uncertainty is %1 C°, or %2 °Brix, before a hydrometer has trimmed the probe. "
                    "Late syrup with much invert sugar boils up to 0.3 °C hotter.",
                    {number(uncertainty, 2), ofSugar ? number(ofSugar->degrees(), 1) : "?"}),
            .source = "Rise: Starzak and Peacock 1997. Boiling water: IAPWS R7-97(2012)",
            .caution = hydrometerDecides};
}

} // namespace

Answer reckonBoiling(Reader& in) {
    const Station station = stationOf(in);
    const Temperature water = *waterBoilingPoint(station.pressure);
    const TemperatureDifference uncertainty = boilingUncertainty(station);
    return {
        .figures = {{"waterBoilsC", water.celsius(), "Water boils at", sayTemperature(water)},
                    {"pressureKPa", station.pressure.kilopascal(), "Station pressure", sayPressure(station.pressure)}},
        .sum = {station.how, boilsAt(station, water)},
        .uncertainty = say("Pressure is taken as known to %1 kPa, which is %2 C° of boiling water.",
                           {number(station.uncertainty.kilopascal(), 2), number(uncertainty.kelvin(), 2)}),
        .source = "IAPWS R7-97(2012), equation 31; ISO 2533:1975",
        .caution = pressureCaution};
}

Answer reckonTarget(Reader& in) {
    const Station station = stationOf(in);
    in.oneOf("density", "rise", say("give one of --density and --rise."));
    if (!within(station.pressure.kilopascal(), 60, 110))
        in.refuse({}, {},
                  {say("the station pressure comes to %1 kPa; the rise of syrup is known from 60 to 110 kPa.",
                       {number(station.pressure.kilopascal(), 1)})});
    const Sentence waterStep = boilsAt(station, *waterBoilingPoint(station.pressure));
    if (in.has("density")) {
        const Brix sugar = in.sugar("density", Temperature::celsius(20), mostBoiled);
        const auto rise = *boilingRise(sugar, station.pressure);
        return targetAnswer(station, sugar, rise,
                            {station.how, waterStep,
                             say("%1 °Brix boils %2 C° above water at that pressure.",
                                 {number(sugar.degrees(), 2), number(rise.kelvin(), 2)})});
    }
    const auto rise = in.difference("rise", boilingRise(Brix::degrees(mostBoiled), station.pressure)->kelvin());
    const auto sugar = *sugarAtRise(rise, station.pressure);
    return targetAnswer(station, sugar, rise,
                        {station.how, waterStep,
                         say("A rise of %1 C° at that pressure means %2 °Brix.",
                             {number(rise.kelvin(), 2), number(sugar.degrees(), 2)})});
}

} // namespace panside::sums
