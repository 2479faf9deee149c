#include "core/probe/guess.h"

#include "core/boil/vocabulary.h"

#include <gmock/gmock.h>

namespace panside {
namespace {

FieldSamples around(std::string is, double middle, double spread) {
    FieldSamples samples{std::move(is), {}};
    for (int i = 0; i < 20; ++i)
        samples.numbers.push_back(middle + spread * (i % 5 - 2) / 4);
    return samples;
}

std::optional<Series> guessed(const FieldSamples& samples) { return guess({samples})[0].reads; }
Unit guessedUnit(const FieldSamples& samples) { return guess({samples})[0].unit; }

FieldRule reads(Series series, Unit unit) { return {.is = "x", .reads = series, .unit = unit}; }

TEST(Guess, ANameThatTellsCountsFirst) {
    EXPECT_EQ(guessed(around("Stack_F", 300, 40)), Series::stack);
    EXPECT_EQ(guessed(around("flue_pan", 98, 1)), Series::flue_pan);
    EXPECT_EQ(guessed(around("syrup", 212, 1)), Series::syrup_pan);
    EXPECT_EQ(guessedUnit(around("syrup", 214, 1)), Unit::degF);
    EXPECT_EQ(guessedUnit(around("baro", 98.7, 0)), Unit::kPa);
    EXPECT_EQ(guessedUnit(around("stack", 300, 40)), Unit::none); // may be either
}

// A new reading is known by its own name, whatever else it may be called.
TEST(Guess, EveryReadingIsKnownByItsNameInTheLog) {
    for (const ReadingRow& row : allReadings())
        EXPECT_EQ(guessed({std::string{row.name}, {1}}), row.series) << row.name;
}

TEST(Guess, NumbersTellWhereNamesDoNot) {
    EXPECT_EQ(guessed(around("1", 987.2, 0.1)), Series::pressure);
    EXPECT_EQ(guessedUnit(around("1", 987.2, 0.1)), Unit::hPa);
    EXPECT_EQ(guessedUnit(around("1", 98.72, 0.01)), Unit::kPa);
    EXPECT_EQ(guessed(around("1", 101.3, 0.6)), Series::syrup_pan);
    EXPECT_EQ(guessedUnit(around("1", 217, 2)), Unit::degF);
    EXPECT_EQ(guessed(around("1", 318, 60)), Series::stack);
    EXPECT_EQ(guessed(around("1", 4.5, 0.2)), std::nullopt);
    EXPECT_EQ(guessed({"1", {}}), std::nullopt);
}

TEST(Guess, AsksAboutAUnitThatCannotBe) {
    EXPECT_THAT(questions({reads(Series::syrup_pan, Unit::degC)}, {212.4}),
                testing::ElementsAre(Question{Doubt::unitIsFahrenheit, 0, {}, Unit::degF}));
    EXPECT_THAT(questions({reads(Series::syrup_pan, Unit::degF)}, {101.2}),
                testing::ElementsAre(Question{Doubt::unitIsCelsius, 0, {}, Unit::degC}));
    EXPECT_THAT(questions({reads(Series::pressure, Unit::kPa)}, {29.4}),
                testing::ElementsAre(Question{Doubt::otherPressureUnit, 0, {}, Unit::inHg}));
    EXPECT_THAT(questions({reads(Series::pressure, Unit::kPa)}, {987.0}),
                testing::ElementsAre(Question{Doubt::otherPressureUnit, 0, {}, Unit::hPa}));
}

TEST(Guess, AsksAboutAPairThatIsSwapped) {
    const std::vector fields{reads(Series::stack, Unit::degC), reads(Series::syrup_pan, Unit::degC)};
    EXPECT_THAT(questions(fields, {100.4, 301.0}), testing::ElementsAre(Question{Doubt::swapped, 1, 0}));
}

TEST(Guess, ACalmBoilAndACoolHouseRaiseNoQuestion) {
    const std::vector fields{reads(Series::stack, Unit::degC), reads(Series::syrup_pan, Unit::degC),
                             reads(Series::pressure, Unit::kPa)};
    EXPECT_THAT(questions(fields, {318.0, 103.4, 98.7}), testing::IsEmpty());
    EXPECT_THAT(questions(fields, {4.0, 4.1, 98.7}), testing::IsEmpty());
    EXPECT_THAT(questions(fields, {std::nullopt, std::nullopt, std::nullopt}), testing::IsEmpty());
}

} // namespace
} // namespace panside
