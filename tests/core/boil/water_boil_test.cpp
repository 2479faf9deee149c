#include "core/boil/water_boil.h"

#include "logs.h"

#include <cmath>

namespace panside {
namespace {

using test::noon;

// At 1013.25 hPa water boils at 99.974 degC (IAPWS R7-97); the fair probe of a check is known to 0.3 K.
const ExpectedBoil seaLevel{Temperature::celsius(99.974), TemperatureDifference::kelvin(0.3)};

// A probe at one reading a second (or slower) whose water follows `celsius` of seconds; noise of 0.05 K that is no
// chance.
template <class F>
WaterLook watching(double seconds, F celsius, const std::optional<ExpectedBoil>& expected = seaLevel,
                   double spacing = 1, double digit = 0.01) {
    std::vector<WaterSample> samples;
    for (double t = 0; t <= seconds; t += spacing) {
        const double read = celsius(t) + 0.05 * std::sin(t * 12.9898);
        samples.push_back({noon + Duration{t}, Temperature::celsius(std::round(read / digit) * digit)});
    }
    return lookAtWater(samples, noon + Duration{seconds}, expected);
}

TEST(WaterBoil, WaitsUntilTheReadingHasStoodStillLongEnough) {
    const auto boiling = [](double) { return 100.2; };
    EXPECT_EQ(watching(10, boiling).verdict, WaterVerdict::watching);
    EXPECT_NEAR(watching(10, boiling).watched.count(), 10, 0.1);
    const auto look = watching(40, boiling);
    EXPECT_EQ(look.verdict, WaterVerdict::fits);
    EXPECT_NEAR(look.at->celsius(), 100.2, 0.02);
    EXPECT_NEAR(look.off->kelvin(), 0.226, 0.03);
    EXPECT_NEAR(look.scatter.kelvin(), 0.05 / std::sqrt(2), 0.02);
}

TEST(WaterBoil, SaysThatTheWaterIsStillWarmingAndHowFast) {
    const auto look = watching(60, [](double t) { return 60 + 5 * t / 60; });
    EXPECT_EQ(look.verdict, WaterVerdict::stillWarming);
    EXPECT_NEAR(look.eachMinute.kelvin(), 5, 0.2);
    // The last degrees creep; they are not taken for a boil either.
    EXPECT_EQ(watching(60, [](double t) { return 99 + 0.3 * t / 60; }).verdict, WaterVerdict::stillWarming);
}

TEST(WaterBoil, TheProbeThatWasJustDippedIsForgottenWhenItHasSettled) {
    const auto dipped = [](double t) { return 100 - 80 * std::exp(-t / 5); };
    EXPECT_EQ(watching(20, dipped).verdict, WaterVerdict::watching);
    EXPECT_EQ(watching(30, dipped).verdict, WaterVerdict::stillWarming);
    EXPECT_EQ(watching(75, dipped).verdict, WaterVerdict::fits);
}

TEST(WaterBoil, TellsAPotThatDoesNotBoilFromAProbeThatIsTooShallow) {
    EXPECT_EQ(watching(40, [](double) { return 88.0; }).verdict, WaterVerdict::notBoiling);
    const auto shallow = watching(40, [](double) { return 97.5; });
    EXPECT_EQ(shallow.verdict, WaterVerdict::tooShallow);
    EXPECT_NEAR(shallow.off->kelvin(), -2.47, 0.05);
    EXPECT_EQ(watching(40, [](double) { return 103.0; }).verdict, WaterVerdict::tooHot);
}

TEST(WaterBoil, SplashesAroundTheProbeAreNoPlateau) {
    const auto look = watching(40, [](double t) { return 99.0 + 0.6 * std::sin(t * 1.7); });
    EXPECT_EQ(look.verdict, WaterVerdict::restless);
    EXPECT_GT(look.scatter.kelvin(), 0.3);
}

TEST(WaterBoil, OneSpikeIsLeftOut) {
    const auto look = watching(40, [](double t) { return t == 20 ? 140.0 : 100.0; });
    EXPECT_EQ(look.verdict, WaterVerdict::fits);
    EXPECT_NEAR(look.at->celsius(), 100, 0.02);
}

TEST(WaterBoil, AProbeWithACoarseDigitMayFlickerBetweenTwo) {
    const auto look = watching(
        40, [](double t) { return 100.2 + 0.15 * std::sin(t); }, seaLevel, 1, 0.5);
    EXPECT_EQ(look.verdict, WaterVerdict::fits);
}

TEST(WaterBoil, AProbeThatSpeaksEverySixthSecondIsWaitedFor) {
    const auto boiling = [](double) { return 100.0; };
    EXPECT_EQ(watching(24, boiling, seaLevel, 6).verdict, WaterVerdict::watching);
    EXPECT_EQ(watching(36, boiling, seaLevel, 6).verdict, WaterVerdict::fits);
}

TEST(WaterBoil, WithoutABarometerTheCheckItselfSaysWhereWaterBoils) {
    EXPECT_EQ(watching(
                  40, [](double) { return 98.7; }, std::nullopt)
                  .verdict,
              WaterVerdict::givesBoiling);
    EXPECT_FALSE(watching(
                     40, [](double) { return 98.7; }, std::nullopt)
                     .off);
    // No sugarhouse stands so high, nor in such weather.
    EXPECT_EQ(watching(
                  40, [](double) { return 90.0; }, std::nullopt)
                  .verdict,
              WaterVerdict::notBoiling);
    EXPECT_EQ(watching(
                  40, [](double) { return 104.0; }, std::nullopt)
                  .verdict,
              WaterVerdict::tooHot);
}

TEST(WaterBoil, AProbeKnownToReadWrongIsMeasuredAgainstWhatIsKnownOfIt) {
    const ExpectedBoil two{Temperature::celsius(101.974), TemperatureDifference::kelvin(0.1)};
    EXPECT_EQ(watching(
                  40, [](double) { return 102.0; }, two)
                  .verdict,
              WaterVerdict::fits);
    EXPECT_EQ(watching(
                  40, [](double) { return 100.0; }, two)
                  .verdict,
              WaterVerdict::tooShallow);
}

TEST(WaterBoil, TakesTheReadingsOfItsOwnProbeSinceItBegan) {
    test::Rows rows;
    rows.read(0, "syrup_pan", 90, "degC", "probe=pan box").read(10, "syrup_pan", 99, "degC", "probe=pan box");
    rows.read(11, "syrup_pan", 70, "degC", "probe=other").read(12, "stack", 300, "degC", "probe=pan box");
    rows.read(13, "syrup_pan", 99.5, "degC", "probe=pan box");
    const auto boil = rows.boil();
    const auto samples = waterSamples(boil.facts(), "pan box", noon + Duration{5});
    ASSERT_EQ(samples.size(), 2U);
    EXPECT_NEAR(samples[0].read.celsius(), 99, 1e-9);
    EXPECT_NEAR(samples[1].read.celsius(), 99.5, 1e-9);
    EXPECT_EQ(lookAtWater({}, noon, seaLevel).verdict, WaterVerdict::nothingRead);
}

// No barometer: the height tells where water can boil. 820 ft: 99.2 degC usually (ISO 2533:1975, IAPWS R7-97(2012)).
TEST(WaterWatch, GoesByTheHeightWhereThereIsNoBarometer) {
    const ExpectedBoil byHeight{Temperature::celsius(99.2), TemperatureDifference::kelvin(0.38), true};
    EXPECT_EQ(watching(
                  40, [](double) { return 98.8; }, byHeight)
                  .verdict,
              WaterVerdict::givesBoiling);
    EXPECT_EQ(watching(
                  40, [](double) { return 96.1; }, byHeight)
                  .verdict,
              WaterVerdict::tooShallow);
}

} // namespace
} // namespace panside
