// What people and probes really send, and the mark and the forecast that must stand it.
#include "core/boil/forecast.h"
#include "core/boil/hindsight.h"
#include "core/boil/mark.h"
#include "core/boil/pan_trace.h"
#include "core/boil/state.h"
#include "tests/core/boil/logs.h"

#include <cmath>

namespace panside {
namespace {

using test::noon;
using test::Rows;

// Cycles of a quarter of an hour at 100 kPa, where water boils at 99.606 degC (IAPWS R7-97(2012), table 36) and syrup
// 4.19 K above it (Starzak and Peacock 1997): the reading climbs past the mark, is drawn for a minute, and climbs
// again.
constexpr double cycle = 900, water = 99.606, syrup = 4.19;
double readingAt(double at) {
    const double into = std::fmod(at, cycle);
    return water + (into < 60 ? 4.3 - 0.03 * into : 2.5 + 0.0022 * (into - 60)) + 0.01 * (std::fmod(at / 10, 3) - 1);
}
struct Log {
    double every = 10, until = 5 * cycle + 500;
    bool pressureAllAlong = true;
};
Rows boiled(const Log& log) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (double at = 0; at <= log.until; at += log.every) {
        if (std::fmod(at, 480) < log.every)
            rows.add(at, "fired,,,");
        if (std::fmod(at, 60) < log.every && (log.pressureAllAlong || at < log.until - 3600))
            rows.read(at, "pressure", 100.0, "kPa");
        if (at >= cycle && std::fmod(at, cycle) < log.every)
            rows.add(at, "draw_open,,,").add(at + 60, "draw_close,3,L,");
        rows.read(at, "syrup_pan", readingAt(at), "degC");
    }
    std::stable_sort(rows.facts.begin(), rows.facts.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    return rows;
}
// 500 s into a cycle the reading has 730 s less some to go: it passes syrup at 60 + (4.19 - 2.5) / 0.0022 s.
constexpr double left = 60 + (syrup - 2.5) / 0.0022 - 500;

TEST(BadInput, WithoutPressureForAnHourTheForecastGoesOnLessSure) {
    const Picture with = boiled({}).at(5 * cycle + 500),
                  without = boiled({.pressureAllAlong = false}).at(5 * cycle + 500);
    ASSERT_TRUE(with.drawEta && without.drawEta && without.target);
    EXPECT_NEAR(seconds(without.drawEta->p50), left, 90);
    EXPECT_GT(without.targetUncertainty->kelvin(), with.targetUncertainty->kelvin());
    EXPECT_NEAR(without.waterBoilsAge.count(), 3600, 61);
}

TEST(BadInput, ReadingsOfOneMomentAndOutOfOrderChangeNothing) {
    const Log log{};
    const double now = log.until;
    Rows rows = boiled(log), twice = rows;
    for (double at = now - 300; at <= now; at += 10)
        twice.read(at, "syrup_pan", readingAt(at), "degC"); // each once more, after all others
    const Picture once = rows.at(now), again = twice.at(now);
    ASSERT_TRUE(once.drawEta && again.drawEta && again.drawEta->p90);
    EXPECT_NEAR(seconds(again.drawEta->p50), seconds(once.drawEta->p50), 60);
    EXPECT_TRUE(std::isfinite(seconds(*again.drawEta->p90)));
}

TEST(BadInput, AModelAskedAboutAMomentBeforeItsOwnStandsStill) {
    DrawEnd end;
    end.start(noon, 60, 1);
    end.read(noon + Duration{30}, 60.2, 0.01);
    const double sugar = end.sugar();
    end.passTo(noon + Duration{-600});
    end.passTo(noon + Duration{30});
    EXPECT_EQ(end.sugar(), sugar);
    EXPECT_EQ(end.at(), noon + Duration{30});
}

TEST(BadInput, AReadingAMinuteIsEnough) {
    const Picture picture = boiled({.every = 60}).at(5 * cycle + 480);
    ASSERT_TRUE(picture.drawEta && picture.drawEta->p90);
    EXPECT_NEAR(seconds(picture.drawEta->p50), left + 20, 120);
    EXPECT_LE(seconds(picture.drawEta->p10), left + 20);
    EXPECT_GE(seconds(*picture.drawEta->p90), left + 20);
}

TEST(BadInput, ACupInTheWrongUnitIsQuestionedNotBelieved) {
    Rows rows = boiled({});
    const auto cup = [&](double drawn, const char* said) {
        rows.add(drawn + 50, fmt::format("density_check,59.7,brix,temp={};cal=60degF;drawn={}", said,
                                         textOf(noon + Duration{drawn})));
    };
    cup(2 * cycle, "92degC");
    const double before = rows.at(5 * cycle).target->celsius();
    cup(4 * cycle, "92degF"); // it was Celsius
    const Picture picture = rows.at(5 * cycle);
    EXPECT_EQ(picture.checks, 1);
    EXPECT_EQ(picture.questionedChecks, 1);
    EXPECT_NEAR(picture.target->celsius(), before, 1e-9);
}

// The sample was drawn at the opening, the row typed in half an hour later: it is held against the reading of the
// opening.
TEST(BadInput, ACheckHalfAnHourLateCountsWhereItWasDrawn) {
    const double drawn = 3 * cycle, typed = drawn + 1800;
    Rows late = boiled({});
    late.add(typed,
             fmt::format("density_check,66.9,brix,temp=20degC;cal=20degC;drawn={}", textOf(noon + Duration{drawn})));
    const Picture picture = late.at(5 * cycle);
    EXPECT_EQ(picture.checks, 1);
    // The pan stood at 4.3 K above water then.
    EXPECT_NEAR(picture.probeOffset.kelvin(), 4.3 - syrup, 0.06);
}

// Scale grows only on a pan that a check stands for.
TEST(BadInput, TheMarkDoesNotWanderByItself) {
    Rows rows = boiled({.until = 6 * 3600});
    EXPECT_EQ(rows.at(6 * 3600).probeOffset.kelvin(), 0);
    rows.add(3600, "density_check,66.9,brix,temp=20degC;cal=20degC");
    const double fresh = rows.at(3700).probeOffset.kelvin(), later = rows.at(6 * 3600).probeOffset.kelvin();
    EXPECT_GT(later, fresh + 0.02);
    EXPECT_LT(later, fresh + 0.06);
}

TEST(BadInput, ASwappedPanStartsTheSugarAnewAndKeepsTheWaits) {
    Rows rows = boiled({});
    const double now = 5 * cycle + 500;
    const Picture before = rows.at(now);
    rows.add(now - 5, "pan_swapped,,,");
    const Picture after = rows.at(now);
    ASSERT_TRUE(before.drawEta && after.drawEta && after.drawEta->p90);
    EXPECT_GT(seconds(*after.drawEta->p90 - after.drawEta->p10), seconds(*before.drawEta->p90 - before.drawEta->p10));
    EXPECT_GT(after.targetUncertainty->kelvin(), 0.2);
}

TEST(Hindsight, ScoresEachDrawAndKeepsTheFansAsTheyStood) {
    Hindsight hindsight{Duration{300}};
    for (const Fact& fact : boiled({}).facts)
        hindsight.add(fact);
    ASSERT_GE(hindsight.scores().size(), 3U);
    for (std::size_t i = 1; i < hindsight.scores().size(); ++i)
        EXPECT_NEAR(secondsBetween(hindsight.scores()[i - 1].at, hindsight.scores()[i].at), cycle, 60);
    ASSERT_GT(hindsight.fans().size(), 6U);
    const PastForecast& last = hindsight.fans().back();
    const double into = std::fmod(secondsBetween(noon, last.at), cycle);
    EXPECT_NEAR(seconds(last.draw.p50), left + 500 - into, 120);
    EXPECT_NEAR(last.targetRise.kelvin(), syrup, 0.02);
}

TEST(PanTrace, IsFreedOfNoiseByTheLineThroughTheMinuteAndTenSeconds) {
    const auto traced = [](double last) {
        PanTrace trace;
        for (int i = 0; i < 22; ++i)
            trace.add(noon + Duration{10.0 * i}, 100 + 0.01 * i + (i % 2 ? 0.05 : -0.05) + (i > 20 ? last : 0));
        return trace;
    };
    const PanTrace trace = traced(0);
    // Seven readings 0.05 off to and fro, at -50 to 10 s. Least squares by hand: at 0 they weigh 10, 8, 6, 4, 2, 0 and
    // -2 of 28 from the last on, so that it is off by 0.05 * (10 - 8 + 6 - 4 + 2 - 0 - 2) / 28 = 0.0071 and not by
    // 0.05.
    EXPECT_NEAR(trace.smooth(noon + Duration{200}).value(), 100.2 + 0.0071, 0.001);
    EXPECT_FALSE(trace.smooth(noon + Duration{900}));
    // A draw has turned it: only the six up to then, which weigh 22, 16, 10, 4, -2 and -8 of 42.
    EXPECT_NEAR(traced(-0.5).smooth(noon + Duration{200}).value(), 100.2 - 0.0214, 0.001);
}

// As a draw is opened the climb bends over into a fall: with what came after, the bend is followed.
TEST(PanTrace, FollowsABendOnceItIsReadOnBothSides) {
    PanTrace trace;
    const auto read = [](double t) { return 103 + 0.004 * t - 0.0001 * t * t; };
    for (int i = -20; i <= 20; ++i)
        trace.add(noon + Duration{200 + 10.0 * i}, read(10.0 * i));
    EXPECT_NEAR(trace.smooth(noon + Duration{200}).value(), read(0), 0.001);
    EXPECT_NEAR(trace.smooth(noon + Duration{215}).value(), read(15), 0.001);
}

} // namespace
} // namespace panside
