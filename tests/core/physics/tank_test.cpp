#include "core/physics/tank.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <rapidcheck/gtest.h>

namespace panside {
namespace {

double gallons(const TankShape& shape, double inches) {
    return tankVolume(shape, Length::inch(inches)).value().gallon();
}

// A US gallon is 231 cubic inches by its definition (NIST Handbook 44, appendix C).
TEST(Tank, AnUprightCylinderIsItsBaseTimesTheDepth) {
    const UprightTank tank{.diameter = Length::inch(42), .height = Length::inch(60)};
    EXPECT_NEAR(gallons(tank, 30), std::numbers::pi * 21 * 21 * 30 / 231, 1e-9);
    EXPECT_EQ(tankDepth(tank), Length::inch(60));
}

TEST(Tank, ABoxIsLengthByWidthByDepth) {
    const BoxTank tank{.length = Length::inch(77), .width = Length::inch(30), .height = Length::inch(24)};
    EXPECT_NEAR(gallons(tank, 10), 77 * 30 * 10 / 231.0, 1e-9); // 100 gallons
}

// Share of the whole volume of a lying cylinder at a share of its diameter: the table of partly filled horizontal
// cylinders in chemical engineers' handbooks (from memory; each also follows from the next test's integral).
TEST(Tank, ALyingCylinderFillsAsTheTablesSay) {
    const LyingTank tank{.diameter = Length::inch(48), .length = Length::inch(96)};
    const double whole = std::numbers::pi * 24 * 24 * 96 / 231;
    const struct {
        double depth, share;
    } table[] = {{0.1, 0.05204}, {0.2, 0.14238},  {0.25, 0.19550}, {0.3, 0.25232}, {0.4, 0.37353},
                 {0.5, 0.5},     {0.75, 0.80450}, {0.9, 0.94796},  {1.0, 1.0}};
    for (const auto& [depth, share] : table)
        EXPECT_NEAR(gallons(tank, 48 * depth) / whole, share, 6e-6) << depth;
}

// The same by adding up 20 000 slices of chord by length, which knows nothing of segments.
TEST(Tank, ALyingCylinderIsTheSumOfItsSlices) {
    const LyingTank tank{.diameter = Length::metre(1.2), .length = Length::metre(2.5)};
    for (const double depth : {0.05, 0.31, 0.6, 0.93, 1.2}) {
        double sum = 0;
        constexpr int slices = 20000;
        for (int i = 0; i < slices; ++i) {
            const double h = (i + 0.5) * depth / slices;
            sum += 2 * std::sqrt(0.6 * 0.6 - (0.6 - h) * (0.6 - h)) * 2.5 * depth / slices;
        }
        EXPECT_NEAR(tankVolume(tank, Length::metre(depth)).value().cubicMetre(), sum, 1e-5) << depth;
    }
}

TEST(Tank, ATableIsReadBetweenItsMarksAndFromAnEmptyBottom) {
    const TankTable table{{{Length::inch(10), Volume::gallon(100)}, {Length::inch(20), Volume::gallon(260)}}};
    EXPECT_NEAR(gallons(table, 5), 50, 1e-9);
    EXPECT_NEAR(gallons(table, 10), 100, 1e-9);
    EXPECT_NEAR(gallons(table, 15), 180, 1e-9);
    EXPECT_NEAR(gallons(table, 20), 260, 1e-9);
}

TEST(Tank, ADipDeeperThanTheTankIsNoVolume) {
    const LyingTank tank{.diameter = Length::inch(48), .length = Length::inch(96)};
    EXPECT_FALSE(tankVolume(tank, Length::inch(48.1)));
    EXPECT_FALSE(tankVolume(tank, Length::inch(-1)));
    EXPECT_TRUE(tankVolume(tank, Length::inch(48)));
}

TEST(Tank, WhatIsNoTankHoldsNothing) {
    EXPECT_FALSE(isTank(UprightTank{.diameter = Length{}, .height = Length::inch(60)}));
    EXPECT_FALSE(isTank(BoxTank{.length = Length::metre(21), .width = Length::metre(1), .height = Length::metre(1)}));
    EXPECT_FALSE(isTank(TankTable{{{Length::inch(10), Volume::gallon(100)}}}));
    // A table whose volume does not rise with the depth has a slip in it.
    EXPECT_FALSE(isTank(TankTable{{{Length::inch(10), Volume::gallon(100)}, {Length::inch(20), Volume::gallon(90)}}}));
    EXPECT_FALSE(tankVolume(TankTable{}, Length::inch(1)));
}

RC_GTEST_PROP(Tank, HoldsMoreTheDeeperItIs, ()) {
    const double d = *rc::gen::inRange(10, 2000) / 100.0, l = *rc::gen::inRange(10, 2000) / 100.0;
    const double a = *rc::gen::inRange(0, 1000) / 1000.0, b = *rc::gen::inRange(0, 1000) / 1000.0;
    const LyingTank tank{.diameter = Length::metre(d), .length = Length::metre(l)};
    const auto low = tankVolume(tank, Length::metre(d * std::min(a, b)));
    const auto high = tankVolume(tank, Length::metre(d * std::max(a, b)));
    RC_ASSERT(low && high && *low <= *high);
    RC_ASSERT(high->cubicMetre() <= std::numbers::pi * d * d / 4 * l * (1 + 1e-9));
}

} // namespace
} // namespace panside
