#include "core/boil/mark.h"

#include "core/boil/mark_belief.h"
#include "core/boil/pan_trace.h"
#include "tests/core/boil/logs.h"

#include <cmath>
#include <cstdlib>
#include <cstring>

namespace panside {
namespace {

using test::noon;
using test::Rows;

constexpr double waterAt100kPa = 99.606; // degC: 372.755919 K at 0.1 MPa, IAPWS R7-97(2012), table 36
constexpr double riseOfSyrup = 4.19;     // K at 66.9 brix and 100 kPa, Starzak and Peacock (1997)

// A pan that stands at one reading, with a barometer.
Rows standing(double reading, double until = 1200) {
    Rows rows;
    rows.add(0, "lit,,,");
    rows.read(0, "pressure", 100.0, "kPa");
    for (int t = 0; t <= until; t += 5)
        rows.read(t, "syrup_pan", reading + 0.01 * (t / 5 % 3 - 1), "degC");
    return rows;
}
const std::string coldCup = "temp=20degC;cal=20degC";

TEST(Mark, StartsFromPhysicsAndSaysHowLittleItKnows) {
    const Picture picture = standing(103).at(1200);
    ASSERT_TRUE(picture.target && picture.targetUncertainty);
    EXPECT_NEAR(picture.target->celsius(), waterAt100kPa + riseOfSyrup, 0.02);
    EXPECT_NEAR(picture.targetUncertainty->kelvin(), 0.4, 0.02); // IEC 60751, class B: 0.8 K at 100 degC
    EXPECT_EQ(picture.checks, 0);
    EXPECT_FALSE(picture.lastCheck);
    EXPECT_LT(picture.targetUncertaintyAfterCheck.value().kelvin(), 0.1);
}

// The probe reads half a kelvin too high: syrup stands at 104.30, and the cup says it is syrup.
TEST(Mark, IsWithinATenthAfterThreeChecksOnAProbeHalfAKelvinOff) {
    Rows rows = standing(waterAt100kPa + riseOfSyrup + 0.5);
    int at = 300;
    for (const double glass : {67.05, 66.75, 66.95})
        rows.add(at += 200, fmt::format("density_check,{},brix,with=hydrometer;{}", glass, coldCup));
    const Picture picture = rows.at(1200);
    EXPECT_NEAR(picture.target.value().celsius(), waterAt100kPa + riseOfSyrup + 0.5, 0.1);
    EXPECT_NEAR(picture.brix.value().degrees(), 66.9, 0.5);
    EXPECT_EQ(picture.checks, 3);
    EXPECT_LT(picture.targetUncertainty.value().kelvin(), 0.1);
    // A glass that is itself good to 0.15 brix (0.034 K) can teach no more than that.
    EXPECT_GT(picture.targetUncertainty.value().kelvin(), 0.034);
}

// A box that tells each five minutes: what stood at the probe when the cup was dipped nobody read, and the pan was
// coming up by kelvins a minute.
TEST(Mark, ACheckBetweenReadingsFarApartTeachesNoMoreThanTheyLeaveOpen) {
    Rows rows;
    rows.add(0, "lit,,,").read(0, "pressure", 100.0, "kPa");
    for (const auto& [at, celsius] : {std::pair{0, 76.3}, {300, 104.2}, {600, 105.3}})
        rows.read(at, "syrup_pan", celsius, "degC");
    rows.add(345,
             fmt::format("density_check,66.9,brix,with=hydrometer;{};drawn={}", coldCup, textOf(noon + Duration{315})));
    std::ranges::stable_sort(rows.facts, {}, &Fact::at);
    const Picture picture = rows.at(400);
    EXPECT_NEAR(picture.syrupPan.value().celsius(), 104.2, 0.01); // so long apart it may have come so far
    EXPECT_NEAR(picture.probeOffset.kelvin(), 0, 0.1);
    EXPECT_GT(picture.targetUncertainty.value().kelvin(), 0.25);
}

TEST(Mark, OverTheTablesItSaysSo) {
    const Picture picture = standing(110.5).at(1200);
    EXPECT_FALSE(picture.brix);
    EXPECT_TRUE(std::ranges::count(picture.why, Why{Shown::brix, Reason::pastTables}));
}

TEST(Mark, SaysWhatACheckCameTo) {
    // Half a kelvin off: the reading of syrup is 104.30, and a cup of 66.9 brix says so.
    Rows rows = standing(waterAt100kPa + riseOfSyrup + 0.5);
    EXPECT_FALSE(rows.at(300).check);
    const double before = rows.at(590).target->celsius();
    rows.add(600, "density_check,66.9,brix," + coldCup);
    const Picture right = rows.at(640);
    ASSERT_TRUE(right.check && right.check->sugar);
    EXPECT_NEAR(right.check->sugar->degrees(), 66.9, 0.01);
    EXPECT_EQ(right.check->weight, CheckWeight::right);
    EXPECT_EQ(right.check->fate, CheckFate::learnt);
    EXPECT_NEAR(right.check->moved.kelvin(), right.target->celsius() - before, 1e-6);
    EXPECT_GT(right.check->moved.kelvin(), 0.3);
    // A cup that nobody believes: kept, and the mark stands where it stood.
    rows.add(700, "density_check,60,brix," + coldCup);
    const Picture doubted = rows.at(740);
    EXPECT_EQ(doubted.check->fate, CheckFate::doubted);
    EXPECT_EQ(doubted.check->weight, CheckWeight::underLegal);
    EXPECT_EQ(doubted.check->moved.kelvin(), 0);
    rows.add(800, "density_check,66.2,brix," + coldCup);
    EXPECT_EQ(rows.at(840).check->weight, CheckWeight::light);
    rows.add(900, "density_check,80,brix,temp=98degC;cal=60degF");
    EXPECT_EQ(rows.at(940).check->fate, CheckFate::unreadable);
    EXPECT_FALSE(rows.at(940).check->sugar);
}

TEST(Mark, ACheckBeforeAnyReadingHasNothingToBeHeldAgainst) {
    Rows rows;
    rows.add(0, "lit,,,").add(60, "density_check,70,brix," + coldCup);
    const Picture picture = rows.at(70);
    EXPECT_EQ(picture.check.value().fate, CheckFate::unplaced);
    EXPECT_EQ(picture.check->weight, CheckWeight::tooHeavy);
    EXPECT_EQ(picture.checks, 0);
}

TEST(Mark, OneMoreCheckIsWorthLessTheMoreThereWere) {
    Rows rows = standing(104);
    const Picture before = rows.at(1200);
    rows.add(600, "density_check,66.9,brix," + coldCup).add(900, "density_check,67.0,brix," + coldCup);
    const Picture after = rows.at(1200);
    const auto gain = [](const Picture& picture) {
        return (*picture.targetUncertainty - *picture.targetUncertaintyAfterCheck).kelvin();
    };
    EXPECT_GT(gain(before), 0.2);
    EXPECT_LT(gain(after), 0.03);
}

TEST(Mark, AHotCupIsCorrectedForItsTemperature) {
    // 59.1 brix at 211 degF on a scale for 60 degF is 66.9 when cold: the hot line of a syrup hydrometer.
    const Picture hot = standing(104).add(600, "density_check,59.1,brix,temp=211degF;cal=60degF").at(1200);
    const Picture cold = standing(104).add(600, "density_check,66.9,brix,temp=60degF;cal=60degF").at(1200);
    EXPECT_NEAR(hot.probeOffset.kelvin(), cold.probeOffset.kelvin(), 0.1);
}

TEST(Mark, TheReadingCountsAtWhichTheSampleWasTaken) {
    Rows rows = standing(104.0, 900);
    for (int t = 905; t <= 2400; t += 5)
        rows.read(t, "syrup_pan", 103.2 + 0.01 * (t / 5 % 3), "degC");
    // Half an hour late, but it says when it was drawn.
    rows.add(2400, "density_check,66.9,brix," + coldCup + ";drawn=2025-03-14T12:10:00Z");
    EXPECT_NEAR(rows.at(2400).target.value().celsius(), 104.0, 0.05);
}

TEST(Mark, AnAbsurdCheckIsQuestionedAndDragsNothing) {
    Rows rows = standing(104.0);
    rows.add(300, "density_check,66.9,brix," + coldCup).add(600, "density_check,67.0,brix," + coldCup);
    const Picture before = rows.at(1200);
    rows.add(900, "density_check,61,brix," + coldCup);
    const Picture after = rows.at(1200);
    EXPECT_EQ(after.checks, 2);
    EXPECT_EQ(after.questionedChecks, 1);
    EXPECT_NEAR(after.target.value().celsius(), before.target.value().celsius(), 1e-6);
}

TEST(Mark, ADegreeBaumeCalledBrixIsQuestioned) {
    Rows rows = standing(104.0);
    rows.add(300, "density_check,36.0,brix," + coldCup);
    EXPECT_EQ(rows.at(1200).questionedChecks, 1);
    EXPECT_EQ(rows.at(1200).checks, 0);
    // 36.0 degrees Baume at 60 degF is 66.9 brix: United States trade practice, both lines on one paper scale.
    const Picture baume = standing(104.0).add(300, "density_check,36.0,baume,temp=60degF;cal=60degF").at(1200);
    EXPECT_EQ(baume.checks, 1);
    EXPECT_NEAR(baume.target.value().celsius(), 104.0, 0.08);
}

TEST(Mark, TwoThatAgreeAreNoSlip) {
    Rows rows = standing(104.0, 2400);
    for (const int at : {300, 600})
        rows.add(at, "density_check,66.9,brix," + coldCup);
    // Then the cup says thin twice in a row: the probe has moved.
    for (const int at : {1200, 2100})
        rows.add(at, fmt::format("density_check,{},brix,{}", 64.0 + at / 1e5, coldCup));
    const Picture picture = rows.at(2400);
    EXPECT_EQ(picture.questionedChecks, 1);
    EXPECT_GT(picture.target.value().celsius(), 104.3);
}

// A glass read on another scale says the same each time: that bears out the scale, and not the probe.
TEST(Mark, AScaleThatIsMistakenEachTimeIsNamedAndMovesNothing) {
    const auto after = [](const char* row) {
        Rows rows = standing(104.0, 3000);
        for (const int at : {300, 1200, 2100})
            rows.add(at, fmt::format("density_check,{:.1f},brix,{}", std::atof(row) + at / 1e4, std::strchr(row, 't')));
        return rows.at(3000);
    };
    const Picture alone = standing(104.0, 3000).at(3000);
    const Picture baume = after("36.0 temp=20degC;cal=20degC");
    EXPECT_EQ(baume.check->remark, CheckRemark::inBaume);
    EXPECT_EQ(baume.questionedChecks, 3);
    EXPECT_NEAR(baume.target->celsius(), alone.target->celsius(), 0.01);
    // Made for hot syrup, and the cup's heat is taken out a second time: or is the probe 1.7 K off? Nobody knows.
    const Picture hot = after("66.9 temp=93degC;cal=60degF");
    EXPECT_EQ(hot.check->remark, CheckRemark::hotScale);
    EXPECT_NEAR(hot.target->celsius(), alone.target->celsius(), 0.01);
    EXPECT_GT(hot.targetUncertainty->kelvin(), 0.5);
}

// IEC 60584-1 lets a thermocouple of class 2 read 2.5 K off.
TEST(Mark, AProbeThatWouldBeFurtherOffThanAnyIsNotBelieved) {
    Rows rows = standing(100.6, 3000); // the flue pan's, on the syrup pan's line
    for (const int at : {300, 1200, 2100})
        rows.add(at, fmt::format("density_check,{:.1f},brix,{}", 66.9 + at / 1e4, coldCup));
    EXPECT_EQ(rows.at(3000).checks, 0);
    EXPECT_GT(rows.at(3000).target->celsius(), 103.2);
}

// A lead that takes water reads 0.2 K more each hour; the cup says the same each time.
TEST(Mark, FollowsALeadThatCreepsAndOwnsWhatIsLeft) {
    for (const double perHour : {0.2, -0.2, 0.5}) {
        Rows rows;
        rows.add(0, "lit,,,").read(0, "pressure", 100.0, "kPa");
        const auto high = [perHour](double t) { return perHour * t / 3600; };
        for (int t = 0; t <= 5 * 3600; t += 5) {
            rows.read(t, "syrup_pan", 103.8 + high(t) + 0.01 * (t / 5 % 3 - 1), "degC");
            if (t % 1800 == 0)
                rows.read(t, "pressure", 100.0, "kPa");
            if (t % 1200 == 600)
                rows.add(t, fmt::format("density_check,{:.2f},brix,{}", 66.9 + 0.2 * (t / 1200 % 3 - 1), coldCup));
        }
        for (int t = 3 * 3600; t <= 5 * 3600; t += 600) {
            const Picture picture = rows.at(t);
            const double off = picture.target->celsius() - 103.8 - high(t);
            EXPECT_LT(std::abs(off), 0.15) << perHour << " at " << t;
            EXPECT_LT(std::abs(off), 2 * picture.targetUncertainty->kelvin()) << perHour << " at " << t;
        }
    }
}

// Niter: before so many checks tell of it that it is followed, the doubt is as wide as what they leave open.
TEST(Mark, OwnsACreepThatFewChecksShow) {
    constexpr double perHour = 0.25;
    Rows rows;
    rows.add(0, "lit,,,").read(0, "pressure", 100.0, "kPa");
    for (int t = 0; t <= 4 * 3600; t += 5) {
        rows.read(t, "syrup_pan", 103.8 + perHour * t / 3600 + 0.01 * (t / 5 % 3 - 1), "degC");
        if (t % 1800 == 0)
            rows.read(t, "pressure", 100.0, "kPa");
        if (t % 3000 == 600 && t < 10000)
            rows.add(t, fmt::format("density_check,{:.2f},brix,{}", 66.9 + 0.2 * (t / 3000 % 3 - 1), coldCup));
    }
    for (int t = 7200; t <= 4 * 3600; t += 600) {
        const Picture picture = rows.at(t);
        const double off = picture.target->celsius() - 103.8 - perHour * t / 3600;
        EXPECT_LT(std::abs(off), 2 * picture.targetUncertainty->kelvin()) << t;
    }
}

TEST(Mark, WaterChecksThatKeepToOneSideAreBelieved) {
    Rows rows = standing(104, 4 * 3600);
    for (int i = 0; i < 6; ++i)
        rows.add(600 + 2400 * i, fmt::format("water_check,{:.2f},degC,", waterAt100kPa + 0.25 * i));
    for (int t = 300; t < 4 * 3600; t += 300)
        rows.read(t, "pressure", 100.0, "kPa");
    EXPECT_NEAR(rows.at(4 * 3600).probeOffset.kelvin(), 1.25, 0.4);
}

TEST(Mark, ACheckEnteredTwiceCountsOnce) {
    Rows once = standing(104), twice = standing(104);
    once.add(600, "density_check,66.5,brix," + coldCup);
    twice.add(600, "density_check,66.5,brix," + coldCup).add(640, "density_check,66.5,brix," + coldCup);
    EXPECT_EQ(twice.at(1200).checks, 1);
    EXPECT_NEAR(twice.at(1200).targetUncertainty->kelvin(), once.at(1200).targetUncertainty->kelvin(), 1e-6);
}

TEST(Mark, ForgetsSlowlyAndAtOnceWithAnotherPan) {
    Rows rows = standing(104);
    for (const int at : {200, 500, 800})
        rows.add(at, fmt::format("density_check,{},brix,{}", 66.9 + at / 1e4, coldCup));
    const double fresh = rows.at(1200).targetUncertainty->kelvin();
    const double old = rows.at(1200 + 4 * 3600).targetUncertainty->kelvin();
    EXPECT_GT(old, fresh + 0.02);
    rows.add(1100, "pan_swapped,,,");
    const Picture swapped = rows.at(1200);
    EXPECT_GT(swapped.targetUncertainty->kelvin(), 2 * fresh);
    EXPECT_EQ(swapped.checks, 0);
}

TEST(Mark, AWaterCheckBesideABarometerTellsTheProbesOffset) {
    Rows rows = standing(104);
    rows.add(60, fmt::format("water_check,{:.2f},degC,", waterAt100kPa + 0.4));
    const Picture picture = rows.at(1200);
    EXPECT_NEAR(picture.probeOffset.kelvin(), 0.4, 0.1);
    EXPECT_LT(picture.targetUncertainty->kelvin(), 0.2);
    EXPECT_GT(picture.targetUncertainty->kelvin(), 0.1); // syrup is not water: the rise model's own 0.13 K stays
}

TEST(Mark, AWaterCheckOfAnotherProbeSaysNothingOfTheOneInThePan) {
    const auto offsetAfter = [](const std::string& checked) {
        Rows rows;
        rows.add(0, "lit,,,").read(0, "pressure", 100.0, "kPa");
        for (int t = 0; t <= 600; t += 5)
            rows.add(t, fmt::format("syrup_pan,{:.2f},degC,probe=pan", 103 + 0.01 * (t / 5 % 3 - 1)));
        rows.add(300, fmt::format("water_check,{:.2f},degC,probe={}", waterAt100kPa + 0.4, checked));
        return rows.at(600).probeOffset.kelvin();
    };
    EXPECT_GT(offsetAfter("pan"), 0.3);
    EXPECT_EQ(offsetAfter("kettle"), 0);
}

TEST(Mark, AWaterCheckFarOffIsBelievedOnlyWhenASecondSaysTheSame) {
    const auto wrong = [](double by) { return fmt::format("water_check,{:.2f},degC,", waterAt100kPa + by); };
    Rows rows = standing(104);
    rows.add(60, wrong(-2.5)); // a probe in the steam, or a kettle that did not boil yet
    EXPECT_NEAR(rows.at(1200).probeOffset.kelvin(), 0, 0.01);
    Rows other = rows;
    other.add(300, wrong(0.1));
    EXPECT_NEAR(other.at(1200).probeOffset.kelvin(), 0.1, 0.1);
    rows.add(300, wrong(-2.45));
    EXPECT_LT(rows.at(1200).probeOffset.kelvin(), -1.8); // the pan may have its share of it
}

// The check grows old with the weather: a front moves the boiling point by some 0.03 K an hour.
TEST(Mark, WithoutABarometerTheTargetGrowsUncertainWithTheAgeOfTheWaterCheck) {
    Rows rows;
    rows.add(0, "lit,,,").add(10, "water_check,99.9,degC,");
    for (int t = 20; t <= 8 * 3600; t += 60)
        rows.read(t, "syrup_pan", 104.0, "degC");
    const auto after = [&](double hours) { return rows.at(hours * 3600).targetUncertainty->kelvin(); };
    EXPECT_LT(after(0.1), after(2));
    EXPECT_LT(after(2), after(4));
    EXPECT_GT(after(8), after(0.1) + 0.1);
    EXPECT_NEAR(rows.at(4 * 3600).waterBoilsAge.count(), 4 * 3600 - 10, 1);
    const double old = after(8);
    rows.add(8 * 3600 - 60, "water_check,99.7,degC,"); // looked again: young again, and where water boils now
    EXPECT_LT(after(8), old - 0.05);
    EXPECT_NEAR(rows.at(8 * 3600).waterBoils->celsius(), 99.7, 1e-6);
}

TEST(Mark, AWaterCheckAloneStandsForTheBarometer) {
    Rows rows;
    rows.add(0, "lit,,,").add(10, "water_check,99.9,degC,");
    for (int t = 20; t <= 600; t += 5)
        rows.read(t, "syrup_pan", 104.0, "degC");
    const Picture picture = rows.at(600);
    ASSERT_TRUE(picture.target);
    EXPECT_NEAR(picture.target->celsius(), 99.9 + 4.2, 0.05);
    EXPECT_FALSE(picture.pressure);
    EXPECT_NE(std::find(picture.why.begin(), picture.why.end(), Why{Shown::pressureKPa, Reason::noBarometer}),
              picture.why.end());
    // The probe's own error is in the check already, so it is known better than by the barometer.
    EXPECT_LT(picture.targetUncertainty->kelvin(), 0.2);
}

TEST(Mark, WithNeitherBarometerNorWaterCheckThereIsNoTarget) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t <= 600; t += 5)
        rows.read(t, "syrup_pan", 104.0, "degC");
    rows.add(300, "density_check,66.9,brix," + coldCup);
    const Picture picture = rows.at(600);
    EXPECT_FALSE(picture.target);
    EXPECT_NE(std::find(picture.why.begin(), picture.why.end(), Why{Shown::targetC, Reason::noPressure}),
              picture.why.end());
}

TEST(Mark, WhatWasLearnedBeforeIsTakenOver) {
    Rows rows = standing(104);
    rows.add(0, "set,0.45,K,key=probe_offset").add(0, "set,0.06,K,key=probe_offset_sd");
    const Picture picture = rows.at(600);
    EXPECT_NEAR(picture.probeOffset.kelvin(), 0.45, 1e-9);
    EXPECT_NEAR(picture.targetUncertainty->kelvin(), 0.06, 0.01);
}

TEST(MarkBelief, LearnsTheMeanOfWhatItIsTold) {
    // Worked by hand: prior 0 with variance 0.16; seen 0.5 with variance 0.01 and a glass of variance (0.0345)^2.
    MarkBelief belief;
    belief.learn({1, 0, 1, 0}, 0.5, 0.01);
    const double glass = 0.0345 * 0.0345, gain = 0.16 / (0.16 + 0.01 + glass);
    EXPECT_NEAR(belief.offset(false), 0.5 * gain, 1e-9);
    EXPECT_NEAR(belief.variance(false), 0.16 * (1 - gain), 1e-9);
}

TEST(PanTrace, GivesWhatWasReadThen) {
    PanTrace trace;
    for (int t = 0; t < 3600; t += 2)
        trace.add(noon + Duration{double(t)}, t / 1000.0);
    EXPECT_NEAR(trace.at(noon + Duration{3000}).value(), 3.0, 0.011);
    EXPECT_NEAR(trace.slope(noon + Duration{3000}), 0.001, 1e-5);
    EXPECT_FALSE(trace.at(noon)); // more than three quarters of an hour ago
    EXPECT_FALSE(trace.at(noon + Duration{4000}));
}

} // namespace
} // namespace panside
