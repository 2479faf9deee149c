// The trade's own figures, all that a function can answer. Where the two disagree the row says why, and this test fails
// as soon as they begin to agree, so that the list stays true.
#include "core/physics/air.h"
#include "core/physics/baume.h"
#include "core/physics/hydrometer.h"
#include "core/physics/sap.h"
#include "core/physics/sugar.h"
#include "core/physics/sugar_density.h"
#include "core/physics/sugar_heat.h"
#include "core/physics/water.h"
#include "core/physics/wood.h"
#include "tests/reference/table.h"

#include <cmath>
#include <functional>
#include <gtest/gtest.h>
#include <sstream>

namespace panside {
namespace {

constexpr auto sea = Pressure::kilopascal(101.325);
constexpr auto cold = Temperature::celsius(20);
constexpr auto scale60 = Temperature::fahrenheit(60);

using Numbers = std::vector<double>;
using Asked = std::function<double(const Numbers&, const std::string&)>;

double rise(double brix) { return boilingRise(Brix::degrees(brix), sea)->kelvin(); }
double shown(double brix, double fahrenheit) {
    return hydrometerReading(Brix::degrees(brix), Temperature::fahrenheit(fahrenheit), scale60)->degrees();
}
double boiling(double kilopascal) { return waterBoilingPoint(Pressure::kilopascal(kilopascal))->celsius(); }
Mass massOf(double brix, Volume volume) { return *sugarDensity(Brix::degrees(brix), cold) * volume; }
double grossCord(const std::string& name) {
    const Wood wood = *woodNamed(name);
    const auto moisture = WetBasis::percent(20);
    return (*higherHeat(wood, moisture) * *cordMass(wood, moisture)).joule() / joulePerBtu / 1e6;
}
double syrupHeat(double sap, double syrup) {
    const double litres = *sapPerSyrup(Brix::degrees(sap), Brix::degrees(syrup)) * Volume::litresPerGallon;
    const Mass water = massOf(sap, Volume::litre(litres)) * (1 - sap / syrup);
    return (*heatToBoilAway(Temperature::fahrenheit(40), sea) * water).joule() / joulePerBtu;
}

const std::map<std::string, Asked>& questions() {
    static const std::map<std::string, Asked> table{
        {"plainRule", [](const Numbers& n, auto&) { return *ruleOf86(Brix::degrees(n[0])); }},
        {"revisedRule", [](const Numbers& n, auto&) { return *revisedRule(Brix::degrees(n[0]), Brix::degrees(n[1])); }},
        {"massBalance", [](const Numbers& n, auto&) { return *sapPerSyrup(Brix::degrees(n[0]), Brix::degrees(n[1])); }},
        {"gallonsPerSquareFoot",
         [](const Numbers& n, auto&) { return (Area::squareFoot(1) * Length::inch(n[0])).gallon(); }},
        {"minutesToDry",
         [](const Numbers& n, auto&) {
             return seconds(Area::squareFoot(1) * Length::inch(n[0]) / VolumeFlow::gallonPerHour(n[1])) / 60;
         }},
        {"minutesToDryVolume",
         [](const Numbers& n, auto&) { return seconds(Volume::gallon(n[0]) / VolumeFlow::gallonPerHour(n[1])) / 60; }},
        {"keepBack",
         [](const Numbers& n, auto&) {
             return sapToKeepBack(Area::squareFoot(n[0]), Length::inch(n[1]), VolumeFlow::gallonPerHour(n[2]),
                                  Duration{n[3] * 60})
                 ->gallon();
         }},
        {"riseC", [](const Numbers& n, auto&) { return rise(n[0]); }},
        {"riseF", [](const Numbers& n, auto&) { return rise(n[0]) * 1.8; }},
        {"finishC", [](const Numbers& n, auto&) { return boiling(101.325) + rise(n[0]); }},
        {"riseSlope", [](const Numbers& n, auto&) { return rise(n[0] + 0.5) - rise(n[0] - 0.5); }},
        {"inHgPerF",
         [](const Numbers&, auto&) {
             return 1 / ((boiling(101.8) - boiling(100.8)) * 1.8 * Pressure::inchesOfMercury(1).kilopascal());
         }},
        {"celsiusPerHectopascal", [](const Numbers&, auto&) { return (boiling(101.825) - boiling(100.825)) / 10; }},
        {"boilingC", [](const Numbers& n, auto&) { return boiling(n[0] / 10); }},
        {"feetPerF",
         [](const Numbers&, auto&) {
             const auto low = *waterBoilingPoint(*standardAtmosphere(Length::foot(0)));
             const auto high = *waterBoilingPoint(*standardAtmosphere(Length::foot(1000)));
             return 1000 / (low - high).fahrenheit();
         }},
        {"reading", [](const Numbers& n, auto&) { return shown(n[0], n[1]); }},
        {"readingBaume",
         [](const Numbers& n, auto&) { return baumeOf(Brix::degrees(shown(n[0], n[1])), scale60)->degrees; }},
        {"readingSlope", [](const Numbers& n, auto&) { return (shown(n[0], 209) - shown(n[0], 50)) / 159; }},
        {"heatPerSyrupGallon", [](const Numbers& n, auto&) { return syrupHeat(n[0], n[1]); }},
        {"heatPerGallon",
         [](const Numbers& n, auto&) {
             const Mass gallon = *waterDensity(scale60) * Volume::gallon(1);
             return (*heatToBoilAway(Temperature::fahrenheit(n[0]), sea) * gallon).joule() / joulePerBtu;
         }},
        {"cordHeat", [](const Numbers&, const std::string& name) { return grossCord(name); }},
        {"heatPerPound",
         [](const Numbers& n, auto&) {
             return higherHeat(*woodNamed("hardwood"), WetBasis::percent(n[0]))->btuPerPound();
         }},
        {"cubicFeetPerCord",
         [](const Numbers&, auto&) {
             const Wood wood = *woodNamed("hardwood"); // 85 of 128 cubic feet are wood
             const double solid = cordMass(wood, WetBasis{0})->kilogram() / (1000 * wood.gravity) / std::pow(0.3048, 3);
             return solid * 128 / 85;
         }},
        {"poundsPerGallon", [](const Numbers& n, auto&) { return massOf(n[0], Volume::gallon(1)).pound(); }},
        {"drumPounds", [](const Numbers& n, auto&) { return massOf(66.9, Volume::litre(n[0])).pound(); }},
        {"sugarPounds", [](const Numbers& n, auto&) { return massOf(n[0], Volume::gallon(1)).pound() * n[0] / 100; }}};
    return table;
}

double answerTo(const std::string& ask) {
    std::istringstream in{ask};
    std::string question;
    std::string word;
    in >> question;
    Numbers numbers;
    while (in >> word)
        if (const double value = std::strtod(word.c_str(), nullptr); value != 0 || word == "0")
            numbers.push_back(value);
    return questions().at(question)(numbers, word);
}

// "u": within the standard uncertainty that the rise itself states, in the row's own degrees.
double toleranceOf(const PublishedRow& row) {
    if (row.text("tolerance") != "u")
        return row.number("tolerance");
    const double brix = std::strtod(row.text("ask").substr(row.text("ask").find(' ')).c_str(), nullptr);
    return boilingRiseUncertainty(Brix::degrees(brix))->kelvin() * (row.text("unit") == "degF" ? 1.8 : 1);
}

TEST(TradeReference, AgreesWithTheTradesFiguresOrSaysWhyNot) {
    int agreeing = 0;
    int differing = 0;
    for (const auto& row : published("trade_checks.csv")) {
        const double answer = answerTo(row.text("ask"));
        const bool agrees = std::abs(answer - row.number("value")) <= toleranceOf(row);
        EXPECT_EQ(agrees, !row.has("differs"))
            << row.text("quantity") << ", " << row.text("conditions") << ": " << row.number("value") << " published, "
            << answer << " here, tolerance " << toleranceOf(row) << ", differs: " << row.text("differs");
        ++(row.has("differs") ? differing : agreeing);
    }
    EXPECT_EQ(agreeing, 124);
    EXPECT_EQ(differing, 33);
}

} // namespace
} // namespace panside
