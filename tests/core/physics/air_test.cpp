#include "core/physics/air.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

// Printed tables of the US Standard Atmosphere 1976, which is ISO 2533:1975 below 32 km (values from memory).
TEST(StandardAtmosphere, AgreesWithThePrintedTables) {
    const struct {
        double metre, kilopascal;
    } published[] = {{0, 101.325}, {500, 95.461}, {1000, 89.875}, {1500, 84.556}, {2000, 79.495}, {3000, 70.109}};
    for (const auto& [metre, kilopascal] : published)
        EXPECT_NEAR(standardAtmosphere(Length::metre(metre)).value().kilopascal(), kilopascal, 0.00051) << metre;
}

TEST(StationPressure, AStandardDaysAltimeterSettingGivesTheStandardAtmosphere) {
    for (const double metre : {-300.0, 0.0, 300.0, 1000.0, 3000.0})
        EXPECT_NEAR(stationFromAltimeter(Pressure::kilopascal(101.325), Length::metre(metre)).value().pascal(),
                    standardAtmosphere(Length::metre(metre)).value().pascal(), 0.01);
}

TEST(StationPressure, SeaLevelPressureNeedsTheAirAndIsLessSureWithoutIt) {
    const auto sea = Pressure::kilopascal(101.4973);
    const auto at = Length::metre(300);
    const auto air = Temperature::celsius(0);
    EXPECT_NEAR(stationFromSeaLevel(sea, at, air).value().kilopascal(), 97.7726, 0.0002); // reduced at 0 degC
    EXPECT_EQ(stationFromSeaLevel(sea, at), stationFromSeaLevel(sea, at, air));
    EXPECT_GT(stationFromSeaLevelUncertainty(sea, at).value(), stationFromSeaLevelUncertainty(sea, at, air).value());
}

TEST(StationPressure, IsNotMadeFromWhatCannotBe) {
    const auto normal = Pressure::kilopascal(101.3);
    EXPECT_EQ(stationFromAltimeter(Pressure::kilopascal(29.9), Length::metre(300)), std::nullopt);
    EXPECT_EQ(stationFromSeaLevel(Pressure::kilopascal(29.9), Length::metre(300)), std::nullopt);
    EXPECT_EQ(stationFromSeaLevel(normal, Length::metre(9000)), std::nullopt);
    EXPECT_EQ(stationFromSeaLevel(normal, Length::metre(300), Temperature::celsius(100)), std::nullopt);
    EXPECT_EQ(standardAtmosphere(Length::metre(-600)), std::nullopt);
}

} // namespace
} // namespace panside
