// A probe that is out of the pan, a wet lead, a meter switched to the other unit: doubted until the reading is again
// what a pan can be, not for a while. And what makes a pan read low in truth. Sizes are common practice, no source.
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::noise;
using test::stands;
using test::stood;

class APanThatBoiled : public testing::Test {
protected:
    APanThatBoiled() {
        log.stack = [](int) { return 350; };
        log.hold(64, 1200);
        from = log.now;
    }
    void reads(double celsius, int seconds) {
        for (int t = 0; t < seconds; ++t)
            log.reads(celsius);
    }
    // Is the reading good at any of these seconds after it fell?
    bool goodWithin(int first, int last, int step = 60) const {
        for (int t = first; t <= last; t += step)
            if (log.rows.at(from + t).reading(Series::syrup_pan)->trust == Trust::good)
                return true;
        return false;
    }
    Reason reason() const { return log.picture().reading(Series::syrup_pan)->reason; }

    BoilLog log;
    int from = 0;
};

TEST_F(APanThatBoiled, DoubtsAProbeOnTheBenchUntilItIsInThePanAgain) {
    reads(27, 3600);
    EXPECT_FALSE(goodWithin(10, 3600));
    EXPECT_EQ(reason(), Reason::outOfPan);
    EXPECT_TRUE(stands(log.picture(), Alarm::reading_implausible));
    EXPECT_FALSE(log.picture().drawEta);
    EXPECT_FALSE(log.picture().rise);
    EXPECT_FALSE(log.picture().brix);
    log.hold(64, 60);
    EXPECT_EQ(log.picture().reading(Series::syrup_pan)->trust, Trust::good);
    EXPECT_FALSE(stands(log.picture(), Alarm::reading_implausible));
}

// Nine kelvin within two seconds, twenty within twenty: the two wet leads that were tried.
TEST_F(APanThatBoiled, DoubtsAWetLeadForAsLongAsItIsWet) {
    for (const auto& [low, over] : {std::pair{9.0, 2}, std::pair{20.0, 20}}) {
        BoilLog wet = log;
        for (int t = 0; t < 900; ++t)
            wet.reads(wet.boils(64) - low * std::min(1.0, t / static_cast<double>(over)));
        for (int t = 30; t <= 900; t += 30)
            EXPECT_NE(wet.rows.at(from + t).reading(Series::syrup_pan)->trust, Trust::good) << low << " at " << t;
        const auto implausible = stood(wet.rows, Alarm::reading_implausible);
        EXPECT_LE(implausible.first, from + 90);
        EXPECT_GE(implausible.last, wet.now - 2);
    }
}

// A lead that takes water slowly, while the stack and the loads say that the fire is as before.
TEST_F(APanThatBoiled, DoubtsAReadingThatSinksSlowlyOverABurningFire) {
    for (int t = 0; t < 1200; ++t)
        log.reads(log.boils(64) - 12 * std::min(1.0, t / 600.0));
    EXPECT_EQ(reason(), Reason::outOfPan);
    EXPECT_TRUE(stands(log.picture(), Alarm::reading_implausible));
}

// The meter was switched: 103 degrees, and the log says degF.
TEST_F(APanThatBoiled, NamesTheOtherUnit) {
    for (int t = 0; t < 1200; ++t, ++log.now) {
        log.rows.read(log.now, "syrup_pan", log.boils(64 + t / 100.0) + noise(log.now, 0.05), "degF");
        log.rows.read(log.now, "stack", 350 + noise(log.now, 4), "degC");
        if (log.now % 480 == 0)
            log.rows.add(log.now, "fired,,,");
    }
    EXPECT_FALSE(goodWithin(10, 1200));
    EXPECT_EQ(reason(), Reason::wrongUnit);
    EXPECT_TRUE(stands(log.picture(), Alarm::reading_implausible));
}

// Another lead, plug or probe: 1.5 K from one second to the next, as no liquid does. The cup tells where it stands.
TEST_F(APanThatBoiled, DoubtsAProbeThatLeapsUntilACheckTells) {
    for (const double by : {-1.5, 1.5}) {
        BoilLog leapt = log;
        leapt.hold(64, 900);
        from = leapt.now;
        leapt.probeHigh = by;
        leapt.hold(64, 1200);
        for (int t = 10; t <= 1200; t += 60)
            EXPECT_EQ(leapt.rows.at(from + t).reading(Series::syrup_pan)->reason, Reason::tooFast) << by << ' ' << t;
        EXPECT_TRUE(stands(leapt.picture(), Alarm::reading_implausible));
        EXPECT_GT(leapt.picture().targetUncertainty->kelvin(), 1);
        leapt.rows.add(leapt.now, "density_check,64,brix,temp=20degC;cal=20degC");
        leapt.hold(64, 300);
        const Picture told = leapt.picture();
        EXPECT_EQ(told.reading(Series::syrup_pan)->trust, Trust::good) << by;
        EXPECT_NEAR(told.probeOffset.kelvin(), by, 0.2);
        EXPECT_NEAR(told.brix->degrees(), 64, 1);
        EXPECT_FALSE(stands(told, Alarm::reading_implausible));
    }
}

TEST_F(APanThatBoiled, BelievesAProbeThatLeapsBack) {
    log.hold(64, 900);
    const double before = log.picture().targetUncertainty->kelvin();
    log.probeHigh = -1.5;
    log.hold(64, 600);
    EXPECT_EQ(reason(), Reason::tooFast);
    log.probeHigh = 0;
    log.hold(64, 120);
    EXPECT_EQ(log.picture().reading(Series::syrup_pan)->trust, Trust::good);
    EXPECT_NEAR(log.picture().targetUncertainty->kelvin(), before, 0.01);
}

// Thin sap that is drawn forward, however fast, comes with the probe's lag; and a freeze ends with a step.
TEST_F(APanThatBoiled, TakesWhatAPanCanDoForNoLeap) {
    log.hold(64, 900);
    BoilLog thin = log;
    from = log.now;
    thin.lag = 6;
    thin.hold(58, 600);
    thin.hold(64, 600);
    BoilLog frozen = log;
    for (int t = 0; t < 120; ++t)
        frozen.rows.read(frozen.now++, "syrup_pan", log.boils(64), "degC");
    frozen.climb(69, 69.5, 300);
    for (const BoilLog* one : {&thin, &frozen})
        EXPECT_EQ(one->picture().reading(Series::syrup_pan)->trust, Trust::good);
    EXPECT_NE(thin.rows.at(from + 20).reading(Series::syrup_pan)->reason, Reason::tooFast);
}

// Read each minute it climbs by ten kelvin from one to the next, and stops at the boil.
TEST(ReadEachMinute, APanThatComesToTheBoilDoesNotShootOverIt) {
    test::Rows rows;
    rows.add(0, "lit,,,").read(0, "pressure", 101.325, "kPa");
    double most = 0;
    for (int t = 0; t < 3600; t += 60) {
        const double pan = std::min(101.0 + t / 6e4, 10 + t / 6.0);
        rows.read(t, "syrup_pan", pan + noise(t, 0.05), "degC");
        if (const auto seen = rows.at(t).syrupPan)
            most = std::max(most, seen->celsius());
    }
    EXPECT_LT(most, 101.3);
    EXPECT_EQ(stood(rows, Alarm::scorch_risk).first, -1);
}

// Each minute one reading of a restless boil: two of them make no climb.
TEST(ReadEachMinute, ARestlessBoilIsNoPanThatRunsEmpty) {
    BoilLog boil;
    test::Rows rows;
    rows.add(0, "lit,,,").read(0, "pressure", 101.325, "kPa");
    for (int t = 0; t < 4 * 3600; t += 60) {
        const int into = t % 960;
        const double brix = into < 120 ? 67 - 3.5 * into / 120 : 63.5 + 3.5 * (into - 120) / 840;
        if (into == 0 && t > 0)
            rows.add(t, "draw_open,,,");
        if (into == 120 && t > 960)
            rows.add(t, "draw_close,3,L,");
        rows.read(t, "syrup_pan", boil.boils(brix) + noise(t, 0.15), "degC");
    }
    EXPECT_EQ(stood(rows, Alarm::scorch_risk).first, -1);
}

// Real causes. Cold sap let into the pan: it is in no doubt for long, and no alarm.
TEST_F(APanThatBoiled, TakesColdSapLetInForWhatItIs) {
    for (int t = 0; t < 240; ++t)
        log.reads(t < 10 ? log.boils(64) - 1.5 * t : std::min(log.boils(20), log.boils(64) - 15 + 0.1 * (t - 10)));
    EXPECT_EQ(stood(log.rows, Alarm::reading_implausible).first, -1);
    EXPECT_EQ(log.picture().reading(Series::syrup_pan)->trust, Trust::good);
}

TEST_F(APanThatBoiled, ThatCoolsOverADeadFireIsBelieved) {
    log.feeds = 0;
    log.stack = [this](int t) { return 30 + 320 * std::exp(-(t - from) / 600.0); };
    for (int t = 0; t < 2 * 3600; ++t)
        log.reads(20 + (log.boils(64) - 20) * std::exp(-std::max(0, t - 900) / 4000.0));
    EXPECT_EQ(stood(log.rows, Alarm::reading_implausible).first, -1);
    EXPECT_EQ(log.picture().reading(Series::syrup_pan)->trust, Trust::good);
    // And lit again it comes up from where it is.
    log.feeds = 480;
    const double cold = log.picture().syrupPan->celsius();
    log.stack = [](int) { return 350; };
    for (int t = 0; t < 1200; ++t)
        log.reads(std::min(log.boils(64), cold + 0.04 * t));
    EXPECT_EQ(stood(log.rows, Alarm::reading_implausible).first, -1);
    EXPECT_EQ(log.picture().reading(Series::syrup_pan)->trust, Trust::good);
}

TEST_F(APanThatBoiled, AProbeTakenOutAfterTheShutdownIsNoAlarm) {
    log.feeds = 0;
    log.rows.add(log.now, "shutdown,,,");
    for (int t = 0; t < 1800; ++t)
        log.reads(log.boils(64) - 0.02 * t);
    for (int t = 0; t < 600; ++t)
        log.reads(log.boils(64) - 36 - std::min(30.0, 0.5 * t));
    EXPECT_EQ(stood(log.rows, Alarm::reading_implausible).first, -1);
}

// A cold start: it never boiled, and nothing is in doubt.
TEST(PanDoubt, AColdPanThatWarmsIsBelieved) {
    BoilLog log;
    for (int t = 0; t < 1800; ++t)
        log.reads(std::min(log.boils(5), 8 + 0.06 * t));
    EXPECT_EQ(stood(log.rows, Alarm::reading_implausible).first, -1);
    EXPECT_EQ(log.rows.at(900).reading(Series::syrup_pan)->trust, Trust::good);
}

// The meter was in the other unit from the beginning on: the pan climbs to 40 "degrees" and stays, over a fire that
// roars.
TEST(PanDoubt, AMeterThatWasAlwaysInTheOtherUnitIsNamed) {
    BoilLog log;
    test::Rows& rows = log.rows;
    for (int t = 0; t < 4500; ++t) {
        const double pan = std::min(8 + 0.06 * t, log.boils(55 + 10 * std::sin(t / 300.0)));
        if (t % 30 == 0)
            rows.read(t, "pressure", log.kilopascal, "kPa");
        rows.read(t, "syrup_pan", pan + noise(t, 0.05), "degF");
        rows.read(t, "stack", std::min(350.0, 40 + t / 2.0) + noise(t, 4), "degC");
        if (t % 480 == 0)
            rows.add(t, "fired,,,");
    }
    const Picture last = rows.at(4499);
    EXPECT_EQ(rows.at(900).reading(Series::syrup_pan)->trust, Trust::good); // it might be so
    EXPECT_EQ(last.reading(Series::syrup_pan)->reason, Reason::wrongUnit);
    EXPECT_TRUE(stands(last, Alarm::reading_implausible));
    EXPECT_LE(stood(rows, Alarm::reading_implausible).first, 3200);
}

TEST(PanDoubt, AProbeThatWasNeverInThePanIsSaidToBeOut) {
    BoilLog log;
    log.stack = [](int t) { return std::min(350.0, 40 + t / 2.0); };
    for (int t = 0; t < 4500; ++t)
        log.reads(24 + 2 * std::sin(t / 700.0));
    EXPECT_EQ(log.picture().reading(Series::syrup_pan)->reason, Reason::outOfPan);
}

// Ice in the pans, and a deep pan over a fire that is slow to catch.
TEST(PanDoubt, ASlowColdStartIsBelieved) {
    BoilLog log;
    log.stack = [](int t) { return std::min(350.0, 40 + t / 2.0); };
    for (int t = 0; t < 6000; ++t)
        log.reads(t < 1800 ? 0.1 : std::min(log.boils(3), 0.1 + 0.025 * (t - 1800)));
    EXPECT_EQ(stood(log.rows, Alarm::reading_implausible).first, -1);
}

// It comes and goes: now seven kelvin low, now three, slowly, so that it is at times where a thin pan would be.
TEST_F(APanThatBoiled, DoubtsALeadThatComesAndGoes) {
    int good = 0;
    for (int t = 0; t < 1800; ++t) {
        log.reads(log.boils(64) - std::min(1.0, t / 300.0) * (5 + 3 * std::sin(t / 50.0)));
        if (t > 600 && t % 10 == 0)
            good += log.picture().reading(Series::syrup_pan)->trust == Trust::good;
    }
    EXPECT_LE(good, 12); // of 120
    EXPECT_TRUE(stands(log.picture(), Alarm::reading_implausible));
}

// Two kelvin under boiling water: it hangs in the draught over the pan.
TEST_F(APanThatBoiled, DoubtsAProbeThatHangsOverThePan) {
    reads(log.boils(0) - 1.7, 900);
    EXPECT_FALSE(goodWithin(60, 900));
    EXPECT_EQ(reason(), Reason::outOfPan);
    // And back in the pan it reads no more than it did before: that is no metal.
    log.hold(64, 120);
    EXPECT_EQ(log.picture().reading(Series::syrup_pan)->trust, Trust::good);
}

// They check the syrup meanwhile: the cup is right, and is not held against the bench.
TEST_F(APanThatBoiled, ACheckTeachesNothingOfAProbeThatIsOut) {
    const double before = log.picture().targetUncertainty->kelvin();
    reads(log.boils(0) - 1.7, 600);
    log.rows.add(log.now, "density_check,66.9,brix,temp=20degC;cal=20degC");
    reads(log.boils(0) - 1.7, 600);
    EXPECT_LT(log.picture().targetUncertainty->kelvin(), before + 0.05);
    EXPECT_LT(std::abs(log.picture().probeOffset.kelvin()), 0.5);
    EXPECT_EQ(reason(), Reason::outOfPan);
}

// No barometer and no water check, but the height is known: eight kelvin within ten seconds.
TEST(PanDoubt, TheHeightTellsWhereWaterBoils) {
    BoilLog log;
    log.barometer.reset();
    test::Rows& rows = log.rows;
    rows.add(0, "set,300,m,key=elevation");
    const double boils = log.boils(64);
    for (int t = 0; t < 1800; ++t) {
        rows.read(t, "syrup_pan", boils - 8 * std::clamp((t - 900) / 10.0, 0.0, 1.0) + noise(t, 0.05), "degC");
        rows.read(t, "stack", 350 + noise(t, 4), "degC");
        if (t % 480 == 0)
            rows.add(t, "fired,,,");
    }
    EXPECT_EQ(rows.at(800).reading(Series::syrup_pan)->trust, Trust::good);
    EXPECT_EQ(rows.at(1799).reading(Series::syrup_pan)->reason, Reason::outOfPan);
}

// What stood before a shift paused: the probe falls silent over the burning fire, and comes back from the bench.
TEST_F(APanThatBoiled, DoubtsAProbeThatComesBackFromASilenceFarTooCold) {
    log.now += 120;
    reads(40, 300);
    EXPECT_EQ(reason(), Reason::outOfPan);
}

} // namespace
} // namespace panside
