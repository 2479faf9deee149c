#include "core/physics/water.h"

#include <gtest/gtest.h>
#include <limits>

namespace panside {
namespace {

// IAPWS R7-97(2012), table 36: check values of equation 31, nine digits, so half a last digit is allowed.
TEST(WaterBoilingPoint, AgreesWithTheStandardsCheckValues) {
    const struct {
        double megapascal, kelvin;
    } published[] = {{0.1, 372.755919}, {1.0, 453.035632}, {10.0, 584.149488}};
    for (const auto& [megapascal, kelvin] : published)
        EXPECT_NEAR(waterBoilingPoint(Pressure::pascal(megapascal * 1e6)).value().kelvin(), kelvin, 5e-7) << megapascal;
}

// IAPWS R7-97(2012), table 35: check values of equation 30.
TEST(SaturationPressure, AgreesWithTheStandardsCheckValues) {
    const struct {
        double kelvin, megapascal, halfDigit;
    } published[] = {{300, 0.353658941e-2, 5e-12}, {500, 0.263889776e1, 5e-9}, {600, 0.123443146e2, 5e-8}};
    for (const auto& [kelvin, megapascal, halfDigit] : published)
        EXPECT_NEAR(saturationPressure(Temperature::kelvin(kelvin)).value().pascal() * 1e-6, megapascal, halfDigit)
            << kelvin;
}

TEST(WaterBoilingPoint, IsNotKnownOutsideTheSaturationLine) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const double pascal : {-1.0, 0.0, 611.0, 22.07e6, nan})
        EXPECT_EQ(waterBoilingPoint(Pressure::pascal(pascal)), std::nullopt) << pascal;
    for (const double kelvin : {273.0, 648.0, nan})
        EXPECT_EQ(saturationPressure(Temperature::kelvin(kelvin)), std::nullopt) << kelvin;
}

} // namespace
} // namespace panside
