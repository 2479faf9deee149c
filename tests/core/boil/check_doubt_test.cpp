// Density checks as they are: dipped a while before they are typed, misread, in the midst of a fast draw, off a hot
// prism.
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::Rows;

// A draw a quarter of an hour: the cup is dipped in it and typed `late` seconds later. Its glass is exact.
Picture afterChecks(int checks, int late, bool told, const std::function<double(int)>& misread) {
    BoilLog log;
    log.probeHigh = 0.2;
    log.lag = 8;
    for (int i = 0; i < checks + 1; ++i) {
        log.climb(61, 67.0, 800);
        const int opened = log.now;
        log.rows.add(opened, "draw_open,,,");
        log.climb(67.0, 65, 80);
        log.climb(65, 61, 60);
        log.rows.add(log.now, "draw_close,3,L,");
        if (i == 0)
            continue;
        const int dipped = opened + 20;
        const double brix = 67.0 - 2.0 * 20 / 80 + misread(i);
        log.rows.add(dipped + late, fmt::format("density_check,{:.2f},brix,temp=20degC;cal=20degC{}", brix,
                                                told ? ";drawn=" + textOf(test::noon + Duration{dipped}) : ""));
    }
    log.climb(61, 64, 200);
    return log.picture();
}

TEST(ACheck, ThatIsTypedAMinuteAfterItsCupTeachesTheSameMark) {
    const auto right = [](int) { return 0.0; };
    for (const int late : {40, 65, 90}) {
        const Picture told = afterChecks(3, late, true, right), untold = afterChecks(3, late, false, right);
        EXPECT_NEAR(told.probeOffset.kelvin(), 0.2, 0.08) << late;
        EXPECT_NEAR(untold.probeOffset.kelvin(), 0.2, 2 * untold.targetUncertainty->kelvin()) << late;
        EXPECT_NEAR(untold.probeOffset.kelvin(), 0.2, 0.16) << late;
        EXPECT_GT(untold.targetUncertainty->kelvin(), told.targetUncertainty->kelvin()) << late;
    }
}

// A crew that is always slow is so with every cup: ten checks leave as much of that in doubt as three.
TEST(ACheck, OfACrewThatIsAlwaysSlowIsDoubtedByWhatThatIsWorth) {
    const auto right = [](int) { return 0.0; };
    for (const int late : {25, 110}) {
        const Picture after = afterChecks(9, late, false, right);
        EXPECT_LT(std::abs(after.probeOffset.kelvin() - 0.2), 2 * after.targetUncertainty->kelvin()) << late;
    }
}

// In a draw that thins fast the probe still shows what has run past it: a cup is held against what it shows when it has
// followed.
TEST(ACheck, OfAFastDrawIsHeldAgainstWhatTheProbeShowsOfItsCup) {
    const auto learnt = [](double lag) {
        BoilLog log;
        log.probeHigh = 0.2;
        log.lag = lag;
        for (int i = 0; i < 5; ++i) {
            log.climb(62, 67.4, 800);
            const int opened = log.now;
            log.rows.add(opened, "draw_open,,,");
            log.climb(67.4, 62, 80);
            log.rows.add(log.now, "draw_close,3,L,");
            log.rows.add(opened + 90, fmt::format("density_check,{:.2f},brix,temp=20degC;cal=20degC;drawn={}",
                                                  67.4 - 5.4 * 40 / 80, textOf(test::noon + Duration{opened + 40})));
        }
        return log.picture().probeOffset.kelvin();
    };
    for (const double lag : {5.0, 8.0, 11.0})
        EXPECT_NEAR(learnt(lag), 0.2, 0.07) << lag;
}

// The first glass is read two Brix too high; the next two are right.
TEST(ACheck, ThatWasMisreadFirstIsMendedByTheNextTwo) {
    for (const double by : {2.0, -2.0, 3.0}) {
        const Picture after = afterChecks(3, 0, true, [by](int i) { return i == 1 ? by : 0.0; });
        EXPECT_NEAR(after.probeOffset.kelvin(), 0.2, 0.15) << by;
        EXPECT_LT(std::abs(after.probeOffset.kelvin() - 0.2), 2 * after.targetUncertainty->kelvin()) << by;
    }
}

TEST(ACheck, ThatIsDisbelievedWidensTheDoubt) {
    const auto with = [](double slip) {
        return afterChecks(2, 0, true, [slip](int i) { return i == 2 ? slip : 0.0; });
    };
    const Picture agree = with(0), contradict = with(3);
    EXPECT_EQ(contradict.check->fate, CheckFate::doubted);
    EXPECT_GT(contradict.targetUncertainty->kelvin(), 2 * agree.targetUncertainty->kelvin());
}

// A probe deep in its pocket, a minute behind and as smooth as no boil is; each draw thins by more than a kelvin a
// minute. What it shows of a cup is another liquid.
TEST(ACheck, OfAProbeThatIsDampedIsDoubtedByWhatItMayBeBehind) {
    for (const double lag : {30.0, 60.0, 90.0}) {
        test::Rows rows;
        const BoilLog boil;
        double shown = boil.boils(61);
        int now = 0;
        const auto climb = [&](double from, double to, int seconds) {
            for (int t = 0; t < seconds; ++t, ++now) {
                shown += (boil.boils(from + (to - from) * t / seconds) - shown) / lag;
                if (now % 30 == 0)
                    rows.read(now, "pressure", 101.325, "kPa");
                rows.read(now, "syrup_pan", shown + test::noise(now, 0.002), "degC");
            }
        };
        rows.add(0, "lit,,,");
        for (int i = 0; i < 4; ++i) {
            climb(58, 67.5, 900);
            rows.add(now, "draw_open,,,");
            const int dipped = now + 40;
            climb(67.5, 58, 80);
            rows.add(now, "draw_close,3,L,");
            rows.add(now, fmt::format("density_check,{:.2f},brix,temp=20degC;cal=20degC;drawn={}", 67.5 - 9.5 * 40 / 80,
                                      textOf(test::noon + Duration{dipped})));
        }
        const Picture after = rows.at(now);
        EXPECT_LT(std::abs(after.probeOffset.kelvin()), 2 * after.targetUncertainty->kelvin()) << lag;
    }
}

// Three checks that agree, and then none for hours: leads creep.
TEST(ACheck, ThatIsHoursOldBearsOutLess) {
    BoilLog log;
    for (int i = 0; i < 3; ++i) {
        log.hold(66.9, 600);
        log.rows.add(log.now, "density_check,66.9,brix,temp=20degC;cal=20degC");
    }
    const double then = log.rows.at(log.now).targetUncertainty->kelvin();
    EXPECT_LT(then, 0.12);
    EXPECT_LT(log.rows.at(log.now + 1800).targetUncertainty->kelvin(), then + 0.02);
    EXPECT_GT(log.rows.at(log.now + 4 * 3600).targetUncertainty->kelvin(), std::hypot(then, 0.2));
}

// Each draw is opened at another sugar, and its cup told as `told` of it. After three, the probe `leaps`; kelvin.
Picture afterDraws(const std::vector<double>& opened, const std::function<double(double)>& told, double leaps = 0) {
    BoilLog log;
    log.probeHigh = 0.2;
    int draws = 0;
    for (const double brix : opened) {
        log.probeHigh += draws++ == 3 ? leaps : 0;
        log.climb(61, brix, 800);
        const int dipped = log.now;
        log.rows.add(dipped, "draw_open,,,");
        log.climb(brix, 61, 120);
        log.rows.add(log.now, "draw_close,3,L,");
        log.rows.add(dipped + 60, fmt::format("density_check,{:.2f},brix,temp=20degC;cal=20degC;drawn={}", told(brix),
                                              textOf(test::noon + Duration{dipped})));
    }
    log.climb(61, 64, 200);
    return log.picture();
}

TEST(ACheck, OfAJarThatTellsTheSameWhateverThePanDoesIsDoubted) {
    const std::vector<double> draws = {67.0, 66.0, 67.8, 66.4, 67.5};
    const auto right = [](double brix) { return brix; };
    for (const double jar : {65.0, 70.4}) {
        const Picture after = afterDraws(draws, [&](double) { return jar; });
        ASSERT_TRUE(after.check);
        EXPECT_EQ(after.check->fate, CheckFate::doubted) << jar;
        EXPECT_EQ(after.checks, 0) << jar;
        EXPECT_LT(std::abs(after.probeOffset.kelvin() - 0.2), 2 * after.targetUncertainty->kelvin()) << jar;
        EXPECT_GT(after.targetUncertainty->kelvin(), 0.2) << jar;
    }
    const Picture own = afterDraws(draws, right);
    EXPECT_EQ(own.checks, 5);
    EXPECT_NEAR(own.probeOffset.kelvin(), 0.2, 0.08);
    // Drawn at the same sugar each time, the cups are alike too.
    EXPECT_EQ(afterDraws({67.0, 67.02, 66.97, 67.0, 67.03}, right).checks, 5);
}

// A crew draws to the line of its glass each time, and its probe leans on metal from one draw to the next: it is the
// probe that moved, once, and the cups are right.
TEST(ACheck, ThatTellsTheLineOfTheGlassIsNoJarForOneLeapOfTheProbe) {
    const Picture after = afterDraws(
        std::vector<double>(7, 67.0), [](double brix) { return brix; }, 0.45);
    ASSERT_TRUE(after.check);
    EXPECT_EQ(after.check->fate, CheckFate::learnt);
    EXPECT_NEAR(after.probeOffset.kelvin(), 0.65, 0.15);
}

// A refractometer is corrected from 10 to 30 degC and no further; off the pan it is no measure (extension's advice).
TEST(ACheck, OffAHotPrismIsSaidToBeOne) {
    const auto with = [](const char* detail) {
        BoilLog log;
        log.hold(66.9, 600);
        log.rows.add(500, fmt::format("density_check,66.9,brix,with=refractometer;{}", detail));
        return log.picture();
    };
    const Picture hot = with("temp=190degF"), cool = with("temp=70degF");
    EXPECT_EQ(hot.check->remark, CheckRemark::hotPrism);
    EXPECT_EQ(cool.check->remark, CheckRemark::none);
    EXPECT_GT(hot.check->error.degrees(), 3 * cool.check->error.degrees());
    EXPECT_GT(hot.targetUncertainty->kelvin(), cool.targetUncertainty->kelvin());
}

TEST(ACheck, OfAHotGlassAsksForItsCupsHeat) {
    const auto with = [](const char* row) {
        BoilLog log;
        log.hold(66.9, 600);
        log.rows.add(500, row);
        return log.picture();
    };
    EXPECT_EQ(with("density_check,59.1,brix,").check->remark, CheckRemark::cupNotTaken);
    EXPECT_EQ(with("density_check,66.9,brix,").check->remark, CheckRemark::cupNotTaken);
    EXPECT_EQ(with("density_check,59.1,brix,temp=211degF").check->remark, CheckRemark::none);
}

// What no syrup can be is no reason to refuse a night.
TEST(ACheck, OfSixPointSevenBrixIsKeptAndTeachesNothing) {
    BoilLog log;
    log.hold(66.9, 600);
    log.rows.add(500, "density_check,6.7,brix,");
    const Picture after = log.picture();
    EXPECT_NE(after.check->fate, CheckFate::learnt);
    EXPECT_EQ(after.probeOffset.kelvin(), 0);
}

// Each ohm of lead puts a Pt100 of two wires 2.6 K high (IEC 60751). One check may be a slip; two that read as syrup
// tell.
TEST(AProbeThatReadsFarTooHigh, IsKnownByTwoChecksThatReadAsSyrup) {
    BoilLog log;
    log.probeHigh = 3.6;
    log.hold(66.9, 600);
    log.rows.add(500, "density_check,66.9,brix,temp=60degF;drawn=2025-03-14T12:08:00Z");
    const Picture one = log.picture();
    EXPECT_EQ(one.check->fate, CheckFate::doubted);
    EXPECT_GT(one.targetUncertainty->kelvin(), 1.5);
    log.hold(66.9, 600);
    log.rows.add(1100, "density_check,66.7,brix,temp=60degF;drawn=2025-03-14T12:18:00Z");
    const Picture two = log.picture();
    EXPECT_EQ(two.check->fate, CheckFate::learnt);
    EXPECT_NEAR(two.probeOffset.kelvin(), 3.6, 2 * two.targetUncertainty->kelvin());
    EXPECT_LT(two.targetUncertainty->kelvin(), 0.5);
}

// 6.7 for 66.7 is a slip as often as it is made, and so is a glass in another pan.
TEST(AProbeThatReadsFarTooHigh, IsNotMadeOfChecksThatReadAsSap) {
    BoilLog log;
    for (int hand = 0; hand < 3; ++hand) {
        log.hold(66.9, 600);
        log.rows.add(log.now - 60, "density_check,6.7,brix,");
        EXPECT_NE(log.picture().check->fate, CheckFate::learnt);
    }
    EXPECT_NEAR(log.picture().probeOffset.kelvin(), 0, 0.1);
}

TEST(AnEmptyReading, IsNoReadingAndComesBackAsItWasWritten) {
    const std::string row = "2025-03-14T12:00:01Z,syrup_pan,,degC,probe=box";
    const auto fact = factOfLine(row);
    ASSERT_TRUE(std::holds_alternative<Fact>(fact));
    EXPECT_EQ(rowOf(std::get<Fact>(fact)), row);
    Rows rows;
    for (int t = 0; t < 60; ++t) {
        rows.read(t, "syrup_pan", 103, "degC", "probe=box");
        rows.add(t, "flue_pan,,degC,");
    }
    EXPECT_FALSE(rows.at(60).reading(Series::flue_pan));
    const auto log = readLog(std::string{logHeader} + "\n" + row + "\n");
    EXPECT_TRUE(log.faults.empty());
    EXPECT_TRUE(log.warnings.empty());
}

// 9.9 L for 7.8: one draw told by two hands four minutes apart.
TEST(ADrawToldByTwoHands, CountsOnceWithAMark) {
    const std::string text = std::string{logHeader} +
                             "\n2025-03-14T12:00:00Z,draw_open,,,"
                             "\n2025-03-14T12:02:00Z,draw_close,2.1,L,to=pail;by=Ann"
                             "\n2025-03-14T12:06:00Z,draw_close,2.1,L,to=pail;by=Ben;entered=2025-03-14T13:00:00Z\n";
    const auto log = readLog(text);
    EXPECT_TRUE(log.faults.empty());
    ASSERT_EQ(log.warnings.size(), 1);
    EXPECT_EQ(log.warnings[0].slip, Slip::toldTwice);
    EXPECT_EQ(log.warnings[0].line, 4);
    Rows rows;
    rows.facts = log.facts;
    EXPECT_NEAR(rows.at(1000).syrupOut.value().litre(), 2.1, 1e-9);
}

TEST(ADrawToldByTwoHands, IsTwoWhereNobodyWroteItDownLater) {
    Rows rows;
    rows.add(0, "draw_close,2.1,L,to=pail").add(240, "draw_close,2.1,L,to=pail");
    EXPECT_NEAR(rows.at(1000).syrupOut.value().litre(), 4.2, 1e-9);
}

} // namespace
} // namespace panside
