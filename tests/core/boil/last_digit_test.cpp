// A probe that has frozen, by its steps: what it may hold for, and what hides it.
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::Rows;
using test::stands;
using test::stood;

// The last digit as the probe writes it.
double inSteps(double celsius, double step) { return step * std::round(celsius / step); }

// What an evening's syrup pan does: up to the mark in a quarter of an hour, down in a draw, and a boil that heaves it.
double evening(const BoilLog& log, int t) {
    const int phase = t % 900;
    const double brix = phase < 800 ? 61 + 6 * phase / 800.0 : 67 - 6 * (phase - 800) / 100.0;
    return log.boils(brix) + 0.06 * std::sin(t / 23.0) + test::noise(t, 0.05);
}

Rows written(double step, int seconds, const std::function<bool(int)>& silent, const std::function<int(int)>& heldAt) {
    const BoilLog log;
    Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t < seconds; ++t) {
        if (t % 30 == 0)
            rows.read(t, "pressure", log.kilopascal, "kPa");
        if (t % 480 == 0)
            rows.add(t, "fired,,,");
        rows.read(t, "stack", 350 + 30 * std::sin(t / 76.0) + test::noise(t, 4), "degC");
        if (!silent(t))
            rows.add(t, fmt::format("syrup_pan,{:.4f},degC,", inSteps(evening(log, heldAt(t)), step)));
    }
    return rows;
}

// 60 s at steps of 0.01; coarser steps stand still for long in truth.
TEST(LastDigit, NoStepIsCalledFrozenWhileThePanBoilsAsEver) {
    for (const double step : {0.01, 0.05, 0.0625, 0.1, 0.25}) {
        const auto log = written(
            step, 3 * 3600, [](int) { return false; }, [](int t) { return t; });
        EXPECT_EQ(stood(log, Alarm::probe_stuck).times, 0) << step;
    }
}

// Half and whole degrees stand for as long as a pan takes to climb by them: a quarter of an hour and more at the start.
TEST(LastDigit, WholeDegreesOfASlowPanAreNotFrozen) {
    const BoilLog log;
    for (const double step : {0.5, 1.0}) {
        Rows rows;
        rows.add(0, "lit,,,");
        for (int t = 0; t < 3 * 3600; t += 2) {
            const double celsius = log.boils(42 + 25.0 * t / (3 * 3600)) + test::noise(t, 0.05);
            rows.add(t, fmt::format("syrup_pan,{:.1f},degC,", inSteps(celsius, step)));
            rows.read(t, "stack", 350 + 30 * std::sin(t / 76.0) + test::noise(t, 4), "degC");
            if (t % 480 == 0)
                rows.add(t, "fired,,,");
        }
        EXPECT_EQ(stood(rows, Alarm::probe_stuck).times, 0) << step;
    }
}

TEST(LastDigit, AFreezeAtHalfDegreesIsFoundWithinTheHour) {
    static constexpr int freeze = 2 * 3600;
    const auto log = written(
        0.5, freeze + 3600, [](int) { return false; }, [](int t) { return std::min(t, freeze); });
    const auto stuck = stood(log, Alarm::probe_stuck);
    EXPECT_GE(stuck.first, freeze);
    EXPECT_LE(stuck.first, freeze + 2700);
}

// A minute's silence is no hold of the last digit.
TEST(LastDigit, ASilenceHidesNoFreeze) {
    static constexpr int silence = 2400, freeze = 3600;
    for (const double step : {0.01, 0.1}) {
        const auto log = written(
            step, freeze + 200, [](int t) { return t >= silence && t < silence + 60; },
            [](int t) { return std::min(t, freeze); });
        const auto stuck = stood(log, Alarm::probe_stuck);
        EXPECT_GE(stuck.first, freeze + 55) << step;
        EXPECT_LE(stuck.first, freeze + 120) << step;
    }
}

// Nor does a freeze that was over before it was noticed hide the next.
TEST(LastDigit, AShortFreezeHidesNoLongerOne) {
    static constexpr int first = 2400, second = 4200;
    const auto log = written(
        0.1, second + 200, [](int) { return false; },
        [](int t) { return t >= first && t < first + 50 ? first : std::min(t, second); });
    const auto stuck = stood(log, Alarm::probe_stuck);
    EXPECT_GE(stuck.first, second + 55);
    EXPECT_LE(stuck.first, second + 100);
}

TEST(LastDigit, AFreezeIsFoundAtQuarterDegreesToo) {
    static constexpr int freeze = 5000;
    const auto log = written(
        0.25, freeze + 900, [](int) { return false; }, [](int t) { return std::min(t, freeze); });
    const auto stuck = stood(log, Alarm::probe_stuck);
    EXPECT_GE(stuck.first, freeze);
    EXPECT_LE(stuck.first, freeze + 600);
}

// It falls silent and comes back with the same figure: the doubt goes on.
TEST(LastDigit, AFrozenProbeThatWasSilentIsFrozenStill) {
    static constexpr int freeze = 3600;
    const auto log = written(
        0.1, freeze + 300, [](int t) { return t >= freeze + 150 && t < freeze + 200; },
        [](int t) { return std::min(t, freeze); });
    EXPECT_TRUE(stands(log.at(freeze + 205), Alarm::probe_stuck));
}

// By whole degrees: an open thermocouple drives its meter to the top of the scale, and a fire that runs away does not
// stand still.
TEST(LastDigit, OfAStackThatStandsAtTheTopOfItsScaleIsNoHotFire) {
    for (const bool open : {true, false}) {
        test::BoilLog boil;
        test::Rows rows;
        rows.add(0, "lit,,,");
        for (int t = 0; t < 2400; ++t) {
            if (t % 30 == 0)
                rows.read(t, "pressure", 101.325, "kPa");
            if (t % 480 == 0)
                rows.add(t, "fired,,,");
            rows.read(t, "syrup_pan", boil.boils(64) + test::noise(t, 0.05), "degC");
            const double burns = open ? 1000 : 350 + std::min(650.0, 5.0 * (t - 1800));
            rows.read(t, "stack", open && t >= 1800 ? burns : std::round((t < 1800 ? 350 : burns) + test::noise(t, 8)),
                      "degC");
        }
        const auto hot = test::stood(rows, Alarm::stack_hot);
        EXPECT_EQ(hot.times, open ? 0 : 1);
        EXPECT_EQ(test::stands(rows.at(2399), Alarm::probe_stuck), open);
        EXPECT_LE(hot.first, 1890); // at once, where it is hot
    }
}

// Within what a flue can be, a hot stack is told at once, however little it moves.
TEST(LastDigit, AHotStackIsToldThoughItStands) {
    test::Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t < 700; ++t)
        rows.read(t, "stack", t < 600 ? 350 + t % 7 : std::min(700, 350 + 20 * (t - 600)), "degC");
    const auto hot = test::stood(rows, Alarm::stack_hot);
    EXPECT_GE(hot.first, 635);
    EXPECT_LE(hot.first, 645);
}

} // namespace
} // namespace panside
