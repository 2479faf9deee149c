#include "core/physics/sugar_heat.h"
#include "core/physics/water.h"
#include "tests/reference/table.h"

#include <array>
#include <cstdio>
#include <gtest/gtest.h>
#include <memory>

namespace panside {
namespace {

TEST(WaterReference, BoilsWhereThePublishedTableSays) {
    int checked = 0;
    for (const auto& row : published("water_saturation.csv")) {
        if (row.text("kind") == "slope_C_per_kPa")
            continue;
        const auto pressure = Pressure::kilopascal(row.number("pressure_kPa"));
        if (row.text("kind") == "verification_p_from_T") {
            const double saturation = saturationPressure(Temperature::celsius(row.number("boiling_C")))->kilopascal();
            EXPECT_NEAR(saturation / row.number("pressure_kPa"), 1, 2e-9);
        } else
            EXPECT_NEAR(waterBoilingPoint(pressure)->celsius(), row.number("boiling_C"), 0.0006)
                << pressure.kilopascal();
        ++checked;
    }
    EXPECT_EQ(checked, 20);
}

TEST(WaterReference, BoilingPointClimbsWithPressureAsPublished) {
    for (const auto& row : published("water_saturation.csv")) {
        if (row.text("kind") != "slope_C_per_kPa")
            continue;
        const double kilopascal = row.number("pressure_kPa");
        const double slope = (*waterBoilingPoint(Pressure::kilopascal(kilopascal + 0.05)) -
                              *waterBoilingPoint(Pressure::kilopascal(kilopascal - 0.05)))
                                 .kelvin() /
                             0.1;
        EXPECT_NEAR(slope, row.number("boiling_C"), 2e-5) << kilopascal;
    }
}

// IAPWS-95 by an independent library.
TEST(WaterReference, HeatOfBoilingAgreesWithThePublishedValues) {
    for (const auto& row : published("water_heat.csv")) {
        if (row.text("kind") == "latent_heat")
            EXPECT_NEAR(latentHeat(row.has("temperature")
                                       ? Temperature::celsius(row.number("temperature"))
                                       : *waterBoilingPoint(Pressure::kilopascal(row.number("pressure_kPa"))))
                            ->kilojoulePerKilogram(),
                        row.number("value"), 0.25);
        else {
            const Mass gallon = *waterDensity(Temperature::fahrenheit(60)) * Volume::gallon(1);
            const Energy heat = *heatToBoilAway(Temperature::fahrenheit(row.number("temperature")),
                                                Pressure::kilopascal(row.number("pressure_kPa"))) *
                                gallon;
            EXPECT_NEAR(heat.joule() / joulePerBtu, row.number("value"), 0.001 * row.number("value"));
        }
    }
}

// Debian's implementation of IAPWS-IF97 and IAPWS-95, run as a program of its own.
TEST(WaterReference, AgreesWithAnIndependentImplementationOverTheWholeRange) {
    const std::string command = std::string{"/usr/bin/python3 '"} + PANSIDE_REFERENCE + "/iapws_sweep.py'";
    const std::unique_ptr<FILE, int (*)(FILE*)> sweep{popen(command.c_str(), "r"), pclose};
    ASSERT_TRUE(sweep);
    std::array<char, 256> line{};
    std::array<int, 4> checked{};
    while (std::fgets(line.data(), line.size(), sweep.get())) {
        const std::string text{line.data()};
        const auto fields = fieldsOf(text.substr(0, text.find('\n')));
        ASSERT_EQ(fields.size(), 4U) << text;
        const auto pressure = Pressure::kilopascal(std::stod(fields[1]));
        const auto temperature = Temperature::kelvin(std::stod(fields[2]));
        const double value = std::stod(fields[3]);
        if (fields[0] == "boiling") {
            EXPECT_NEAR(waterBoilingPoint(pressure)->kelvin(), temperature.kelvin(), 1e-6);
            ++checked[0];
        } else if (fields[0] == "saturation") {
            EXPECT_NEAR(*saturationPressure(temperature) / pressure, 1, 1e-9);
            ++checked[1];
        } else if (fields[0] == "latent") {
            EXPECT_NEAR(latentHeat(temperature)->kilojoulePerKilogram(), value, 0.4);
            ++checked[2];
        } else {
            EXPECT_NEAR(waterDensity(temperature)->kilogramPerCubicMetre(), value, 0.05);
            ++checked[3];
        }
    }
    EXPECT_EQ(checked, (std::array{200, 180, 11, 11})) << "Is the package python3-iapws installed?";
}

} // namespace
} // namespace panside
