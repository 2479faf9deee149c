// Sap that waits: tanks that run over, sap that grows old, played through the engine. What is wanted is what people who
// boil ask for; sizes are common practice, no source.
#include "tests/core/boil/logs.h"

#include <cmath>

namespace panside {
namespace {

using test::Rows;
using test::stands;

// A tank of 1000 L, its gauge read each ten seconds, sloshing by two litres.
struct StandingTank {
    Rows rows;
    double litre;
    int t = 0;
    explicit StandingTank(double from) : litre{from} { rows.add(0, "set,1000,L,key=feed_tank_volume"); }
    void run(double litrePerHour, int seconds) {
        for (const int until = t + seconds; t < until; t += 10, litre += litrePerHour / 360)
            rows.read(t, "tank_level", litre + 2 * std::sin(t / 7.0), "L");
    }
    SapPicture store() const { return rows.at(t).store; }
};

// Nobody is there, the sap runs in at 300 L/h: it is foretold when the tank runs over, and that it is full.
TEST(SituationTank, ATankThatFillsTellsWhenItRunsOver) {
    StandingTank tank{700};
    tank.run(300, 1200);
    const auto soon = tank.store().fullIn;
    ASSERT_TRUE(soon);
    EXPECT_NEAR(seconds(*soon), (1000 - 800) / 300.0 * 3600, 300);
    tank.run(300, 2400);
    ASSERT_TRUE(tank.store().fullIn);
    EXPECT_LE(seconds(*tank.store().fullIn), 60);
    tank.run(0, 1200);
    EXPECT_FALSE(tank.store().fullIn) << "shut off";
}

TEST(SituationTank, ATankThatStandsFallsOrIsFilledByABucketRunsNotOver) {
    StandingTank stands{950};
    stands.run(0, 3600);
    EXPECT_FALSE(stands.store().fullIn);
    StandingTank falls{950};
    falls.run(-200, 3600);
    EXPECT_FALSE(falls.store().fullIn);
    StandingTank bucket{800};
    bucket.run(0, 1200);
    bucket.litre += 20;
    bucket.run(0, 30);
    EXPECT_FALSE(bucket.store().fullIn);
    // A load dumped in within a moment, and then the pans draw on.
    StandingTank load{300};
    load.run(-150, 1200);
    load.litre += 400;
    for (int minute = 1; minute <= 12; ++minute) {
        load.run(-150, 60);
        EXPECT_FALSE(load.store().fullIn) << minute << " min after";
    }
}

TEST(SituationTank, APumpThatHasJustBegunIsToldWithinMinutes) {
    StandingTank tank{300};
    tank.run(0, 1200);
    tank.run(6000, 240); // from here it is full in three minutes
    ASSERT_TRUE(tank.store().fullIn);
    EXPECT_NEAR(seconds(*tank.store().fullIn), (1000 - tank.litre) / 6000 * 3600, 60);
}

// The alarm calls a quarter of an hour before; where a rim was set, when so much is left, however slowly it comes.
TEST(TankOverflow, CallsAQuarterOfAnHourBeforeItRunsOver) {
    StandingTank tank{800};
    tank.run(200, 1800);
    EXPECT_FALSE(stands(tank.rows.at(tank.t), Alarm::tank_overflow)) << "100 L are half an hour";
    tank.run(200, 1200);
    EXPECT_TRUE(stands(tank.rows.at(tank.t), Alarm::tank_overflow));
    tank.run(200, 600);
    tank.run(0, 3600);
    EXPECT_TRUE(stands(tank.rows.at(tank.t), Alarm::tank_overflow)) << "full to the rim, it may be running over";
    tank.run(-200, 1800);
    EXPECT_FALSE(stands(tank.rows.at(tank.t), Alarm::tank_overflow)) << "the pans draw on it";
}

TEST(TankOverflow, ATankFilledToTheBrimBeforeLightingCallsNobody) {
    StandingTank tank{995};
    tank.run(0, 3600);
    EXPECT_FALSE(stands(tank.rows.at(tank.t), Alarm::tank_overflow));
    tank.run(-200, 1200);
    EXPECT_FALSE(stands(tank.rows.at(tank.t), Alarm::tank_overflow));
}

TEST(TankOverflow, CallsWhomItWasToldToAtTheRimThatWasSet) {
    StandingTank tank{940};
    tank.rows.add(0, "set,50,L,key=overflow_rim").add(0, "set,Ruth at the house,,key=overflow_calls");
    tank.run(15, 1800); // a trickle that no gauge tells from nothing
    EXPECT_FALSE(stands(tank.rows.at(tank.t), Alarm::tank_overflow));
    tank.run(15, 1800);
    const Picture full = tank.rows.at(tank.t);
    ASSERT_TRUE(stands(full, Alarm::tank_overflow));
    std::string json;
    appendJson(json, full);
    EXPECT_NE(json.find("\"tank_overflow\":["), std::string::npos);
    EXPECT_NE(json.find("left to the rim, and it calls at 50 L\",\"call Ruth at the house\"]"), std::string::npos)
        << json;
    tank.run(-150, 1200);
    EXPECT_FALSE(stands(tank.rows.at(tank.t), Alarm::tank_overflow));
}

TEST(SituationTank, ATankOfUnknownSizeTellsNothingOfIt) {
    StandingTank tank{700};
    tank.rows = {};
    tank.run(300, 1200);
    EXPECT_FALSE(tank.store().fullIn);
}

// Dipped by hand, a quarter of an hour apart.
TEST(SituationTank, ATankThatIsDippedTellsItToo) {
    Rows rows;
    rows.add(0, "set,1000,L,key=feed_tank_volume");
    for (int i = 0; i < 4; ++i)
        rows.read(900 * i, "tank_level", 700 + 50 * i + (i % 2), "L", "probe=hand");
    const auto soon = rows.at(2700).store.fullIn;
    ASSERT_TRUE(soon);
    EXPECT_NEAR(seconds(*soon), 150 / 200.0 * 3600, 200);
}

// Sap of two days in one tank: the oldest counts until it is boiled off.
TEST(SituationSap, TheOldestSapInTheTankCountsUntilItIsBoiledOff) {
    Rows rows;
    rows.add(0, "sap_in,600,L,temp=3degC").add(86'400, "sap_in,500,L,temp=12degC");
    const auto at = [&](int t, double litre) {
        Rows then = rows;
        then.read(t, "tank_level", litre, "L");
        return then.at(t).store;
    };
    const SapPicture both = at(100'000, 1100);
    ASSERT_TRUE(both.oldest && both.warmest);
    EXPECT_NEAR(seconds(*both.oldest), 100'000, 1);
    EXPECT_FALSE(both.older);
    EXPECT_NEAR(both.warmest->celsius(), 12, 0.01);
    const SapPicture fresh = at(110'000, 480);
    ASSERT_TRUE(fresh.oldest);
    EXPECT_NEAR(seconds(*fresh.oldest), 110'000 - 86'400, 1);
}

TEST(SituationSap, WhereMoreStandsThanCameInSomeIsOlder) {
    Rows rows;
    rows.read(0, "tank_level", 900, "L").add(600, "sap_in,300,L,");
    rows.read(3600, "tank_level", 1200, "L");
    const SapPicture store = rows.at(3600).store;
    ASSERT_TRUE(store.oldest);
    EXPECT_NEAR(seconds(*store.oldest), 3000, 1);
    EXPECT_TRUE(store.older);
    EXPECT_FALSE(store.warmest) << "nobody measured it";
}

TEST(SituationSap, WithNoLevelNobodyKnowsWhatIsLeft) {
    Rows rows;
    rows.add(0, "sap_in,600,L,temp=3degC");
    EXPECT_FALSE(rows.at(3600).store.oldest);
}

} // namespace
} // namespace panside
