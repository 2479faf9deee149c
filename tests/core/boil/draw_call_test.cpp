// The call to draw stands when the pan is at the target and no noise made it.
#include "core/boil/draw_call.h"

#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::Rows;

TEST(DrawCall, ComesWhenThePanHasStoodOverTheTarget) {
    BoilLog log;
    log.climb(61, 66.9, 600);
    EXPECT_FALSE(log.picture().drawDue);
    int waited = 0;
    while (!log.picture().drawDue && waited < 60) {
        log.second(66.95 + 0.001 * waited);
        ++waited;
    }
    EXPECT_GE(waited, 8);
    EXPECT_LE(waited, 40);
    log.rows.add(log.now, "draw_open,,,");
    log.hold(67.3, 5);
    EXPECT_FALSE(log.picture().drawDue) << "it is being drawn";
}

TEST(DrawCall, IsNotMadeByACrestOfTheBoil) {
    BoilLog log;
    log.climb(61, 66.4, 600);
    for (int t = 0; t < 300; ++t) { // half a brix up and down, over the target for some seconds of each half minute
        log.second(66.4 + 0.6 * std::sin(t * 6.2832 / 30));
        EXPECT_FALSE(log.picture().drawDue) << t;
    }
}

// A pan that climbs by a third of a Brix a minute: called at the mark, by neither a smoothing that lags nor a stand too
// long, and not sooner by more than a check can tell.
TEST(DrawCall, ComesWithinAQuarterOfABrixOfTheMarkAndThenStands) {
    for (const double perMinute : {0.15, 0.33, 0.6}) {
        BoilLog log;
        log.climb(65.5, 66.4, static_cast<int>(60 * 0.9 / perMinute));
        double brix = 66.4;
        while (!log.picture().drawDue && brix < 68)
            log.second(brix += perMinute / 60);
        EXPECT_NEAR(brix, 66.9, 0.25) << perMinute;
        int gone = 0;
        for (int t = 0; t < 120; ++t) {
            log.second(brix += perMinute / 60);
            gone += !log.picture().drawDue;
        }
        EXPECT_EQ(gone, 0) << perMinute;
    }
}

// A line through the last half minute shoots kelvins over the knee where what warms begins to boil.
TEST(DrawCall, IsNotMadeAsAPanThatWarmsBeginsToBoil) {
    BoilLog log;
    double celsius = 20;
    for (int t = 0; t < 400; ++t) { // the faster the nearer, as with a fire that catches; at last it bends
        log.reads(celsius += std::min(0.1 + 0.002 * t, 0.15 * (log.boils(50) - celsius)));
        const Picture seen = log.picture();
        EXPECT_FALSE(seen.drawDue) << t;
        EXPECT_FALSE(seen.drawEta && seen.drawEta->p50.count() <= 0) << t;
    }
}

// A box that tells the mean of five minutes tells, after a draw, of the time before it.
TEST(DrawCall, IsNotMadeByAMeanOfTheTimeBeforeTheDrawWasShut) {
    BoilLog log;
    const auto tell = [&](double brix) {
        log.rows.read(log.now, "pressure", log.kilopascal, "kPa");
        log.rows.read(log.now, "syrup_pan", log.boils(brix), "degC");
    };
    for (const double brix : {60.5, 61.8, 63.0, 64.2, 65.4, 66.5}) {
        log.now += 300;
        tell(brix);
    }
    log.rows.add(log.now + 100, "draw_open,,,");
    log.rows.add(log.now + 190, "draw_close,3,L,");
    log.now += 300;
    tell(67.6);
    EXPECT_FALSE(log.rows.at(log.now + 20).drawDue);
    log.now += 300;
    tell(67.6);
    EXPECT_TRUE(log.rows.at(log.now + 20).drawDue) << "that is the pan since";
}

// One decision: the range to the draw is zero where the call stands, and nowhere else.
TEST(DrawCall, IsWhatTheRangeSaysToo) {
    BoilLog log;
    log.cycle();
    log.climb(61, 66.5, 700);
    for (int t = 0; t < 240; ++t) {
        log.second(66.5 + 0.003 * t);
        const auto picture = log.picture();
        ASSERT_TRUE(picture.drawEta) << t;
        EXPECT_EQ(picture.drawDue, picture.drawEta->p50 == Duration{0}) << t;
    }
    EXPECT_TRUE(log.picture().drawDue);
}

TEST(DrawCall, IsMadeAtOnceByWhoeverReadAndTypedIt) {
    Rows rows;
    rows.add(0, "pressure,101.325,kPa,").add(0, "lit,,,");
    rows.add(600, "syrup_pan,103.2,degC,probe=hand");
    EXPECT_FALSE(rows.at(601).drawDue);
    rows.add(1200, "pressure,101.325,kPa,").add(1200, "syrup_pan,104.6,degC,probe=hand");
    EXPECT_TRUE(rows.at(1201).drawDue);
}

TEST(DrawCall, IsForbiddenWhileThePanIsLow) {
    BoilLog log;
    log.rows.add(0, "set,40,mm,key=running_depth");
    log.climb(61, 67.2, 600);
    for (int t = 0; t < 60; ++t) {
        log.rows.read(log.now, "pan_level", 15 + t % 2, "mm");
        log.second(67.2);
    }
    const auto picture = log.picture();
    EXPECT_TRUE(test::stands(picture, Alarm::pan_low));
    EXPECT_FALSE(picture.drawDue);
}

} // namespace
} // namespace panside
