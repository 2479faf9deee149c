// Fire, tank, people and machine, played through the engine. What is wanted is what people who boil ask for; sizes are
// common practice, no source.
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::noise;
using test::noon;
using test::Rows;
using test::stands;
using test::stood;

// A stack fed each eight minutes: down while the door is open, up as the load catches, and away.
double fedStack(int t) {
    const int since = t % 480;
    return since < 40 ? 300 : 430 - 0.15 * since;
}

TEST(SituationFire, AKeyPressedWithNothingPutInDoesNotHideADyingFire) {
    BoilLog log;
    log.rows.add(0, "set,8,min,key=fire_interval");
    log.stack = [](int t) { return t < 4800 ? fedStack(t) : 330 * std::exp(-(t - 4800) / 500.0) + 20; };
    log.feeds = 0;
    for (int t = 0; t < 4800; t += 480)
        log.rows.add(t, "fired,,,");
    log.hold(64, 4800);
    log.rows.add(log.now, "fired,,,"); // and forgotten
    log.hold(64, 450);
    const Picture picture = log.picture();
    EXPECT_GT(picture.fireDue->count(), 0);
    EXPECT_EQ(picture.fireStanding, FireStanding::dying);
}

TEST(SituationFire, ADoorOpenForLongIsNoDyingFire) {
    BoilLog log;
    log.rows.add(0, "set,8,min,key=fire_interval");
    // A minute and a half of open door in the middle of a load: stack and pan dip and come back.
    const int opened = 5 * 480 + 200;
    log.stack = [&](int t) { return t >= opened && t < opened + 90 ? 250.0 : fedStack(t); };
    while (log.now < opened + 240) {
        const double into = log.now - opened;
        log.second(into >= 0 && into < 120 ? 63.7 : 64);
    }
    for (int t = opened; t < opened + 240; t += 10) {
        const Picture picture = log.rows.at(t);
        EXPECT_NE(picture.fireStanding, FireStanding::dying) << t - opened;
        EXPECT_EQ(picture.reading(Series::syrup_pan)->trust, Trust::good) << t - opened;
        EXPECT_FALSE(stands(picture, Alarm::fire_overdue)) << t - opened;
    }
    EXPECT_EQ(log.picture().loads, 6) << "an open door is no load";
}

TEST(SituationFire, EachWoodKeepsItsOwnRhythm) {
    Rows rows;
    rows.add(0, "lit,,,");
    double t = 10;
    for (int i = 0; i < 6; ++i, t += 300)
        rows.add(t, "fired,,,wood=pine");
    for (int i = 0; i < 6; ++i, t += 540)
        rows.add(t, "fired,,,wood=oak");
    EXPECT_NEAR(seconds(rows.at(t).fireInterval), 540, 30);
    rows.add(t, "fired,,,wood=pine");
    EXPECT_NEAR(seconds(rows.at(t + 1).fireInterval), 300, 30);
}

// Tank and loads of a boil that takes `litrePerHour` of sap.
struct Tank {
    Rows rows;
    double litre = 1500;
    int t = 0;
    Tank() {
        rows.add(0, "set,2,m2,key=flue_pan_area")
            .add(0, "set,40,mm,key=running_depth")
            .add(0, "sap_in,1500,L,brix=2.0")
            .add(0, "lit,,,");
    }
    void run(double litrePerHour, int seconds, bool read = true) {
        for (const int until = t + seconds; t < until; t += 10, litre -= litrePerHour / 360) {
            if (!read)
                continue;
            rows.read(t, "syrup_pan", 102 + noise(t, 0.05), "degC").read(t, "tank_level", litre, "L");
            if (t % 60 == 0)
                rows.read(t, "pressure", 101.325, "kPa");
            if (t % 480 == 0)
                rows.add(t, "fired,20,kg,");
        }
    }
};

// Three hundred litres poured away: they were not boiled off, and how long the rest lasts does not follow from them.
TEST(SituationTank, SapThatIsDumpedIsNotBoiledOff) {
    Tank tank;
    tank.run(200, 5400);
    tank.litre -= 300;
    tank.rows.add(tank.t, "note,,,300 L sour sap poured away");
    tank.run(200, 1800);
    const Picture picture = tank.rows.at(tank.t);
    ASSERT_TRUE(picture.evaporation);
    const bool said = picture.fuel.doubt == Disagreement::tankSaysMore;
    EXPECT_TRUE(said || std::abs(picture.evaporation->litrePerHour() - 196) < 30)
        << picture.evaporation->litrePerHour();
}

TEST(SituationMachine, APowerCutIsAGapAndNotAZero) {
    Tank tank;
    tank.run(200, 5400);
    const Picture before = tank.rows.at(tank.t);
    tank.run(200, 1500, false); // the probe box is dark, the fire goes on
    const Picture dark = tank.rows.at(tank.t);
    EXPECT_TRUE(stands(dark, Alarm::probe_silent));
    EXPECT_FALSE(dark.syrupPan);
    EXPECT_TRUE(stands(dark, Alarm::fire_overdue));
    tank.run(200, 120);
    const Picture after = tank.rows.at(tank.t);
    EXPECT_FALSE(stands(after, Alarm::probe_silent));
    EXPECT_FALSE(stands(after, Alarm::reading_implausible));
    EXPECT_EQ(after.reading(Series::syrup_pan)->trust, Trust::good);
    EXPECT_NEAR(after.evaporation->litrePerHour(), before.evaporation->litrePerHour(), 15);
    EXPECT_NEAR(seconds(*after.sapLeft), tank.litre / 200 * 3600, 300);
    EXPECT_EQ(after.loads, before.loads) << "loads that nobody keyed are not made up";
}

// The draw is open and an alarm stands when the crew changes: both are as they were, and the turn goes to who is here.
TEST(SituationPeople, ACrewThatChangesInADrawChangesNothingOfIt) {
    BoilLog log;
    log.rows.add(0, "crew,,,by=Ada");
    log.cycle();
    log.climb(61, 67.2, 800);
    log.rows.add(log.now, "draw_open,,,by=Ada");
    log.climb(67.2, 62, 80);
    log.hold(62, 40);
    const Picture before = log.picture();
    ASSERT_TRUE(stands(before, Alarm::draw_overdue));
    log.rows.add(log.now, "crew,,,by=Bea;off=Ada");
    log.hold(62, 10);
    const Picture after = log.picture();
    EXPECT_TRUE(after.drawing);
    EXPECT_EQ(after.drawOpenedAt, before.drawOpenedAt);
    const auto overdue = std::find_if(after.alarms.begin(), after.alarms.end(),
                                      [](const AlarmPicture& one) { return one.alarm == Alarm::draw_overdue; });
    ASSERT_NE(overdue, after.alarms.end());
    EXPECT_EQ(overdue->state, AlarmState::unseen);
    EXPECT_EQ(after.crew, std::vector<std::string>{"Bea"});
    EXPECT_EQ(after.turn, "Bea");
}

TEST(SituationPeople, WhereNobodySignsOnItIsNobodysTurn) {
    BoilLog log;
    log.hold(62, 1000);
    EXPECT_TRUE(log.picture().turn.empty());
    EXPECT_TRUE(log.picture().crew.empty());
    EXPECT_TRUE(log.picture().fireDue);
}

// The clock of the wall is put forward an hour at two in the morning, and set right by a day after a dead battery.
TEST(SituationMachine, AClockThatIsSetMovesNoRateAndNoForecast) {
    BoilLog steady, stepped;
    for (BoilLog* log : {&steady, &stepped}) {
        for (int i = 0; i < 3; ++i)
            log->cycle();
        log->climb(61, 63, 300);
    }
    stepped.rows.add(stepped.now - 100.5, "clock_step,3600,s,").add(stepped.now - 50.5, "clock_step,-86400,s,");
    const Picture one = steady.picture(), other = stepped.picture();
    EXPECT_EQ(one.drawEta, other.drawEta);
    EXPECT_EQ(one.fireDue, other.fireDue);
    EXPECT_EQ(one.rise, other.rise);
    EXPECT_TRUE(stands(other, Alarm::clock_changed));
}

} // namespace
} // namespace panside
