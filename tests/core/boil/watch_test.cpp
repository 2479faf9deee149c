// Alarms read like a log: rows in, what stands out.
#include "tests/core/boil/logs.h"

#include <cmath>

namespace panside {
namespace {

using test::noon;
using test::Rows;
using test::stands;

// Noise without chance: the same to the last digit on every machine.
double noise(int t, double size) { return size * std::sin(t * 12.9898) * std::cos(t * 4.1414); }

// A calm boil at a pan temperature, `from` to `to` seconds, one reading a second.
Rows boil(Rows rows, int from, int to, double celsius) {
    for (int t = from; t < to; ++t) {
        rows.read(t, "syrup_pan", celsius + noise(t, 0.05), "degC");
        if (t % 30 == 0)
            rows.read(t, "pressure", 101.3, "kPa");
    }
    return rows;
}
Rows begun() {
    Rows rows;
    rows.add(0, "lit,,,");
    return rows;
}
// When an alarm first stood and last stood, by pictures a second apart.
struct Stood {
    int first = -1, last = -1;
};
Stood stood(const Rows& rows, Alarm alarm, int until) {
    Stood stood;
    replay(rows.facts, {}, [&](const Picture& picture) {
        const int t = static_cast<int>(secondsBetween(noon, picture.at));
        if (!stands(picture, alarm) || t > until)
            return;
        if (stood.first < 0)
            stood.first = t;
        stood.last = t;
    });
    return stood;
}

TEST(Watch, ASilentProbeIsCalledTenSecondsAfterItsLastReading) {
    Rows rows = boil(begun().add(0, "crew,,,by=Ada"), 0, 100, 102);
    const Boil boil = rows.boil();
    EXPECT_FALSE(stands(boil.pictureAt(noon + Duration{108.9}), Alarm::probe_silent));
    const Picture silent = boil.pictureAt(noon + Duration{109});
    ASSERT_TRUE(stands(silent, Alarm::probe_silent));
    EXPECT_EQ(silent.alarms.at(0).priority, Priority::high);
    EXPECT_EQ(silent.alarms.at(0).since, noon + Duration{109});
    EXPECT_EQ(silent.reading(Series::syrup_pan)->trust, Trust::gone);
    EXPECT_FALSE(silent.syrupPan);
    EXPECT_FALSE(silent.rise);
}

TEST(Watch, ASlowLoggerIsSilentAfterThreeOfItsSpacings) {
    Rows rows = begun();
    for (int t = 0; t <= 600; t += 60)
        rows.read(t, "stack", 300 + noise(t, 5), "degC");
    EXPECT_FALSE(stands(rows.at(779), Alarm::probe_silent));
    const Picture picture = rows.at(780);
    EXPECT_TRUE(stands(picture, Alarm::probe_silent));
    EXPECT_EQ(picture.alarms.at(0).priority, Priority::medium);
}

TEST(Watch, WhatIsTypedInIsNeverSilent) {
    Rows rows = begun();
    for (int t = 0; t <= 900; t += 300)
        rows.read(t, "syrup_pan", 102 + 0.001 * t, "degC", "probe=hand");
    EXPECT_FALSE(stands(rows.at(9000), Alarm::probe_silent));
    EXPECT_EQ(rows.at(1000).reading(Series::syrup_pan)->trust, Trust::good);
    EXPECT_EQ(rows.at(900 + 1300).reading(Series::syrup_pan)->trust, Trust::doubtful);
}

// A box that feeds several readings, a slow one among them, falls silent: one alarm, named by all that it fed.
Rows boxes(int pan, int stack, int pressure, int until) {
    Rows rows = begun();
    for (int t = 0; t < until; ++t) {
        if (t % pan == 0)
            rows.read(t, "syrup_pan", 102.5 + noise(t, 0.05), "degC", "probe=pan box");
        if (t % stack == 0)
            rows.read(t, "stack", 350 + noise(t, 5), "degC", "probe=pan box");
        if (t % pressure == 0)
            rows.read(t, "pressure", 101.3 + noise(t, 0.01), "kPa", "probe=pan box");
    }
    return rows;
}
std::vector<AlarmPicture> silences(const Picture& picture) {
    std::vector<AlarmPicture> all;
    for (const AlarmPicture& one : picture.alarms)
        if (one.alarm == Alarm::probe_silent)
            all.push_back(one);
    return all;
}

TEST(Watch, ABoxThatFallsSilentIsOneAlarmNamedByAllItFed) {
    const Boil boil = boxes(1, 5, 30, 300).boil();
    const auto early = silences(boil.pictureAt(noon + Duration{312})),
               late = silences(boil.pictureAt(noon + Duration{500}));
    ASSERT_EQ(early.size(), 1U);
    EXPECT_EQ(early[0].series, Series::syrup_pan);
    ASSERT_EQ(late.size(), 1U);
    EXPECT_EQ(late[0].since, early[0].since);
    EXPECT_EQ(late[0].priority, Priority::high);
    EXPECT_EQ(late[0].also, (std::vector{Series::stack, Series::pressure}));
    EXPECT_EQ(late[0].why.size(), 3U);
    std::string json;
    appendJson(json, boil.pictureAt(noon + Duration{500}));
    for (const char* fed : {"syrup_pan: nothing read", "stack: nothing read", "pressure: nothing read"})
        EXPECT_NE(json.find(fed), std::string::npos) << fed;
}

TEST(Watch, ABoxWhoseSyrupPanIsItsSlowestIsStillUrgent) {
    Rows rows = boxes(10, 1, 1, 300);
    rows.add(315, "alarm_seen,,,name=probe_silent");
    const Boil boil = rows.boil();
    EXPECT_EQ(silences(boil.pictureAt(noon + Duration{312})).at(0).priority, Priority::medium);
    const auto late = silences(boil.pictureAt(noon + Duration{400}));
    ASSERT_EQ(late.size(), 1U);
    EXPECT_EQ(late[0].priority, Priority::high);
    EXPECT_EQ(late[0].state, AlarmState::unseen);
    EXPECT_EQ(late[0].also.size(), 2U);
}

TEST(Watch, TwoBoxesAreTwoAlarmsAndAProbeOfABoxThatSpeaksIsItsOwn) {
    Rows rows = boxes(1, 1, 10, 300);
    for (int t = 0; t < 300; ++t)
        rows.read(t, "tank_level", 900 - t / 12.0 + noise(t, 1), "L", "probe=tank box");
    const auto two = silences(rows.at(400));
    ASSERT_EQ(two.size(), 2U);
    EXPECT_EQ(two[0].series, Series::syrup_pan);
    EXPECT_EQ(two[1].series, Series::tank_level);
    EXPECT_TRUE(two[1].also.empty());
    for (int t = 300; t < 400; ++t)
        rows.read(t, "syrup_pan", 102.5 + noise(t, 0.05), "degC", "probe=pan box");
    const auto others = silences(rows.at(399)); // the pan speaks
    ASSERT_EQ(others.size(), 2U);
    EXPECT_EQ(others[0].series, Series::stack);
    EXPECT_EQ(others[0].also, std::vector{Series::pressure});
}

TEST(Watch, ABoxThatSpeaksAgainLeavesOneAlarmThatIsOver) {
    Rows rows = boxes(1, 1, 1, 300);
    const Rows again = boxes(1, 1, 1, 400);
    for (const Fact& fact : again.facts)
        if (fact.at >= noon + Duration{330})
            rows.facts.push_back(fact);
    const auto over = silences(rows.at(399));
    ASSERT_EQ(over.size(), 1U);
    EXPECT_EQ(over[0].state, AlarmState::goneUnseen);
}

// A press is worked now and then: its gauge's first pause is called for a quarter of an hour, the later ones not.
TEST(Watch, APressThatIsPutByIsNoSilentProbe) {
    Rows rows = begun();
    for (const int run : {0, 4000, 8000})
        for (int t = run; t < run + 300; ++t)
            rows.read(t, "filter_pressure", 100 + noise(t, 3), "kPa");
    EXPECT_TRUE(stands(rows.at(600), Alarm::probe_silent));
    EXPECT_FALSE(stands(rows.at(1300), Alarm::probe_silent));
    EXPECT_EQ(rows.at(1300).reading(Series::filter_pressure)->trust, Trust::gone);
    EXPECT_FALSE(stands(rows.at(4600), Alarm::probe_silent));
    EXPECT_EQ(stood(rows, Alarm::probe_silent, 8300).last, 299 + 899);
}

TEST(Watch, AFrozenDigitIsCalledWithinAMinuteOfBoil) {
    Rows rows = boil(begun(), 0, 300, 102.5);
    for (int t = 300; t < 420; ++t)
        rows.read(t, "syrup_pan", 102.51, "degC");
    const Stood stuck = stood(rows, Alarm::probe_stuck, 420);
    EXPECT_GE(stuck.first, 355);
    EXPECT_LE(stuck.first, 361);
    EXPECT_EQ(rows.at(400).reading(Series::syrup_pan)->reason, Reason::stuck);
}

TEST(Watch, WholeDegreesMayHoldForMinutes) {
    Rows rows = begun();
    for (int t = 0; t < 1200; ++t) {
        rows.read(t, "syrup_pan", std::floor(217 + t / 240.0), "degF");
        rows.read(t, "stack", 300 + noise(t, 5), "degC");
    }
    EXPECT_EQ(stood(rows, Alarm::probe_stuck, 1200).first, -1);
}

TEST(Watch, ASpikeIsNoReadingAndNoAlarm) {
    Rows rows = boil(begun(), 0, 300, 102.5);
    rows.read(300, "syrup_pan", 140, "degC").read(301, "syrup_pan", 55, "degC");
    rows = boil(std::move(rows), 302, 330, 102.5);
    EXPECT_NEAR(rows.at(301).syrupPan->celsius(), 102.5, 0.1);
    for (int t = 300; t < 330; ++t)
        EXPECT_TRUE(rows.at(t).alarms.empty() || rows.at(t).alarms[0].alarm == Alarm::fire_overdue) << t;
}

TEST(Watch, FahrenheitSaidToBeCelsiusIsNotBelieved) {
    Rows rows = boil(begun(), 0, 300, 102.5);
    for (int t = 300; t < 330; ++t)
        rows.read(t, "syrup_pan", 216.5 + noise(t, 0.1), "degC");
    EXPECT_FALSE(stands(rows.at(304), Alarm::reading_implausible));
    const Picture picture = rows.at(305);
    EXPECT_TRUE(stands(picture, Alarm::reading_implausible));
    EXPECT_EQ(picture.reading(Series::syrup_pan)->reason, Reason::wrongUnit);
    EXPECT_EQ(picture.reading(Series::syrup_pan)->trust, Trust::gone);
}

TEST(Watch, ASecondProbeTakesOverOnTheFirstOnesScale) {
    Rows rows = begun();
    for (int t = 0; t < 300; ++t) {
        rows.read(t, "syrup_pan", 102.5 + noise(t, 0.05), "degC", "probe=front");
        rows.read(t, "syrup_pan", 103.1 + noise(t + 7, 0.05), "degC", "probe=spare");
    }
    for (int t = 300; t < 330; ++t)
        rows.read(t, "syrup_pan", 103.1 + noise(t + 7, 0.05), "degC", "probe=spare");
    const Picture before = rows.at(299), after = rows.at(329);
    EXPECT_FALSE(before.reading(Series::syrup_pan)->standsIn);
    EXPECT_TRUE(after.reading(Series::syrup_pan)->standsIn);
    EXPECT_EQ(after.reading(Series::syrup_pan)->probe, "spare");
    EXPECT_NEAR(after.syrupPan->celsius(), 102.5, 0.05);
    EXPECT_TRUE(stands(after, Alarm::probe_silent));
}

TEST(Watch, OverTheTargetIsCalledAfterTwentySeconds) {
    // 66.9 brix boils 4.2 K above water: well under it, then well over.
    Rows rows = boil(boil(begun(), 0, 300, 103.5), 300, 400, 105.0);
    const Stood above = stood(rows, Alarm::above_target, 400);
    EXPECT_GE(above.first, 320);
    EXPECT_LE(above.first, 335);
    rows.add(400, "draw_open,,,");
    EXPECT_FALSE(stands(rows.at(400), Alarm::above_target));
}

TEST(Watch, AForgottenDrawIsCalled) {
    Rows rows = boil(begun(), 0, 200, 104.6);
    rows.add(200, "draw_open,,,");
    rows = boil(std::move(rows), 200, 300, 103.0);
    const Stood overdue = stood(rows, Alarm::draw_overdue, 300);
    EXPECT_GE(overdue.first, 219);
    EXPECT_LE(overdue.first, 240);
    rows.add(300, "draw_close,,,");
    EXPECT_FALSE(stands(rows.at(300), Alarm::draw_overdue));
}

TEST(Watch, AFiringThatIsLateIsCalledOnTheSecond) {
    Rows rows;
    rows.add(0, "set,6,min,key=fire_interval").add(1, "lit,,,").add(60, "fired,,,");
    EXPECT_FALSE(stands(rows.at(509.9), Alarm::fire_overdue));
    EXPECT_TRUE(stands(rows.at(510), Alarm::fire_overdue));
    rows.add(520, "fired,,,");
    EXPECT_FALSE(stands(rows.at(520), Alarm::fire_overdue));
    rows.add(600, "shutdown,,,");
    EXPECT_FALSE(stands(rows.at(5000), Alarm::fire_overdue));
}

TEST(Watch, APanThatFallsDryIsForeseenThreeMinutesAhead) {
    // 40 mm falling from second 300 on at 0.05 mm/s: 5 mm, as good as dry, at 1000 s.
    Rows rows = begun().add(0, "set,40,mm,key=running_depth");
    for (int t = 0; t < 1000; ++t) {
        rows.read(t, "pan_level", (t < 300 ? 40 : 40 - 0.05 * (t - 300)) + noise(t, 1), "mm");
        rows.read(t, "syrup_pan", 103 + noise(t, 0.05), "degC");
    }
    const Stood risk = stood(rows, Alarm::scorch_risk, 1000);
    EXPECT_GE(risk.first, 600);
    EXPECT_LE(risk.first, 820);
    EXPECT_EQ(risk.last, 999);
    const Picture picture = rows.at(900);
    EXPECT_EQ(picture.alarms.at(0).alarm, Alarm::scorch_risk);
    EXPECT_NEAR(picture.alarms.at(0).left.value().count(), 100, 40);
    EXPECT_TRUE(stands(picture, Alarm::pan_low));
}

TEST(Watch, ADrawThatLowersThePanIsNoDanger) {
    Rows rows = begun().add(0, "set,40,mm,key=running_depth");
    for (int t = 0; t < 900; ++t) {
        const double level = t < 400 ? 40 : t < 460 ? 40 - 0.15 * (t - 400) : std::min(40.0, 31 + 0.1 * (t - 460));
        if (t == 400)
            rows.add(t, "draw_open,,,");
        if (t == 460)
            rows.add(t, "draw_close,6,L,");
        rows.read(t, "pan_level", level + noise(t, 1), "mm").read(t, "syrup_pan", 103 + noise(t, 0.05), "degC");
    }
    EXPECT_EQ(stood(rows, Alarm::scorch_risk, 900).first, -1);
}

TEST(Watch, ARiseThatRunsAwayIsForeseenWithoutAnyLevel) {
    // 75 brix boils 6.6 K above water. From 103.9 on at 0.012 K/s, faster and faster.
    Rows rows = begun();
    int past75 = -1;
    for (int t = 0; t < 700; ++t) {
        const double runs = t < 300 ? 0 : 0.004 * (t - 300) + 1.5e-5 * (t - 300) * (t - 300);
        if (past75 < 0 && 104 + runs > 99.97 + 6.8)
            past75 = t;
        rows.read(t, "syrup_pan", 104 + runs + noise(t, 0.05), "degC");
        if (t % 30 == 0)
            rows.read(t, "pressure", 101.3, "kPa");
    }
    const Stood risk = stood(rows, Alarm::scorch_risk, 700);
    ASSERT_GT(risk.first, 0);
    EXPECT_LE(risk.first, past75 - 60);
    EXPECT_GT(risk.first, 300);
}

TEST(Watch, SapThatNoLongerRunsInIsForeseenFromTheFeed) {
    Rows rows = begun();
    rows.add(0, "set,40,mm,key=running_depth")
        .add(0, "set,2,m2,key=flue_pan_area")
        .add(0, "set,0.6,m2,key=syrup_pan_area");
    for (int t = 0; t < 3600; t += 2) {
        rows.read(t, "feed_flow", t < 2400 ? 200 + noise(t, 10) : 0, "L/h")
            .read(t, "syrup_pan", 103 + noise(t, 0.05), "degC");
        if (t % 480 == 0)
            rows.add(t, "fired,,,");
    }
    // (40 - 5) mm over 2.6 m2 boil off in some 1300 to 1640 s at 200 L/h.
    const Stood risk = stood(rows, Alarm::scorch_risk, 3600);
    EXPECT_GT(risk.first, 2400 + 600);
    EXPECT_LT(risk.first, 2400 + 1300 - 180);
}

TEST(Watch, SeenAndShelvedAreFactsAndAScorchCannotBeShelved) {
    Rows rows = begun().add(0, "set,40,mm,key=running_depth");
    for (int t = 0; t < 900; ++t)
        rows.read(t, "pan_level", 12 + noise(t, 0.5), "mm").read(t, "syrup_pan", 103 + noise(t, 0.05), "degC");
    ASSERT_TRUE(stands(rows.at(100), Alarm::pan_low));
    EXPECT_EQ(rows.at(100).alarms.at(0).state, AlarmState::unseen);
    rows.add(200, "alarm_seen,,,name=pan_low");
    EXPECT_EQ(rows.at(201).alarms.at(0).state, AlarmState::seen);
    rows.add(300, "alarm_shelved,5,min,name=pan_low");
    EXPECT_EQ(rows.at(599).alarms.at(0).state, AlarmState::shelved);
    EXPECT_EQ(rows.at(600).alarms.at(0).state, AlarmState::seen);

    Rows hot = boil(begun(), 0, 100, 104);
    for (int t = 100; t < 200; ++t)
        hot.read(t, "syrup_pan", 104 + 0.04 * (t - 100) + noise(t, 0.05), "degC");
    ASSERT_TRUE(stands(hot.at(199), Alarm::scorch_risk));
    hot.add(199.5, "alarm_shelved,60,min,name=scorch_risk");
    EXPECT_EQ(hot.at(199.6).alarms.at(0).state, AlarmState::unseen);
}

TEST(Watch, WhatIsGoneUnseenIsKeptUntilSeen) {
    Rows rows = boil(begun(), 0, 60, 102);
    rows = boil(std::move(rows), 80, 120, 102);
    const Picture picture = rows.at(100);
    EXPECT_FALSE(stands(picture, Alarm::probe_silent));
    ASSERT_EQ(picture.alarms.size(), 1u);
    EXPECT_EQ(picture.alarms[0].state, AlarmState::goneUnseen);
    rows.add(110, "alarm_seen,,,name=probe_silent");
    EXPECT_TRUE(rows.at(110).alarms.empty());
}

TEST(Watch, AClockStepIsSaidForTenMinutes) {
    Rows rows = begun().add(10, "clock_step,-3600,s,");
    EXPECT_TRUE(stands(rows.at(609), Alarm::clock_changed));
    EXPECT_FALSE(stands(rows.at(610), Alarm::clock_changed));
}

TEST(Watch, AFilterOverItsLimitIsCalledAfterTwoSeconds) {
    Rows rows = begun().add(0, "set,300,kPa,key=filter_limit");
    for (int t = 0; t < 60; ++t)
        rows.read(t, "filter_pressure", t < 30 ? 200 : 350, "kPa");
    const Stood high = stood(rows, Alarm::filter_pressure_high, 60);
    EXPECT_GE(high.first, 32);
    EXPECT_LE(high.first, 40);
}

TEST(Watch, AStackPastSixHundredIsCalledAfterHalfAMinute) {
    Rows rows = begun();
    for (int t = 0; t < 300; ++t)
        rows.read(t, "stack", (t < 100 ? 420 : 640) + noise(t, 5), "degC");
    const Stood hot = stood(rows, Alarm::stack_hot, 300);
    EXPECT_GE(hot.first, 130);
    EXPECT_LE(hot.first, 145);
}

TEST(Watch, AfterTheShiftNothingStands) {
    Rows rows = boil(begun(), 0, 60, 102);
    rows.add(100, "shift_end,,,");
    EXPECT_TRUE(rows.at(10000).alarms.empty());
}

TEST(Watch, LooksAreAllAlikeHoweverOftenTheyAreTaken) {
    Rows rows = boil(begun(), 0, 100, 102);
    std::vector<Picture> often, seldom;
    rows.add(900, "note,,,end");
    replay(rows.facts, {.every = Duration{1}}, [&](const Picture& picture) { often.push_back(picture); });
    replay(rows.facts, {.every = Duration{7}}, [&](const Picture& picture) { seldom.push_back(picture); });
    for (std::size_t i = 0; i < seldom.size() && i * 7 < often.size(); ++i)
        EXPECT_EQ(seldom[i], often[i * 7]);
}

} // namespace
} // namespace panside
