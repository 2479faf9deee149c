// The trade's commonest disaster: a pan that runs dry while nobody looks. Three minutes before it is dry it is called
// wherever a level, a flow or a tank is read, and the picture says how many are left. A pan is as good as dry at 5 mm
// (common practice, no source).
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::noise;
using test::Rows;
using test::stands;
using test::stood;

// A pan and what feeds it. What is read and what is known of the rig is said; the pan probe reads 103 degC throughout,
// so that nothing but level, flow and tank tells.
struct DryingPan {
    Rows rows;
    double millimetre = 40, litre = 900;
    int t = 0;
    bool panRead = true, levelRead = false, flowRead = false, tankRead = false, fed = true;

    DryingPan() { rows.add(0, "lit,,,"); }
    void knows(const char* set) { rows.add(0, set); }
    // Sap runs in at 200 L/h where `feeds`; what boils off lowers the pan by `falls` millimetre a second.
    void run(int seconds, bool feeds, double falls = 0) {
        for (const int until = t + seconds; t < until; ++t, millimetre -= falls, litre -= feeds ? 200.0 / 3600 : 0) {
            if (t % 30 == 0)
                rows.read(t, "pressure", 101.325, "kPa");
            if (fed && t % 480 == 0)
                rows.add(t, "fired,,,");
            if (panRead)
                rows.read(t, "syrup_pan", 103 + noise(t, 0.05), "degC");
            if (levelRead)
                rows.read(t, "pan_level", millimetre + noise(t + 3, 1), "mm");
            if (flowRead)
                rows.read(t, "feed_flow", feeds ? 200 + noise(t, 10) : noise(t, 0.5) + 0.5, "L/h");
            if (tankRead)
                rows.read(t, "tank_level", litre + noise(t + 5, 0.5), "L");
        }
    }
    double left(double at) const { // as the picture says it, seconds
        for (const AlarmPicture& one : rows.at(at).alarms)
            if (one.alarm == Alarm::scorch_risk && one.left)
                return seconds(*one.left);
        return -1;
    }
};
constexpr int threeMinutes = 180, falseBefore = 480; // called sooner than eight minutes ahead it is a false alarm

TEST(DryPan, ALevelThatFallsIsEnoughWithNothingElseReadNorKnown) {
    for (const double falls : {0.03, 0.05, 0.08}) { // mm/s: 20, 12 and 7 minutes from full to dry
        DryingPan pan;
        pan.panRead = false;
        pan.levelRead = true;
        pan.run(1800, true);
        pan.run(static_cast<int>(35 / falls), false, falls);
        const auto scorch = stood(pan.rows, Alarm::scorch_risk);
        ASSERT_GT(scorch.first, 1800) << falls;
        EXPECT_GE(pan.t - scorch.first, threeMinutes) << falls;
        EXPECT_LE(pan.t - scorch.first, falseBefore) << falls;
        EXPECT_EQ(scorch.times, 1);
        EXPECT_EQ(scorch.last, pan.t - 1);
        for (const int before : {150, 60})
            EXPECT_NEAR(pan.left(pan.t - before), before, 45) << falls;
    }
}

// The tank's gauge stands, and the syrup pan is as deep as ever long after the flue pan would have been dry: sap runs
// in.
TEST(DryPan, ThatStaysFullForLongIsNone) {
    DryingPan pan;
    pan.levelRead = pan.tankRead = true;
    pan.run(1800, true);
    pan.run(3600, false);
    const auto scorch = stood(pan.rows, Alarm::scorch_risk);
    EXPECT_GT(scorch.first, 1800);
    EXPECT_LT(scorch.last, 1800 + 2000);
}

TEST(DryPan, AFluePanThatFallsIsCalledToo) {
    DryingPan pan;
    pan.run(1, true);
    for (; pan.t < 3000; ++pan.t)
        pan.rows.read(pan.t, "syrup_pan", 103 + noise(pan.t, 0.05), "degC")
            .read(pan.t, "flue_level", (pan.t < 2000 ? 50 : 50 - 0.045 * (pan.t - 2000)) + noise(pan.t, 1), "mm");
    const auto scorch = stood(pan.rows, Alarm::scorch_risk);
    EXPECT_GE(scorch.first, 2000);
    EXPECT_LE(scorch.first, pan.t - threeMinutes);
}

// Where nothing is known of the pans, ten minutes from a shut feed to a dry pan are the least in practice (common
// practice, no source: ten to thirty).
TEST(DryPan, AFeedThatStopsWhileTheFireBurnsIsCalledAndCounted) {
    DryingPan pan;
    pan.flowRead = true;
    pan.run(2400, true);
    const int stops = pan.t;
    pan.run(580, false);
    const auto scorch = stood(pan.rows, Alarm::scorch_risk);
    EXPECT_GT(scorch.first, stops + 120) << "a float shuts for a minute or two";
    EXPECT_LE(scorch.first, stops + 600 - threeMinutes);
    EXPECT_EQ(scorch.times, 1);
    EXPECT_NEAR(pan.left(stops + 450), 150, 30);
    // It runs again.
    pan.run(300, true);
    EXPECT_FALSE(stands(pan.rows.at(pan.t), Alarm::scorch_risk));
}

// The syrup pan is read and stands as it should: it is fed out of the flue pan, which nobody reads and which runs dry.
TEST(DryPan, AFluePanThatIsFedNoLongerIsCalledThoughTheSyrupPanStands) {
    DryingPan pan;
    pan.levelRead = pan.tankRead = true;
    pan.run(3600, true);
    const int stopped = pan.t;
    pan.run(540, false);
    const auto called = stood(pan.rows, Alarm::scorch_risk);
    ASSERT_GE(called.first, stopped);
    EXPECT_LE(called.first, stopped + 540) << "ten minutes from a shut feed to a dry pan";
    const auto picture = pan.rows.at(pan.t);
    const auto alarm = std::find_if(picture.alarms.begin(), picture.alarms.end(),
                                    [](const AlarmPicture& one) { return one.alarm == Alarm::scorch_risk; });
    ASSERT_NE(alarm, picture.alarms.end());
    EXPECT_EQ(alarm->why.front().kind, GroundKind::feedStopped);
    EXPECT_EQ(scorchCause(*alarm), ScorchCause::runsDry);
}

// A delivery runs in for six minutes, and is keyed when it is over: the tank rises, and the pans are fed.
TEST(DryPan, ATankThatIsFilledIsNoStoppedFeed) {
    DryingPan pan;
    pan.levelRead = pan.tankRead = true;
    pan.run(3600, true);
    for (int i = 0; i < 360; ++i) {
        pan.run(1, true);
        pan.litre += 3;
    }
    pan.rows.add(pan.t, "sap_in,1080,L,");
    pan.run(900, true);
    EXPECT_EQ(stood(pan.rows, Alarm::scorch_risk).first, -1);
    pan.run(600, false);
    EXPECT_TRUE(stands(pan.rows.at(pan.t), Alarm::scorch_risk)) << "and one that stops after it is called";
}

TEST(DryPan, AFloatThatOpensAndShutsIsNoStoppedFeed) {
    DryingPan pan;
    pan.flowRead = true;
    for (int i = 0; i < 30; ++i) {
        pan.run(70, true);
        pan.run(110, false);
    }
    EXPECT_EQ(stood(pan.rows, Alarm::scorch_risk).first, -1);
}

TEST(DryPan, AFeedThatIsShutWithTheFireIsNone) {
    DryingPan pan;
    pan.flowRead = true;
    pan.run(2400, true);
    pan.rows.add(pan.t, "shutdown,,,");
    pan.fed = false;
    // Nothing boils any more when the fire is out.
    for (const int until = pan.t + 1800; pan.t < until; ++pan.t)
        pan.rows.read(pan.t, "syrup_pan", 103 - 0.02 * (pan.t - 2400), "degC").read(pan.t, "feed_flow", 0, "L/h");
    EXPECT_EQ(stood(pan.rows, Alarm::scorch_risk).first, -1);
}

// 40 mm less 5 mm over 2.6 m2 are 91 L; 200 L/h take them in 1640 s. No flow is read, the tank alone tells.
TEST(DryPan, ATankThatStandsStillIsCalledFromTheTankAlone) {
    DryingPan pan;
    pan.knows("set,40,mm,key=running_depth");
    pan.knows("set,2,m2,key=flue_pan_area");
    pan.knows("set,0.6,m2,key=syrup_pan_area");
    pan.tankRead = true;
    pan.run(3600, true);
    const int stands = pan.t;
    pan.run(1600, false);
    const auto scorch = stood(pan.rows, Alarm::scorch_risk);
    ASSERT_GT(scorch.first, stands + 300);
    EXPECT_LE(scorch.first, stands + 1640 - threeMinutes);
    EXPECT_GE(scorch.first, stands + 1640 - falseBefore - 330) << "a quarter is kept in hand";
    EXPECT_GE(pan.left(stands + 1300), 0);
    EXPECT_LE(pan.left(stands + 1300), 340);
}

// ---- the level probe fails while the pan falls

TEST(DryPan, ALevelThatFellIsFollowedOnWhenItsProbeFallsSilent) {
    DryingPan pan;
    pan.levelRead = true;
    pan.run(1800, true);
    pan.run(340, false, 0.05); // 23 mm are left, 6 min of them over the dry
    EXPECT_EQ(stood(pan.rows, Alarm::scorch_risk).first, -1);
    pan.levelRead = false;
    pan.run(350, false, 0.05);
    const auto scorch = stood(pan.rows, Alarm::scorch_risk);
    const int dry = 1800 + 700;
    ASSERT_GT(scorch.first, 0);
    EXPECT_LE(scorch.first, dry - threeMinutes);
    EXPECT_GE(scorch.first, dry - falseBefore);
    EXPECT_NEAR(pan.left(dry - 100), 100, 45);
}

TEST(DryPan, WhatStandsDoesNotEndBecauseTheLevelProbeFails) {
    for (const bool sticks : {false, true}) {
        DryingPan pan;
        pan.levelRead = true;
        pan.run(1800, true);
        pan.run(500, false, 0.05); // 15 mm: called
        ASSERT_TRUE(stands(pan.rows.at(pan.t), Alarm::scorch_risk));
        pan.levelRead = false;
        for (const int until = pan.t + 200; pan.t < until; ++pan.t) {
            pan.rows.read(pan.t, "syrup_pan", 103 + noise(pan.t, 0.05), "degC");
            if (sticks)
                pan.rows.read(pan.t, "pan_level", 15.02, "mm");
        }
        const auto scorch = stood(pan.rows, Alarm::scorch_risk);
        EXPECT_EQ(scorch.last, pan.t - 1) << sticks;
        EXPECT_EQ(scorch.times, 1) << sticks;
    }
}

// A draw begins the line of the level anew: what was called on a short one stands as long.
TEST(DryPan, WhatStandsSinceADrawDoesNotEndBecauseTheLevelProbeFails) {
    DryingPan pan;
    pan.levelRead = true;
    pan.run(1800, true);
    pan.run(200, false, 0.05);
    pan.rows.add(pan.t, "draw_open,,,");
    pan.run(40, false, 0.05);
    pan.rows.add(pan.t, "draw_close,3,L,");
    pan.run(240, false, 0.05); // 16 mm: called
    ASSERT_TRUE(stands(pan.rows.at(pan.t), Alarm::scorch_risk));
    pan.levelRead = false;
    pan.run(500, false, 0.05); // dry for the last five minutes
    EXPECT_EQ(stood(pan.rows, Alarm::scorch_risk).last, pan.t - 1);
}

// Five readings after a draw are no fall, however they scatter.
TEST(DryPan, AFewReadingsOverAFullPanAreNotFollowedOn) {
    for (int begins = 1800; begins < 1840; ++begins) {
        DryingPan pan;
        pan.levelRead = true;
        pan.run(begins, true);
        pan.rows.add(pan.t, "draw_open,,,");
        pan.run(30, true);
        pan.rows.add(pan.t, "draw_close,3,L,");
        pan.levelRead = false;
        for (int i = 0; i < 5; ++i, pan.run(1, true))
            pan.rows.read(pan.t, "pan_level", 40 + noise(7 * pan.t, 2), "mm");
        pan.run(400, true);
        EXPECT_EQ(stood(pan.rows, Alarm::scorch_risk).first, -1) << begins;
    }
}

TEST(DryPan, ALevelProbeThatFailsOverAFullPanIsNoScorch) {
    DryingPan pan;
    pan.levelRead = true;
    pan.run(1800, true);
    pan.levelRead = false;
    pan.run(1800, true);
    EXPECT_EQ(stood(pan.rows, Alarm::scorch_risk).first, -1);
    EXPECT_TRUE(stands(pan.rows.at(1900), Alarm::probe_silent));
}

// The feed stops and the level probe is dead: the flow tells.
TEST(DryPan, WithADeadLevelProbeTheFlowTells) {
    DryingPan pan;
    pan.levelRead = pan.flowRead = true;
    pan.run(2400, true);
    pan.levelRead = false;
    pan.run(300, true);
    const int stops = pan.t;
    pan.run(580, false);
    const auto scorch = stood(pan.rows, Alarm::scorch_risk);
    EXPECT_GT(scorch.first, stops);
    EXPECT_LE(scorch.first, stops + 600 - threeMinutes);
}

// It comes back when the plug is put in again, over a pan that was flooded meanwhile: then it is over.
TEST(DryPan, AFloodedPanEndsItWhenTheLevelIsReadAgain) {
    DryingPan pan;
    pan.levelRead = true;
    pan.run(1800, true);
    pan.run(500, false, 0.05);
    pan.levelRead = false;
    pan.run(60, false, 0.05);
    pan.levelRead = true;
    pan.millimetre = 42;
    pan.run(240, true);
    EXPECT_FALSE(stands(pan.rows.at(pan.t), Alarm::scorch_risk));
}

// Two minutes of a swing say that it thickens thrice as fast as it does on the whole; a pan as deep as ever cannot.
TEST(DryPan, ADeepPanIsNoScorchForASwingOverTheMark) {
    test::BoilLog log;
    const auto level = [&](int from) {
        for (int t = from; t < log.now; t += 10)
            log.rows.read(t, "pan_level", 38 + test::noise(t, 0.5), "mm");
    };
    for (int i = 0; i < 4; ++i) {
        const int from = log.now;
        log.cycle();
        level(from);
    }
    const int from = log.now;
    log.climb(61, 66.9, 750);
    log.climb(66.9, 70.4, 160);
    log.climb(70.4, 69, 120);
    level(from);
    EXPECT_EQ(test::stood(log.rows, Alarm::scorch_risk).times, 0);
}

} // namespace
} // namespace panside
