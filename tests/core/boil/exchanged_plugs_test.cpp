// Two probes and two pans: which of them is in which?
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::noise;
using test::Rows;

// Two pans that boil, read each second; what the boxes' plugs make of them is the test's.
class TwoPans {
public:
    TwoPans() { rows.add(0, "lit,,,"); }

    void go(double syrupBrix, double flueBrix, int seconds) {
        for (int i = 0; i < seconds; ++i, ++now) {
            double syrup = boil.boils(syrupBrix) + noise(now, 0.05),
                   flue = boil.boils(flueBrix) + flueHigh + noise(now + 7, 0.05);
            if (exchanged)
                std::swap(syrup, flue);
            if (now % 30 == 0)
                rows.read(now, "pressure", 101.325, "kPa");
            if (now % every == 0) {
                rows.read(now, "syrup_pan", syrup, "degC");
                rows.read(now, "flue_pan", flue, "degC");
            }
        }
    }
    void climb(double from, double to, int seconds) {
        for (int i = 0; i < seconds; i += 10)
            go(from + (to - from) * i / seconds, 12, 10);
    }
    Reason reason(Series series) const { return rows.at(now).reading(series)->reason; }
    bool bothDoubted() const {
        return reason(Series::syrup_pan) == Reason::plugsExchanged &&
               reason(Series::flue_pan) == Reason::plugsExchanged;
    }
    bool bothGood() const {
        return reason(Series::syrup_pan) == Reason::none && reason(Series::flue_pan) == Reason::none;
    }

    test::BoilLog boil;
    Rows rows;
    int now = 0, every = 1;
    double flueHigh = 0; // kelvin
    bool exchanged = false;
};

TEST(ExchangedPlugs, FromTheStartOnAreDoubtedLongBeforeTheFirstDraw) {
    for (const int every : {1, 10, 60}) {
        TwoPans pans;
        pans.every = every;
        pans.exchanged = true;
        pans.climb(10, 52, 1800);
        EXPECT_TRUE(pans.bothDoubted()) << every;
        const Picture picture = pans.rows.at(pans.now);
        EXPECT_FALSE(picture.brix) << every;
        EXPECT_FALSE(picture.drawEta) << every;
        pans.climb(52, 66.9, 1200);
        EXPECT_TRUE(pans.bothDoubted()) << every;
        EXPECT_TRUE(test::stands(pans.rows.at(pans.now), Alarm::reading_implausible)) << every;
    }
}

TEST(ExchangedPlugs, InMidBoilAreDoubtedWithinSecondsUntilTheyAreChangedBack) {
    TwoPans pans;
    pans.climb(50, 66, 1200);
    EXPECT_TRUE(pans.bothGood());
    pans.exchanged = true;
    pans.go(66, 12, 15);
    EXPECT_TRUE(pans.bothDoubted());
    pans.go(66, 12, 300);
    // A check is no reason: the cup was dipped where the probe is not.
    pans.rows.add(pans.now, "density_check,66.0,brix,temp=20degC;cal=20degC");
    pans.go(66, 12, 3600); // nor is a while
    EXPECT_TRUE(pans.bothDoubted());
    EXPECT_NEAR(pans.rows.at(pans.now).probeOffset.kelvin(), 0, 0.05);
    pans.exchanged = false;
    pans.go(66, 12, 60);
    EXPECT_TRUE(pans.bothGood());
    EXPECT_NEAR(pans.rows.at(pans.now).brix->degrees(), 66, 0.5);
}

// Flat sap in both pans, a flue pan's thermometer that reads half a kelvin high, a syrup pan that is drawn far down.
TEST(ExchangedPlugs, AreNotSeenWhereThePansAreAlike) {
    TwoPans pans;
    pans.flueHigh = 0.5;
    pans.go(3, 3, 1800);
    EXPECT_TRUE(pans.bothGood());
    pans.climb(10, 67, 2400);
    EXPECT_TRUE(pans.bothGood());
    pans.flueHigh = 4; // its probe came to lean on the metal
    pans.go(67, 12, 30);
    pans.go(45, 12, 1200);
    EXPECT_NE(pans.reason(Series::syrup_pan), Reason::plugsExchanged);
    pans.flueHigh = 0.5;
    for (int i = 0; i < 5; ++i) {
        pans.go(40, 12, 300); // let thin sap forward at once
        EXPECT_TRUE(pans.reason(Series::flue_pan) == Reason::none) << i;
        EXPECT_NE(pans.reason(Series::syrup_pan), Reason::plugsExchanged) << i;
        pans.climb(40, 67, 900);
    }
}

} // namespace
} // namespace panside
