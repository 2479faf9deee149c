#include "core/quantity/quantity.h"
#include "core/quantity/unit.h"

#include <functional>
#include <gtest/gtest.h>
#include <type_traits>

namespace panside {
namespace {

// Wrong programs are tests too: two points on the temperature scale do not add, a step is no point, unlike things do
// not mix.
static_assert(!std::is_invocable_v<std::plus<>, Temperature, Temperature>);
static_assert(!std::is_invocable_v<std::minus<>, TemperatureDifference, Temperature>);
static_assert(!std::is_convertible_v<Temperature, TemperatureDifference>);
static_assert(!std::is_convertible_v<double, Temperature>);
static_assert(!std::is_invocable_v<std::plus<>, Pressure, Length>);
static_assert(!std::is_invocable_v<std::plus<>, Mass, Volume>);

// NIST SP 811 (2008), appendix B: conversion factors that are exact, and the conventional inch of mercury at 0 degC.
TEST(Quantity, ConvertsByThePublishedFactors) {
    EXPECT_DOUBLE_EQ(Temperature::fahrenheit(212).celsius(), 100);
    EXPECT_NEAR(Temperature::celsius(-40).fahrenheit(), -40, 1e-12);
    EXPECT_DOUBLE_EQ(TemperatureDifference::fahrenheit(7.2).kelvin(), 4);
    EXPECT_DOUBLE_EQ(Pressure::inchesOfMercury(1).pascal(), 3386.389);
    EXPECT_DOUBLE_EQ(Pressure::psi(1).pascal(), 6894.757293168361);
    EXPECT_DOUBLE_EQ(Volume::gallon(1).litre(), 3.785411784);
    EXPECT_DOUBLE_EQ(Mass::pound(1).kilogram(), 0.45359237);
    EXPECT_DOUBLE_EQ(Length::foot(1).inch(), 12);
    EXPECT_NEAR(Area::squareFoot(1).squareMetre(), 0.09290304, 1e-15);
}

TEST(Quantity, AShallowPanHoldsAreaTimesDepth) {
    EXPECT_NEAR((Area::squareFoot(1) * Length::inch(1)).gallon(), 144 / 231.0,
                1e-12); // a US gallon is 231 cubic inches
}

TEST(Unit, EveryUnitReturnsByItsNameAndThroughSi) {
    for (int i = 1; i < unitCount; ++i) {
        const auto unit = static_cast<Unit>(i);
        EXPECT_EQ(unitNamed(nameOf(unit)), unit);
        EXPECT_NEAR(fromSi(toSi(12.34, unit), unit), 12.34, 1e-9) << nameOf(unit);
    }
    EXPECT_EQ(unitNamed(""), std::nullopt);
    EXPECT_EQ(unitNamed("degc"), std::nullopt);
}

TEST(Unit, ADifferenceIsNeverShiftedBy32) {
    EXPECT_DOUBLE_EQ(differenceToSi(7.2, Unit::degF), 4);
    EXPECT_DOUBLE_EQ(differenceToSi(4, Unit::degC), 4);
    EXPECT_DOUBLE_EQ(differenceToSi(4, Unit::K), 4);
}

TEST(Unit, ReadsANumberAndItsUnitWrittenTogether) {
    EXPECT_EQ(writtenIn("98.7kPa"), (Written{98.7, Unit::kPa}));
    EXPECT_EQ(writtenIn("-4degC"), (Written{-4, Unit::degC}));
    EXPECT_EQ(writtenIn("200L/h"), (Written{200, Unit::Lph}));
    EXPECT_EQ(writtenIn("1e2mm"), (Written{100, Unit::mm}));
    EXPECT_EQ(writtenIn("12in"), (Written{12, Unit::in}));
    for (const char* bad : {"", "kPa", "98.7", "98,7kPa", "98.7 kPa", "nankPa", "infK", "98.7kpa", "+-1K", "1e999m"})
        EXPECT_EQ(writtenIn(bad), std::nullopt) << bad;
}

TEST(Unit, TakesOnlyWholeNumbersAndDecimalsWithAPoint) {
    EXPECT_EQ(numberIn("+1.5"), 1.5);
    for (const char* bad : {"21O.5", "1,5", "0x10", "1.5 ", " 1", "--1", "nan", "inf", ""})
        EXPECT_EQ(numberIn(bad), std::nullopt) << bad;
}

} // namespace
} // namespace panside
