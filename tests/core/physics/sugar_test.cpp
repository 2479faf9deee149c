#include "core/physics/sugar.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

// Starzak and Peacock 1997 with IF97, worked out apart from this code by bisection in another language.
TEST(BoilingRise, AgreesWithTheEquationSolvedApart) {
    const struct {
        double brix, kilopascal, kelvin;
    } worked[] = {{20, 101.325, 0.393},   {40, 101.325, 1.146},   {60, 101.325, 2.938}, {66, 101.325, 3.999},
                  {66.9, 101.325, 4.198}, {68.9, 101.325, 4.688}, {75, 101.325, 6.742}, {66.9, 60, 3.891},
                  {66.9, 80, 4.055},      {66.9, 105, 4.220},     {75, 60, 6.263}};
    for (const auto& [brix, kilopascal, kelvin] : worked)
        EXPECT_NEAR(boilingRise(Brix::degrees(brix), Pressure::kilopascal(kilopascal)).value().kelvin(), kelvin,
                    0.00051)
            << brix << " brix at " << kilopascal << " kPa";
}

TEST(BoilingRise, ReturnsTheSugarThatWentIn) {
    for (double kilopascal = 60; kilopascal <= 110; kilopascal += 10)
        for (double brix = 0; brix <= 75; brix += 0.5) {
            const auto pressure = Pressure::kilopascal(kilopascal);
            const auto rise = boilingRise(Brix::degrees(brix), pressure).value();
            EXPECT_NEAR(sugarAtRise(rise, pressure).value().degrees(), brix, 1e-6) << brix << " at " << kilopascal;
        }
}

TEST(BoilingRise, IsZeroForWaterAndNotKnownBelowIt) {
    const auto sea = Pressure::kilopascal(101.325);
    EXPECT_EQ(boilingRise(Brix::degrees(0), sea).value().kelvin(), 0);
    EXPECT_EQ(sugarAtRise(TemperatureDifference::kelvin(0), sea).value().degrees(), 0);
    EXPECT_EQ(sugarAtRise(TemperatureDifference::kelvin(-0.05), sea), std::nullopt);
}

TEST(BoilingRise, IsNotKnownOutsideItsRange) {
    const auto sea = Pressure::kilopascal(101.325);
    EXPECT_EQ(boilingRise(Brix::degrees(78.1), sea), std::nullopt);
    EXPECT_EQ(boilingRise(Brix::degrees(-0.1), sea), std::nullopt);
    EXPECT_EQ(boilingRise(Brix::degrees(66), Pressure::kilopascal(59)), std::nullopt);
    EXPECT_EQ(boilingRise(Brix::degrees(66), Pressure::kilopascal(111)), std::nullopt);
    EXPECT_EQ(sugarAtRise(TemperatureDifference::kelvin(8.5), sea), std::nullopt);
    EXPECT_EQ(boilingRiseUncertainty(Brix::degrees(80)), std::nullopt);
    EXPECT_GT(boilingRise(Brix::degrees(77.1), sea).value(), boilingRise(Brix::degrees(75), sea).value());
}

TEST(BoilingRise, TwiceItsUncertaintyCoversThePublishedValues) {
    const double twice = 2 * boilingRiseUncertainty(Brix::degrees(66.9)).value().kelvin();
    EXPECT_GE(twice, 0.25);
    EXPECT_LT(twice, 0.30);
}

} // namespace
} // namespace panside
