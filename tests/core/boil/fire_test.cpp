// The call of the firing reads like a log: rows in, what is due.
#include "tests/core/boil/logs.h"

#include <algorithm>

namespace panside {
namespace {

using test::noon;
using test::Rows;
using test::stands;

double due(const Rows& rows, double at) {
    const auto picture = rows.at(at);
    EXPECT_TRUE(picture.fireDue);
    return picture.fireDue ? seconds(*picture.fireDue) : 1e9;
}

TEST(Fire, NothingIsDueBeforeAFireIsLit) {
    Rows rows;
    rows.add(0, "note,,,cold arch");
    const auto picture = rows.at(60);
    EXPECT_FALSE(picture.fireDue);
    ASSERT_FALSE(picture.why.empty());
    EXPECT_EQ(picture.fireStanding, FireStanding::unknown);
}

// With no probe at all: a kitchen timer of eight minutes, that starts anew with each load.
TEST(Fire, WithNoProbeTheClockCalls) {
    Rows rows;
    rows.add(0, "lit,,,").add(100, "fired,,,");
    EXPECT_NEAR(due(rows, 100), 480, 0.01);
    EXPECT_NEAR(due(rows, 600), -20, 0.01);
    // The call is no alarm; that it is not answered within a crew's own scatter, a quarter of the interval, is one.
    EXPECT_FALSE(stands(rows.at(699), Alarm::fire_overdue));
    EXPECT_TRUE(stands(rows.at(701), Alarm::fire_overdue));
}

TEST(Fire, WithNoStackTheCrewsRhythmIsLearned) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int load = 0; load < 7; ++load)
        rows.add(60 + 390 * load, "fired,,,");
    EXPECT_TRUE(rows.at(2500).fireIntervalLearned);
    EXPECT_NEAR(seconds(rows.at(2500).fireInterval), 390, 1);
    const auto moved = rows.at(2500).callMoved;
    ASSERT_TRUE(moved);
    EXPECT_EQ(moved->from, Duration{480});
    EXPECT_NEAR(seconds(moved->to), 390, 1);
    EXPECT_FALSE(moved->sagsAfter); // no stack: nobody saw it sag
}

// Who comes half a minute after each call answers it: a night of that must not draw the calls out.
TEST(Fire, ACrewThatFollowsTheCallsDoesNotDrawThemOut) {
    Rows rows;
    rows.add(0, "lit,,,");
    double t = 60;
    for (int load = 0; load < 6; ++load, t += 420)
        rows.add(t, "fired,,,");
    for (int load = 0; load < 40; ++load) {
        const auto due = rows.at(t - 419).fireDue;
        ASSERT_TRUE(due);
        t += seconds(*due) - 419 + 30;
        rows.add(t, "fired,,,");
        t += 420;
    }
    EXPECT_NEAR(seconds(rows.at(t - 419).fireInterval), 420, 15);
}

// A stack that sinks to its mean at half of the rhythm is no reason to call at half of it: loads are sized for the
// rhythm. Where loads come at three times that, next to nothing is left of them.
TEST(Fire, TheCrewsRhythmLeadsWithinWhatIsLeftOfALoad) {
    const auto learned = [](int gap) {
        Rows rows;
        rows.add(0, "lit,,,");
        for (int t = 10; t <= 9 * gap + 10; t += 5) {
            const int since = (t - 10) % gap;
            if (since == 0)
                rows.add(t, "fired,,,");
            // the door for half a minute, up in two minutes, and down from then on
            const double celsius = since < 30    ? 380 - 3 * since
                                   : since < 150 ? 300 + 1.7 * (since - 30)
                                                 : 504 * std::exp(-(since - 150) / 700.0);
            rows.read(t, "stack", celsius, "degC");
        }
        return seconds(rows.at(9 * gap + 11).fireInterval);
    };
    EXPECT_NEAR(learned(540), 540, 20);
    EXPECT_LT(learned(1100), 1000);
}

TEST(Fire, AnIntervalSetByHandStands) {
    Rows rows;
    rows.add(0, "set,6,min,key=fire_interval").add(0, "lit,,,");
    for (int load = 0; load < 7; ++load)
        rows.add(60 + 500 * load, "fired,,,");
    EXPECT_NEAR(due(rows, 3060), 360, 0.01);
    EXPECT_FALSE(rows.at(3060).fireIntervalLearned);
    EXPECT_FALSE(rows.at(3060).callMoved);
}

TEST(Fire, ALoadKeyedTwiceIsOne) {
    Rows rows;
    rows.add(0, "lit,,,").add(60, "fired,30,lb,by=Ada").add(64, "fired,,,by=Ada");
    EXPECT_EQ(rows.at(70).wood->kilogram(), Mass::pound(30).kilogram());
    EXPECT_NEAR(due(rows, 70), 470, 0.01);
}

TEST(Fire, LitTwiceIsOneFire) {
    Rows rows;
    rows.add(0, "lit,,,").add(100, "fired,,,").add(130, "lit,,,");
    EXPECT_EQ(rows.at(200).litAt, noon);
    EXPECT_NEAR(due(rows, 200), 380, 0.01);
}

TEST(Fire, ALoadWithNoFireLitLitIt) {
    Rows rows;
    rows.add(50, "fired,,,");
    EXPECT_EQ(rows.at(60).litAt, noon + Duration{50});
    EXPECT_NEAR(due(rows, 60), 470, 0.01);
}

// Asleep over the call: it stands at once on waking, with its age; a step of the wall clock moves no reminder.
TEST(Fire, WhatFellDueInSleepIsCalledWithItsAge) {
    Rows rows;
    rows.add(0, "lit,,,").add(60, "fired,,,").add(3000, "clock_step,3600,s,");
    const auto picture = rows.at(3000);
    EXPECT_NEAR(seconds(*picture.fireDue), 540 - 3000, 0.01);
    ASSERT_TRUE(stands(picture, Alarm::fire_overdue));
    const auto overdue = std::find_if(picture.alarms.begin(), picture.alarms.end(),
                                      [](const AlarmPicture& one) { return one.alarm == Alarm::fire_overdue; });
    EXPECT_EQ(overdue->since, noon + Duration{540 + 120});
    EXPECT_EQ(picture.fireStanding, FireStanding::dying);
}

TEST(Fire, EachFireHasItsOwnRhythmAndTheNextIsCalled) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int load = 0; load < 6; ++load)
        rows.add(10 + 400 * load, "fired,,,");
    for (int load = 0; load < 6; ++load)
        rows.add(50 + 300 * load, "fired,,,fire=finishing");
    rows.add(2000, "fired,,,fire=finishing");
    const auto picture = rows.at(2030);
    ASSERT_EQ(picture.fires.size(), 2U);
    EXPECT_EQ(picture.fires[0].name, "finishing");
    EXPECT_NEAR(seconds(picture.fires[0].interval), 300, 3);
    EXPECT_EQ(picture.fires[1].name, "");
    EXPECT_NEAR(seconds(picture.fires[1].interval), 400, 3);
    EXPECT_EQ(picture.fireDue, picture.fires[0].due);
}

// Why the call moved is said of the fire that is called, and another fire's rhythm is no reason for it.
TEST(Fire, ACallMovesFromItsOwnRhythmAndNotFromAnotherFires) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t <= 7200; t += 240) {
        if (t % 480 == 0)
            rows.add(t + 1, "fired,,,");
        if (t % 720 == 0)
            rows.add(t + 100, "fired,,,fire=finishing");
    }
    const auto evaporator = rows.at(7400);
    ASSERT_EQ(evaporator.fires.front().name, "");
    EXPECT_FALSE(evaporator.callMoved); // eight minutes from the first load to the last
    rows.add(7681, "fired,,,");
    const auto after = rows.at(7740);
    ASSERT_EQ(after.fires.front().name, "finishing");
    ASSERT_TRUE(after.callMoved);
    EXPECT_EQ(after.callMoved->from, Duration{480});
    EXPECT_NEAR(seconds(after.callMoved->to), 720, 1);
    EXPECT_NEAR(seconds(after.fireInterval), 720, 1);
}

// The finishing pan is done for the night: it is called while that may be a slip, and then no more.
TEST(Fire, AFireThatIsLetGoOutIsNotCalledForEver) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t <= 6000; t += 480)
        rows.add(t + 1, "fired,,,");
    for (int t = 100; t <= 2000; t += 600)
        rows.add(t, "fired,,,fire=finishing"); // the last at 1900
    std::stable_sort(rows.facts.begin(), rows.facts.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    const auto at = [&](double time) {
        Rows until;
        std::copy_if(rows.facts.begin(), rows.facts.end(), std::back_inserter(until.facts),
                     [&](const Fact& fact) { return fact.at <= noon + Duration{time}; });
        return until.at(time);
    };
    EXPECT_EQ(at(2700).fires.front().name, "finishing");
    EXPECT_TRUE(stands(at(2700), Alarm::fire_overdue));
    const auto later = at(4400);
    ASSERT_EQ(later.fires.size(), 1U);
    EXPECT_EQ(later.fires.front().name, "");
    EXPECT_FALSE(stands(later, Alarm::fire_overdue));
    // Fed again it has its rhythm again.
    rows.add(6010, "fired,,,fire=finishing");
    EXPECT_EQ(rows.at(6020).fires.size(), 2U);
}

// How the fire stands is said of the one that is called: a load into the other does not hide that it is late.
TEST(Fire, ALoadIntoAnotherFireHidesNone) {
    Rows rows;
    rows.add(0, "lit,,,").add(1, "fired,,,").add(900, "fired,,,fire=finishing");
    EXPECT_EQ(rows.at(950).fireStanding, FireStanding::low);
    EXPECT_TRUE(stands(rows.at(950), Alarm::fire_overdue));
}

// Three quarters of its height over the air, and the firing due: it need not be a quarter of the interval late.
TEST(Fire, ASagForWantOfWoodIsCalledBeforeTheScatterIsOver) {
    Rows rows;
    rows.add(0, "set,10,min,key=fire_interval").add(0, "lit,,,");
    for (int t = 0; t <= 2500; t += 5) {
        if (t % 600 == 0 && t <= 1800)
            rows.add(t, "fired,,,");
        rows.read(t, "stack", t < 2350 ? 400 + t % 3 : std::max(200.0, 400 - 4.0 * (t - 2350)), "degC");
    }
    EXPECT_FALSE(stands(rows.at(2399), Alarm::fire_overdue)) << "it is not due yet";
    EXPECT_TRUE(stands(rows.at(2460), Alarm::fire_overdue));
    Rows steady;
    steady.add(0, "set,10,min,key=fire_interval").add(0, "lit,,,");
    for (int t = 0; t <= 2500; t += 5) {
        if (t % 600 == 0 && t <= 1800)
            steady.add(t, "fired,,,");
        steady.read(t, "stack", 400 + t % 3, "degC");
    }
    EXPECT_FALSE(stands(steady.at(2500), Alarm::fire_overdue));
}

// A natural draught may run at 870 degC all night (trade manuals): what was set or seen before stands.
TEST(Fire, AStackIsHotByItsOwnLimit) {
    const auto hot = [](const char* setting, double celsius) {
        Rows rows;
        if (*setting)
            rows.add(0, setting);
        rows.add(0, "lit,,,");
        for (int t = 0; t <= 120; ++t)
            rows.read(t, "stack", celsius + t % 3, "degC");
        return stands(rows.at(120), Alarm::stack_hot);
    };
    EXPECT_TRUE(hot("", 700));
    EXPECT_FALSE(hot("", 580));
    EXPECT_FALSE(hot("set,900,degC,key=stack_limit", 870));
    EXPECT_TRUE(hot("set,500,degC,key=stack_limit", 520));
    EXPECT_FALSE(hot("set,870,degC,key=learned_hottest_stack", 940));
    EXPECT_TRUE(hot("set,870,degC,key=learned_hottest_stack", 985));
}

TEST(Fire, TheTurnGoesRoundInTheOrderTheyCame) {
    Rows rows;
    rows.add(0, "lit,,,").add(0, "crew,,,by=Ada").add(1, "crew,,,by=Bea").add(2, "crew,,,by=Col");
    EXPECT_EQ(rows.at(5).turn, "Ada");
    rows.add(10, "fired,,,by=Ada");
    EXPECT_EQ(rows.at(15).turn, "Bea");
    rows.add(500, "fired,,,by=Col");
    EXPECT_EQ(rows.at(505).turn, "Ada");
    rows.add(510, "crew,,,off=Ada");
    EXPECT_EQ(rows.at(515).turn, "Bea");
}

TEST(Fire, NothingIsDueAfterTheShutdown) {
    Rows rows;
    rows.add(0, "lit,,,").add(60, "fired,,,").add(400, "shutdown,,,");
    const auto picture = rows.at(1000);
    EXPECT_FALSE(picture.fireDue);
    EXPECT_FALSE(stands(picture, Alarm::fire_overdue));
    // No setting: the usual 45 min of burn-out, and a last look an hour after stopping (common practice, no source).
    ASSERT_TRUE(picture.fuel.watchPans);
    EXPECT_NEAR(seconds(*picture.fuel.watchPans), 400 + 2700 - 1000, 0.01);
    EXPECT_NEAR(seconds(*picture.fuel.lastLook), 400 + 3600 - 1000, 0.01);
    EXPECT_FALSE(rows.at(3200).fuel.watchPans);
    EXPECT_LT(rows.at(4100).fuel.lastLook->count(), 0);
}

// A stack of 400 degC that falls after the last load: late and still warm it is low, down at 150 it is dying.
TEST(Fire, ALowFireIsNotADyingOne) {
    const auto standingAt = [](double celsius) {
        Rows rows;
        rows.add(0, "lit,,,");
        for (int t = 0; t <= 4300; t += 10) {
            if (t % 480 == 0 && t <= 3360)
                rows.add(t, "fired,,,");
            rows.read(t, "stack", t <= 3700 ? 400 : std::max(celsius, 400 - (t - 3700) * 1.0), "degC");
        }
        return rows.at(4300).fireStanding;
    };
    EXPECT_EQ(standingAt(330), FireStanding::low);
    EXPECT_EQ(standingAt(150), FireStanding::dying);
}

// A door signature after eight minutes with nothing keyed: the stack falls by a third for 30 s, then burns higher.
TEST(Fire, ALoadThatNobodyKeyedIsSeenAndMarkedAsInferred) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t <= 3800; t += 5) {
        const int since = t % 480;
        if (since == 0 && t > 0 && t < 3360)
            rows.add(t, "fired,,,");
        const double fire = 420 - 0.25 * since;
        rows.read(t, "stack", t < 480 || since > 40 ? fire : 280, "degC");
    }
    const auto picture = rows.at(3800);
    ASSERT_TRUE(picture.lastFired);
    EXPECT_TRUE(picture.lastFiredInferred);
    EXPECT_NEAR(secondsBetween(noon, *picture.lastFired), 3360, 60); // the fall is looked for over 45 s
}

TEST(Fire, AbsurdWoodIsRefusedByTheLog) {
    for (const char* row : {"2025-03-14T12:00:00Z,fired,900,lb,", "2025-03-14T12:00:00Z,fired,30,lb,moisture=120"}) {
        const auto fact = factOfLine(row);
        ASSERT_TRUE(std::holds_alternative<Fault>(fact)) << row;
        EXPECT_EQ(std::get<Fault>(fact).slip, Slip::outOfRange) << row;
    }
}

} // namespace
} // namespace panside
