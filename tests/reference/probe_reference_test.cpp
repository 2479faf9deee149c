#include "core/physics/platinum.h"
#include "core/physics/thermocouple.h"
#include "tests/reference/table.h"

#include <cmath>
#include <gtest/gtest.h>

namespace panside {
namespace {

Thermocouple typeNamed(const std::string& name) {
    return name == "K" ? Thermocouple::K : name == "J" ? Thermocouple::J : Thermocouple::T;
}

// The printed tables of NIST Monograph 175 over the whole range, every 10 degC, three decimals.
TEST(ThermocoupleReference, ReproducesThePrintedTablesToTheLastDigitBothWays) {
    std::map<std::string, int> checked;
    for (const auto& row : published("thermocouple.csv")) {
        const auto type = typeNamed(row.text("type"));
        const auto temperature = Temperature::celsius(row.number("temperature_C"));
        const double emf = row.number("emf_mV");
        EXPECT_NEAR(thermocoupleVoltage(type, temperature)->millivolt(), emf, 0.000501)
            << row.text("type") << " at " << temperature.celsius();
        // Backwards: the printed voltage is rounded to 0.001 mV, so half of that over the slope is what can be asked.
        const double slope =
            (thermocoupleVoltage(type, Temperature::celsius(temperature.celsius() + (emf > 0 ? -1 : 1)))->millivolt() -
             thermocoupleVoltage(type, temperature)->millivolt()) *
            (emf > 0 ? -1 : 1);
        const auto back = thermocoupleTemperature(type, Voltage::millivolt(emf));
        if (!back) { // at the very end the rounding may lie outside the range
            EXPECT_TRUE(temperature.celsius() <= -200 || temperature.celsius() >= 400);
            continue;
        }
        EXPECT_NEAR(back->celsius(), temperature.celsius(), 0.00055 / slope);
        ++checked[row.text("type")];
    }
    EXPECT_GE(checked["K"], 157);
    EXPECT_GE(checked["J"], 96);
    EXPECT_GE(checked["T"], 59);
}

TEST(ThermocoupleReference, AVoltageReturnsTheTemperatureItCameFrom) {
    for (const auto& [type, coldest, hottest] :
         {std::tuple{Thermocouple::K, -200, 1372}, {Thermocouple::J, -210, 760}, {Thermocouple::T, -200, 400}})
        for (int celsius = coldest; celsius <= hottest; ++celsius) {
            const auto temperature = Temperature::celsius(celsius);
            const auto voltage = thermocoupleVoltage(type, temperature);
            ASSERT_TRUE(voltage) << celsius;
            EXPECT_NEAR(thermocoupleTemperature(type, *voltage)->celsius(), celsius, 0.001);
        }
}

// Emfs add: a pair at 100 degC with its other end at 25 gives 4.096 - 1.000 mV (type K table).
TEST(ThermocoupleReference, TheColdJunctionIsAddedAsAVoltage) {
    const auto junction = Temperature::celsius(25);
    EXPECT_NEAR(thermocoupleTemperature(Thermocouple::K, Voltage::millivolt(4.096 - 1.000), junction)->celsius(), 100,
                0.025);
    EXPECT_NEAR(thermocoupleVoltage(Thermocouple::K, Temperature::celsius(100), junction)->millivolt(), 3.096, 0.001);
}

TEST(ThermocoupleReference, AnOpenPairOrAHotHeadIsRefused) {
    EXPECT_EQ(thermocoupleTemperature(Thermocouple::K, Voltage::millivolt(60)), std::nullopt);
    EXPECT_EQ(thermocoupleTemperature(Thermocouple::T, Voltage::millivolt(-7)), std::nullopt);
    EXPECT_EQ(thermocoupleTemperature(Thermocouple::K, Voltage::millivolt(1), Temperature::celsius(200)), std::nullopt);
    EXPECT_EQ(thermocoupleVoltage(Thermocouple::J, Temperature::celsius(800)), std::nullopt);
}

TEST(PlatinumReference, ReproducesThePrintedTableToTheLastDigitBothWays) {
    int checked = 0;
    for (const auto& row : published("platinum.csv")) {
        const auto temperature = Temperature::celsius(row.number("temperature_C"));
        if (row.text("kind") == "slope") {
            const auto above = platinumResistance(Temperature::celsius(row.number("temperature_C") + 0.01));
            EXPECT_NEAR((above->ohm() - platinumResistance(temperature)->ohm()) / 0.01, row.number("value"), 1e-4);
            continue;
        }
        EXPECT_NEAR(platinumResistance(temperature)->ohm(), row.number("value"), 0.00501) << temperature.celsius();
        EXPECT_NEAR(platinumTemperature(Resistance::ohm(row.number("value")))->celsius(), temperature.celsius(), 0.016);
        ++checked;
    }
    EXPECT_EQ(checked, 33);
    EXPECT_EQ(platinumTemperature(Resistance::ohm(18)), std::nullopt);
    EXPECT_EQ(platinumTemperature(Resistance::ohm(391)), std::nullopt);
}

} // namespace
} // namespace panside
