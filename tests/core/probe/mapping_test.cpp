#include "core/probe/mapping.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>

namespace panside {
namespace {

std::vector<FieldOutcome> map(const PortRule& rule, std::string_view line) {
    const Mapping mapping{rule};
    LineDecoder decoder{LineRules{.encoding = rule.encoding}};
    decoder.restart(false);
    std::vector<FieldOutcome> all;
    decoder.feed(std::string{line} + "\n", [&](const ProbeLine& one) {
        EXPECT_EQ(one.refusal, Refusal::none) << line;
        mapping.map(one, [&](const FieldOutcome& outcome) { all.push_back(outcome); });
    });
    return all;
}

TEST(Mapping, AReadingIsSiAndKeepsItsUnitAndItsProbe) {
    const PortRule rule{.name = "pan box",
                        .fields = {{.is = "syrup", .reads = Series::syrup_pan, .unit = Unit::degF, .offset = -0.5},
                                   {.is = "baro", .reads = Series::pressure, .unit = Unit::hPa}}};
    const auto outcome = map(rule, "baro=987.1 other=3 syrup=219.5");
    ASSERT_EQ(outcome.size(), 2U);
    EXPECT_NEAR(outcome[0].reading->temperature().celsius(), (219.0 - 32) / 1.8, 1e-9);
    EXPECT_EQ(outcome[0].reading->unit, Unit::degF);
    EXPECT_EQ(outcome[0].reading->probe, "pan box");
    EXPECT_NEAR(outcome[1].reading->pressure().pascal(), 98710, 1e-6);
}

TEST(Mapping, AColumnIsCountedFromOne) {
    const PortRule rule{.name = "p", .fields = {{.is = "2", .reads = Series::stack, .unit = Unit::degC}}};
    EXPECT_NEAR(map(rule, "103.42,318.5")[0].reading->temperature().celsius(), 318.5, 1e-9);
    EXPECT_EQ(map(rule, "103.42")[0].why, NoReading::fieldMissing);
    EXPECT_NEAR(map(rule, "{\"2\":318.5}")[0].reading->temperature().celsius(), 318.5, 1e-9);
}

TEST(Mapping, TwoFieldsForOneReadingAreTwoProbes) {
    const PortRule rule{.name = "box",
                        .fields = {{.is = "a", .reads = Series::syrup_pan, .unit = Unit::degC},
                                   {.is = "b", .reads = Series::syrup_pan, .unit = Unit::degC}}};
    const auto outcome = map(rule, "a=103 b=104");
    EXPECT_EQ(outcome[0].reading->probe, "box");
    EXPECT_EQ(outcome[1].reading->probe, "box 2");
}

TEST(Mapping, WhatIsNoNumberIsNoReading) {
    const PortRule rule{.name = "p", .fields = {{.is = "a", .reads = Series::stack, .unit = Unit::degC}}};
    EXPECT_EQ(map(rule, "a=open b=1")[0].why, NoReading::notNumber);
    EXPECT_EQ(map(rule, "a= b=1")[0].why, NoReading::notNumber);
    EXPECT_EQ(map(rule, "b=1")[0].why, NoReading::fieldMissing);
    EXPECT_EQ(map(rule, "a=-273.2 b=1")[0].why, NoReading::impossible);
    EXPECT_FALSE(map(rule, "a=-273.2 b=1")[0].reading);
}

FieldRule thermocoupleRule(Junction junction) {
    return {
        .is = "tc", .reads = Series::stack, .unit = Unit::mV, .thermocouple = Thermocouple::K, .junction = junction};
}

// IEC 60584-1 (NIST Monograph 175), type K table: 300 degC is 12.209 mV, 25 degC is 1.000 mV against 0 degC; emfs add.
TEST(Mapping, AThermocoupleNeedsItsJunction) {
    const auto fixed = thermocoupleRule(Said<Temperature>{Temperature::celsius(25), Unit::degC});
    const auto outcome = map({.name = "p", .fields = {fixed}}, "tc=11.209");
    ASSERT_TRUE(outcome[0].reading);
    EXPECT_NEAR(outcome[0].reading->temperature().celsius(), 300, 0.03);
    EXPECT_EQ(outcome[0].reading->unit, Unit::degC);

    // The other end read by a field of its own, in its own unit; or by one without a rule, in degC.
    const auto byField = thermocoupleRule(std::string{"cj"});
    const FieldRule cj{.is = "cj", .unit = Unit::degF};
    EXPECT_NEAR(map({.name = "p", .fields = {byField, cj}}, "tc=11.209 cj=77")[0].reading->temperature().celsius(), 300,
                0.03);
    EXPECT_NEAR(map({.name = "p", .fields = {byField}}, "tc=11.209 cj=25")[0].reading->temperature().celsius(), 300,
                0.03);
    EXPECT_EQ(map({.name = "p", .fields = {byField}}, "tc=11.209 cj=open")[0].why, NoReading::junctionMissing);
    EXPECT_EQ(map({.name = "p", .fields = {byField}}, "tc=11.209")[0].why, NoReading::junctionMissing);
    EXPECT_EQ(map({.name = "p", .fields = {byField}}, "tc=11.209 cj=300")[0].why, NoReading::outsideTable);
    EXPECT_EQ(map({.name = "p", .fields = {fixed}}, "tc=75")[0].why, NoReading::outsideTable); // an open pair pulled up
}

// IEC 60751:2008, table 1: 138.51 ohm at 100 degC.
TEST(Mapping, APlatinumResistanceIsATemperature) {
    const PortRule rule{.name = "p",
                        .fields = {{.is = "1", .reads = Series::syrup_pan, .unit = Unit::ohm, .offset = -0.4}}};
    EXPECT_NEAR(map(rule, "138.91 5")[0].reading->temperature().celsius(), 100, 0.02);
    EXPECT_EQ(map(rule, "9999 5")[0].why, NoReading::outsideTable);
    EXPECT_EQ(map(rule, "0 5")[0].why, NoReading::outsideTable);
}

TEST(Mapping, ANumberThatIsNotFiniteIsNoReading) {
    const Mapping mapping{PortRule{.name = "p", .fields = {{.is = "a", .reads = Series::stack, .unit = Unit::degC}}}};
    EXPECT_EQ(mapping.outcome(0, std::nan("")).why, NoReading::notNumber);
    EXPECT_EQ(mapping.outcome(0, std::numeric_limits<double>::infinity()).why, NoReading::notNumber);
    EXPECT_EQ(mapping.outcome(0, std::nullopt).why, NoReading::notNumber);
}

} // namespace
} // namespace panside
