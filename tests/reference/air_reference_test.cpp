#include "core/physics/air.h"
#include "core/physics/gas.h"
#include "tests/reference/table.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

TEST(AirReference, StationPressureAgreesWithThePublishedTables) {
    std::map<std::string, int> checked;
    for (const auto& row : published("atmosphere.csv")) {
        const std::string& kind = row.text("kind");
        const auto elevation = Length::metre(row.number("elevation_m"));
        const auto result = Pressure::kilopascal(row.number("result_kPa"));
        ++checked[kind];
        if (kind == "isa" || kind == "isa_printed_check")
            EXPECT_NEAR(standardAtmosphere(elevation)->kilopascal(), result.kilopascal(), 0.001) << elevation.metre();
        else if (kind == "qnh_to_station")
            EXPECT_NEAR(stationFromAltimeter(Pressure::kilopascal(row.number("input_kPa")), elevation)->kilopascal(),
                        result.kilopascal(), 0.001);
        else if (kind == "qnh_to_station_smithsonian") // another convention: its 0.3 hPa is the whole difference
            EXPECT_NEAR(stationFromAltimeter(Pressure::kilopascal(row.number("input_kPa")), elevation)->kilopascal(),
                        result.kilopascal(), 0.035);
        else // the table reduces station pressure to sea level; here it is undone
            EXPECT_NEAR(
                stationFromSeaLevel(result, elevation, Temperature::celsius(row.number("temperature_C")))->kilopascal(),
                row.number("input_kPa"), 0.001);
    }
    EXPECT_EQ(checked, (std::map<std::string, int>{{"isa", 14},
                                                   {"isa_printed_check", 6},
                                                   {"qnh_to_station", 50},
                                                   {"qnh_to_station_smithsonian", 3},
                                                   {"station_to_msl_pressure", 25}}));
}

// ASHRAE Fundamentals (2009), chapter 1, table 2: moist air at 101.325 kPa, saturated and dry (from memory).
TEST(AirReference, MoistAirAgreesWithThePrintedTable) {
    const auto sea = Pressure::kilopascal(101.325);
    const struct {
        double celsius, ratio, saturated, dry;
    } table[] = {{0, 0.003789, 9.473, 0},
                 {10, 0.007661, 29.354, 10.059},
                 {20, 0.014758, 57.555, 20.121},
                 {30, 0.027329, 100.006, 30.185},
                 {40, 0.049141, 166.683, 40.253}};
    for (const auto& [celsius, ratio, saturated, dry] : table) {
        const auto air = Temperature::celsius(celsius);
        const double humidity = *humidityRatio(air, 1, sea);
        EXPECT_NEAR(humidity / ratio, 1, 0.006) << celsius;
        EXPECT_NEAR(moistAirEnthalpy(air, humidity)->kilojoulePerKilogram(), saturated, 0.006 * saturated) << celsius;
        EXPECT_NEAR(moistAirEnthalpy(air, 0)->kilojoulePerKilogram(), dry, 0.05) << celsius;
    }
}

// Dry air at atmospheric pressure: enthalpy over that at 300 K, Cengel and Boles, Thermodynamics, table A-17 (from
// memory).
TEST(AirReference, HotAirAgreesWithThePrintedTable) {
    const double at300 = moistAirEnthalpy(Temperature::kelvin(300), 0)->kilojoulePerKilogram();
    const struct {
        double kelvin, step;
    } table[] = {{400, 400.98 - 300.19},
                 {500, 503.02 - 300.19},
                 {600, 607.02 - 300.19},
                 {800, 821.95 - 300.19},
                 {1000, 1046.04 - 300.19}};
    for (const auto& [kelvin, step] : table)
        EXPECT_NEAR(moistAirEnthalpy(Temperature::kelvin(kelvin), 0)->kilojoulePerKilogram() - at300, step, 0.01 * step)
            << kelvin;
}

// Siegert's formula for wood, q = (t - air)(0.765/CO2 + ...) in the form A/(21 - O2) + B with A 0.66 and B 0.009
// (German practice, from memory): per cent of the lower heating value. Made for 20 percent moisture or so; 15 percent
// apart is usual.
TEST(AirReference, FlueLossIsNearSiegertsFormula) {
    for (const double oxygen : {0.05, 0.08, 0.105, 0.13})
        for (const double celsius : {200.0, 300.0, 400.0}) {
            const double siegert = (celsius - 20) * (0.66 / (21 - 100 * oxygen) + 0.009) / 100;
            const double loss = *flueLoss(*woodNamed("hardwood"), WetBasis::percent(20), Temperature::celsius(celsius),
                                          Temperature::celsius(20), oxygen / (0.2095 - oxygen));
            EXPECT_NEAR(loss, siegert, 0.15 * siegert) << oxygen << " oxygen, " << celsius << " degC";
        }
}

} // namespace
} // namespace panside
