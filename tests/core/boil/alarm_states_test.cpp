// The states of an alarm (ISA-18.2), its delay and its deadband; rows in, states out.
#include "core/physics/sugar.h"
#include "tests/core/boil/logs.h"

#include <cmath>

namespace panside {
namespace {

using test::pressed;
using test::Rows;
using test::stands;

AlarmState stateAt(const Rows& rows, double time) {
    for (const AlarmPicture& one : rows.at(time).alarms)
        if (one.alarm == Alarm::filter_pressure_high)
            return one.state;
    return AlarmState::normal;
}

TEST(AlarmStates, RaisedSeenAndBackToNormal) {
    Rows rows = pressed({{60, 200}, {120, 320}, {180, 200}});
    EXPECT_EQ(stateAt(rows, 50), AlarmState::normal);
    EXPECT_EQ(stateAt(rows, 100), AlarmState::unseen);
    rows.add(105, "alarm_seen,,,name=filter_pressure_high");
    EXPECT_EQ(stateAt(rows, 110), AlarmState::seen);
    EXPECT_EQ(stateAt(rows, 150), AlarmState::normal);
}

TEST(AlarmStates, GoneUnseenThenSeenIsNormal) {
    Rows rows = pressed({{60, 200}, {120, 320}, {180, 200}});
    EXPECT_EQ(stateAt(rows, 150), AlarmState::goneUnseen);
    rows.add(155, "alarm_seen,,,name=filter_pressure_high");
    EXPECT_EQ(stateAt(rows, 156), AlarmState::normal);
}

TEST(AlarmStates, RaisedAnewAfterItWasSeenItSoundsAnew) {
    Rows rows = pressed({{60, 200}, {120, 320}, {180, 200}, {240, 320}});
    rows.add(100, "alarm_seen,,,name=filter_pressure_high");
    EXPECT_EQ(stateAt(rows, 230), AlarmState::unseen);
}

TEST(AlarmStates, AShelvedOneComesBackOnTimeAsItWas) {
    Rows rows = pressed({{60, 200}, {600, 320}});
    rows.add(100, "alarm_shelved,5,min,name=filter_pressure_high;by=Maud");
    EXPECT_EQ(stateAt(rows, 399.9), AlarmState::shelved);
    EXPECT_EQ(stateAt(rows, 400), AlarmState::unseen);
    EXPECT_TRUE(stands(rows.at(300), Alarm::filter_pressure_high));
}

TEST(AlarmStates, WhatEndsWhileShelvedIsNotShownUntilTheShelfIsOver) {
    Rows rows = pressed({{60, 200}, {120, 320}, {900, 200}});
    rows.add(100, "alarm_shelved,5,min,name=filter_pressure_high");
    EXPECT_EQ(stateAt(rows, 300), AlarmState::normal);
    EXPECT_EQ(stateAt(rows, 401), AlarmState::goneUnseen);
}

TEST(AlarmStates, BetweenTheLimitAndTheDeadbandItNeitherBeginsNorEnds) {
    EXPECT_EQ(stateAt(pressed({{60, 200}, {200, 292}}), 190), AlarmState::normal);
    EXPECT_EQ(stateAt(pressed({{60, 200}, {120, 320}, {260, 292}}), 250), AlarmState::unseen);
}

TEST(AlarmStates, AConsoleThatStartsAnewShowsTheSameStates) {
    Rows rows = pressed({{60, 200}, {600, 320}});
    rows.add(90, "alarm_seen,,,name=filter_pressure_high");
    const Boil all = rows.boil();
    const Picture before = all.pictureAt(test::noon + Duration{300});
    const Boil anew = rows.boil();
    EXPECT_EQ(before, anew.pictureAt(test::noon + Duration{300}));
    EXPECT_EQ(stateAt(rows, 300), AlarmState::seen);
}

// The rise of 66.9 brix over water at 101.325 kPa, and a reading so much over it from second 300 on. The probe is known
// to `sd`.
Rows over(double kelvin, const char* sd) {
    const double mark = 99.974 + boilingRise(Brix::degrees(66.9), Pressure::kilopascal(101.325)).value().kelvin();
    Rows rows;
    rows.add(0, "set,0,K,key=probe_offset").add(0, std::string{"set,"} + sd + ",K,key=probe_offset_sd");
    rows.add(0, "lit,,,");
    for (int t = 0; t < 900; ++t) {
        if (t % 30 == 0)
            rows.read(t, "pressure", 101.325, "kPa");
        rows.read(t, "syrup_pan", mark + (t < 300 ? -0.5 : kelvin) + 0.02 * std::sin(t * 12.9898), "degC");
    }
    return rows;
}
int aboveFirst(const Rows& rows) {
    int first = -1;
    replay(rows.facts, {}, [&](const Picture& picture) {
        if (first < 0 && stands(picture, Alarm::above_target))
            first = static_cast<int>(secondsBetween(test::noon, picture.at));
    });
    return first;
}

TEST(AboveTarget, WithATightTargetIsCalledAfterTwentySeconds) {
    const int first = aboveFirst(over(0.2, "0.03"));
    EXPECT_GE(first, 320);
    EXPECT_LE(first, 340);
}

TEST(AboveTarget, WellOverALooseTargetIsCalledAsPromptly) {
    const int first = aboveFirst(over(0.4, "0.3"));
    EXPECT_GE(first, 320);
    EXPECT_LE(first, 340);
}

TEST(AboveTarget, WithinTheTargetsOwnDoubtWaitsThreeMinutes) {
    const int first = aboveFirst(over(0.1, "0.3"));
    EXPECT_GE(first, 480);
    EXPECT_LE(first, 510);
}

} // namespace
} // namespace panside
