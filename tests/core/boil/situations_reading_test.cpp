// What weather, probes and glasses do at the pan, played through the engine. What is wanted is what people who boil
// ask for; sizes are common practice, no source, where none stands beside them.
#include "core/boil/vocabulary.h"
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::noise;
using test::Rows;
using test::stands;
using test::stood;

Reason reasonOf(const Picture& picture, Series series) { return picture.reading(series)->reason; }
Trust trustOf(const Picture& picture, Series series) { return picture.reading(series)->trust; }

// 2 kPa in three hours. Between 0.1 MPa and 0.12 MPa water's boiling point climbs from 99.606 to 104.784 degC, some
// 0.28 K a kPa near the lower end (IAPWS R7-97(2012)).
BoilLog underAFront(const std::function<double(const BoilLog&)>& celsius) {
    BoilLog log;
    while (log.now < 3 * 3600) {
        log.kilopascal = 101.3 - 2.0 * log.now / (3 * 3600);
        log.reads(celsius(log));
    }
    return log;
}

// What was typed in holds for as long as the thing it tells of holds still, is doubted then, and gone after six times
// that: a pan moves in a third of an hour, the weather in four (common practice, no source).
TEST(SituationReading, WhatWasTypedInIsDoubtedWhenItHasGrownOld) {
    struct Typed {
        Series series;
        double value;
        const char* unit;
        int minutes;
    };
    for (const auto& [series, value, unit, minutes] :
         {Typed{Series::syrup_pan, 103, "degC", 20}, Typed{Series::flue_pan, 101, "degC", 20},
          Typed{Series::pan_level, 40, "mm", 30}, Typed{Series::flue_level, 60, "mm", 30},
          Typed{Series::stack, 400, "degC", 60}, Typed{Series::feed, 8, "degC", 120},
          Typed{Series::tank_level, 900, "L", 120}, Typed{Series::feed_flow, 150, "L/h", 120},
          Typed{Series::filter_pressure, 90, "kPa", 10}, Typed{Series::air, 3, "degC", 240},
          Typed{Series::pressure, 99, "kPa", 240}}) {
        Rows rows;
        rows.read(0, rowOf(series).name, value, unit, "probe=hand");
        const int old = minutes * 60;
        EXPECT_EQ(trustOf(rows.at(old), series), Trust::good) << rowOf(series).name;
        EXPECT_EQ(trustOf(rows.at(old + 1), series), Trust::doubtful) << rowOf(series).name;
        EXPECT_EQ(trustOf(rows.at(6 * old - 1), series), Trust::doubtful) << rowOf(series).name;
        EXPECT_EQ(trustOf(rows.at(6 * old), series), Trust::gone) << rowOf(series).name;
    }
}

// Foam lifts off the probe: what it reads falls towards steam faster than thin sap can make it, and is doubted while it
// falls, not when it has arrived. A pocket of the probe follows in some 20 s (common practice, no source).
TEST(SituationReading, AProbeThatSinksIntoFoamIsDoubtedAsItFalls) {
    BoilLog log;
    log.cycle();
    log.climb(61, 66, 600);
    const double before = log.boils(66), steam = log.boils(0);
    const int sinks = log.now;
    for (int t = 0; t < 60; ++t)
        log.reads(steam + (before - steam) * std::exp(-t / 20.0));
    EXPECT_EQ(log.rows.at(sinks).reading(Series::syrup_pan)->trust, Trust::good);
    EXPECT_EQ(log.rows.at(sinks + 12).reading(Series::syrup_pan)->reason, Reason::inSteamOrFoam);
    EXPECT_EQ(log.rows.at(sinks + 55).reading(Series::syrup_pan)->reason, Reason::inSteamOrFoam);
    for (int t = 0; t < 60; ++t)
        log.reads(before + (steam - before) * std::exp(-t / 20.0));
    log.hold(66, 30);
    EXPECT_EQ(log.picture().reading(Series::syrup_pan)->trust, Trust::good);
}

TEST(SituationReading, AFrontMovesTheMarkAndNotTheRise) {
    const BoilLog log = underAFront([](const BoilLog& at) { return at.boils(65); });
    const Picture before = log.rows.at(600), after = log.picture();
    EXPECT_NEAR((*before.target - *after.target).kelvin(), 0.28 * 2.0, 0.06);
    EXPECT_NEAR(before.rise->kelvin(), after.rise->kelvin(), 0.06);
    EXPECT_NEAR(after.brix->degrees(), 65, 0.3);
    EXPECT_EQ(stood(log.rows, Alarm::above_target).first, -1);
}

TEST(SituationReading, UnderAFrontAReadingThatStandsStillIsSyrupBeforeLong) {
    // 103.9 degC is 66.2 brix at first; after the front it is half a kelvin over the mark.
    const BoilLog log = underAFront([](const BoilLog&) { return 103.9; });
    EXPECT_FALSE(stands(log.rows.at(600), Alarm::above_target));
    EXPECT_TRUE(stands(log.picture(), Alarm::above_target));
}

// A report for sea level typed in as the pressure of a house 300 m up (97.77 kPa in the standard atmosphere, ISO
// 2533:1975): water is thought to boil a kelvin too high. The hydrometer puts it right.
TEST(SituationReading, APressureForSeaLevelIsPutRightByTheHydrometer) {
    BoilLog log;
    log.rows.add(0, "set,300,m,key=elevation");
    log.kilopascal = 97.77;
    log.barometer = 101.3;
    const double syrup = log.boils(66.9);
    log.hold(66.9, 4800);
    EXPECT_GT(log.picture().target->celsius(), syrup + 0.8);
    for (const int at : {1200, 2400, 3600})
        log.rows.add(at, fmt::format("density_check,{:.1f},brix,temp=20degC;cal=20degC", 66.8 + at / 12000.0));
    EXPECT_NEAR(log.picture().target->celsius(), syrup, 0.15);
}

TEST(SituationReading, AProbeLeftInSteamByADrawIsDoubtedUntilItIsWetAgain) {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        log.cycle();
    log.climb(61, 66.5, 600);
    for (int t = 0; t < 60; ++t)
        log.reads(log.boils(0) + 0.1);
    const Picture steam = log.picture();
    EXPECT_EQ(trustOf(steam, Series::syrup_pan), Trust::doubtful);
    EXPECT_EQ(reasonOf(steam, Series::syrup_pan), Reason::inSteamOrFoam);
    log.climb(66.6, 66.8, 60);
    EXPECT_EQ(trustOf(log.picture(), Series::syrup_pan), Trust::good);
    EXPECT_EQ(stood(log.rows, Alarm::scorch_risk).first, -1);
}

TEST(SituationReading, AProbePushedAgainstThePanIsDoubtedAndCallsNoDraw) {
    BoilLog log;
    log.hold(63, 1200);
    for (int t = 0; t < 120; ++t)
        log.reads(log.boils(63) + 4.5);
    const Picture touching = log.picture();
    EXPECT_EQ(trustOf(touching, Series::syrup_pan), Trust::doubtful);
    EXPECT_EQ(reasonOf(touching, Series::syrup_pan), Reason::touchingPan);
    EXPECT_FALSE(stands(touching, Alarm::above_target));
    log.hold(63, 120);
    EXPECT_EQ(trustOf(log.picture(), Series::syrup_pan), Trust::good);
}

// Doubt does not end by a while. The probe hangs in steam for half an hour, and is no thin pan.
TEST(SituationReading, AProbeThatStaysInSteamIsDoubtedForAsLong) {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        log.cycle();
    log.climb(61, 66.5, 600);
    for (int t = 0; t < 1800; ++t)
        log.reads(log.boils(0) + 0.1 + 0.05 * std::sin(t / 40.0));
    EXPECT_EQ(reasonOf(log.picture(), Series::syrup_pan), Reason::inSteamOrFoam);
    log.climb(64, 65, 200);
    EXPECT_EQ(trustOf(log.picture(), Series::syrup_pan), Trust::good);
}

// A pan that was flooded reads no more at first; but it thickens, as no steam does.
TEST(SituationReading, AFloodedPanIsBelievedWhenItThickens) {
    BoilLog log;
    log.climb(61, 66.5, 900);
    log.climb(66.5, 4, 40);
    log.climb(4, 30, 1800);
    EXPECT_EQ(trustOf(log.picture(), Series::syrup_pan), Trust::good);
    EXPECT_NEAR(log.picture().brix.value().degrees(), 30, 4);
}

TEST(SituationReading, AProbeThatStaysOnTheMetalIsDoubtedUntilHandsWereThere) {
    for (const char* hands : {"pan_swapped,,,", "density_check,63,brix,temp=20degC;cal=20degC"}) {
        BoilLog log;
        log.hold(63, 1200);
        for (int t = 0; t < 1800; ++t)
            log.reads(log.boils(63) + 4.5);
        EXPECT_EQ(reasonOf(log.picture(), Series::syrup_pan), Reason::touchingPan);
        EXPECT_EQ(stood(log.rows, Alarm::above_target).first, -1);
        log.rows.add(log.now, hands);
        EXPECT_EQ(trustOf(log.rows.at(log.now + 5), Series::syrup_pan), Trust::good) << hands;
    }
}

TEST(SituationReading, PanAndStackWithTheirPlugsSwappedAreNotBelieved) {
    BoilLog log;
    log.stack = [](int) { return 400; };
    log.hold(64, 900);
    for (const int from = log.now; log.now < from + 60; ++log.now)
        log.rows.read(log.now, "syrup_pan", 400 + noise(log.now, 4), "degC")
            .read(log.now, "stack", 103.3 + noise(log.now, 0.05), "degC");
    const Picture swapped = log.picture();
    EXPECT_EQ(trustOf(swapped, Series::syrup_pan), Trust::gone);
    EXPECT_EQ(reasonOf(swapped, Series::syrup_pan), Reason::outsidePhysics);
    EXPECT_FALSE(swapped.syrupPan);
    EXPECT_TRUE(stands(swapped, Alarm::reading_implausible));
    EXPECT_EQ(stood(log.rows, Alarm::scorch_risk).first, -1);
    EXPECT_EQ(stood(log.rows, Alarm::above_target).first, -1);
}

TEST(SituationReading, ALoosePlugJumpsAndIsDoubted) {
    BoilLog log;
    log.hold(64, 600);
    for (int t = 0; t < 120; ++t)
        log.reads(t % 2 ? log.boils(64) : 70 + noise(t, 20));
    const Picture loose = log.picture();
    EXPECT_NE(trustOf(loose, Series::syrup_pan), Trust::good);
    if (loose.syrupPan) {
        EXPECT_NEAR(loose.syrupPan->celsius(), log.boils(64), 0.5);
    }
    log.hold(64, 180);
    EXPECT_EQ(trustOf(log.picture(), Series::syrup_pan), Trust::good);
    EXPECT_NEAR(log.picture().syrupPan->celsius(), log.boils(64), 0.1);
}

// Water in the lead: at once twenty degrees off, and it stays so.
TEST(SituationReading, AWetLeadIsCalledImplausibleWithinTenSeconds) {
    BoilLog log;
    log.hold(64, 900);
    for (int t = 0; t < 25; ++t)
        log.reads(log.boils(64) - 22);
    const auto wet = stood(log.rows, Alarm::reading_implausible);
    EXPECT_GE(wet.first, 900);
    EXPECT_LE(wet.first, 910);
    EXPECT_NE(trustOf(log.picture(), Series::syrup_pan), Trust::good);
}

// The same figure off the glass, once with the cup's temperature and once without.
TEST(SituationReading, ACupWhoseTemperatureNobodyTookTeachesLess) {
    const auto after = [](const std::string& cup) {
        BoilLog log;
        log.hold(66.9, 1200);
        log.rows.add(900, "density_check,66.0,brix," + cup);
        return log.picture();
    };
    const Picture with = after("temp=60degF;cal=60degF"), without = after("");
    EXPECT_LT(with.targetUncertainty->kelvin(), without.targetUncertainty->kelvin());
    EXPECT_GT(std::abs(with.probeOffset.kelvin()), std::abs(without.probeOffset.kelvin()));
}

} // namespace
} // namespace panside
