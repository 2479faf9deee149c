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

// What stood before a shift paused: the probe falls silent over the burning fire, and comes back from the bench.
TEST_F(APanThatBoiled, DoubtsAProbeThatComesBackFromASilenceFarTooCold) {
    log.now += 120;
    reads(40, 300);
    EXPECT_EQ(reason(), Reason::outOfPan);
}

} // namespace
} // namespace panside
