#include "core/boil/forecast.h"

#include "core/boil/forecast_record.h"
#include "core/boil/past_waits.h"
#include "core/boil/state.h"
#include "tests/core/boil/logs.h"

#include <cmath>

namespace panside {
namespace {

using test::noon;
using test::Rows;

// A rig that climbs from 60 to 66.9 brix and is drawn down again, over and over, fired each eight minutes. The rise of
// its sugar is interpolated from Starzak and Peacock (1997) at 100 kPa.
double reading(double brix) {
    static constexpr double table[][2] = {{56, 2.43}, {58, 2.67},   {60, 2.93}, {62, 3.24}, {64, 3.60},
                                          {66, 3.99}, {66.9, 4.19}, {68, 4.45}, {70, 4.97}};
    std::size_t i = 1;
    while (i + 1 < std::size(table) && table[i][0] < brix)
        ++i;
    const auto &a = table[i - 1], &b = table[i];
    return 99.606 + a[1] + (b[1] - a[1]) * (brix - a[0]) / (b[0] - a[0]);
}

struct Rig {
    double every = 1;   // seconds between readings
    double wait = 1200; // from 61 brix to the mark
    std::string detail; // of the readings
    bool fires = true;
};

// `draws` whole cycles from the time 60 on, then `more` seconds of the next; returns the time it ended.
double boil(Rows& rows, const Rig& rig, int draws, double more) {
    rows.add(0, "lit,,,").read(0, "pressure", 100.0, "kPa").add(1, "set,0.05,K,key=probe_offset_sd");
    constexpr double draw = 120;
    const double rate = 5.9 / rig.wait, cycle = rig.wait + 40 + draw;
    const double end = 60 + draws * cycle + more;
    for (double t = 60; t <= end; t += 1) {
        const double into = std::fmod(t - 60, cycle), shut = cycle - draw;
        if (rig.fires && std::fmod(t, 480) == 60)
            rows.add(t, "fired,,,");
        if (t > 60 && into == shut)
            rows.add(t, "draw_open,,,");
        if (t > 60 && into == 0)
            rows.add(t, "draw_close,4,L,");
        const double top = 61 + rate * shut;
        const double brix = into < shut ? 61 + rate * into : top + (61 - top) * (into - shut) / draw;
        if (std::fmod(t - 60, rig.every) == 0)
            rows.read(t, "syrup_pan", reading(brix) + 0.03 * (std::fmod(t * 7, 5) - 2) / 2, "degC", rig.detail);
    }
    return end;
}

bool says(const Picture& picture, Shown figure, Reason reason) {
    return std::any_of(picture.why.begin(), picture.why.end(), [&](const Why& why) {
        return why.of == std::variant<Shown, Series>{figure} && why.reason == reason;
    });
}

TEST(DrawForecast, HoldsTheTruthAndNarrowsAsItNears) {
    Rows rows;
    boil(rows, {}, 4, 1300);
    double before = 1e9;
    for (const double into : {300.0, 600.0, 900.0, 1100.0}) {
        const double now = 60 + 4 * 1360 + into, left = 1200 - into;
        Rows soFar;
        std::copy_if(rows.facts.begin(), rows.facts.end(), std::back_inserter(soFar.facts),
                     [&](const Fact& fact) { return fact.at <= noon + Duration{now}; });
        const auto eta = soFar.at(now).drawEta;
        ASSERT_TRUE(eta && eta->p90) << into;
        EXPECT_LE(seconds(eta->p10), left) << into;
        EXPECT_GE(seconds(*eta->p90), left) << into;
        EXPECT_NEAR(seconds(eta->p50), left, 0.15 * left + 30) << into;
        const double width = seconds(*eta->p90 - eta->p10);
        EXPECT_LT(width, before) << into;
        before = width;
    }
}

TEST(DrawForecast, SlidesAwayWithinAMinuteOfAMissedFiring) {
    Rows rows;
    const double now = boil(rows, {}, 4, 420);
    Rows fed = rows, missed = rows;
    // The same pan for a minute, stalled; in one log the load goes in.
    const double due = std::ceil((now - 60) / 480) * 480 + 60;
    for (Rows* one : {&fed, &missed})
        for (double t = now + 1; t <= due + 60; ++t)
            one->read(t, "syrup_pan", reading(61 + 5.9 / 1200 * std::min(t - now + 420, due - now + 420)), "degC");
    fed.add(due, "fired,,,");
    const auto with = fed.at(due + 60).drawEta, without = missed.at(due + 60).drawEta;
    ASSERT_TRUE(with && without);
    EXPECT_GT(seconds(without->p50), seconds(with->p50) + 10);
    const auto before = missed.at(due + 60);
    EXPECT_GT(seconds(before.drawEta->p50), 0);
}

TEST(DrawForecast, ZerosAboveTheTarget) {
    Rows rows;
    const double now = boil(rows, {}, 2, 1235);
    const auto eta = rows.at(now).drawEta;
    ASSERT_TRUE(eta);
    EXPECT_EQ(*eta, (Range{Duration{0}, Duration{0}, Duration{0}}));
}

TEST(DrawForecast, WhileDrawingItSaysWhenToClose) {
    Rows rows;
    const double now = boil(rows, {}, 3, 1246);
    const Picture picture = rows.at(now);
    EXPECT_TRUE(picture.drawing);
    EXPECT_FALSE(picture.drawEta);
    EXPECT_TRUE(says(picture, Shown::drawEta, Reason::drawing));
    ASSERT_TRUE(picture.closeEta);
    EXPECT_LT(seconds(picture.closeEta->p50), 120);
    Rows later = rows;
    for (double t = now + 1; t < now + 90; ++t)
        later.read(t, "syrup_pan", reading(62), "degC");
    EXPECT_EQ(later.at(now + 89).closeEta, (Range{Duration{0}, Duration{0}, Duration{0}}));
}

TEST(DrawForecast, SaysNothingBeforeThereIsARise) {
    Rows rows;
    rows.add(0, "lit,,,").read(0, "pressure", 100.0, "kPa");
    for (int t = 0; t < 1200; ++t)
        rows.read(t, "syrup_pan", 99.7 + 0.02 * (t % 3), "degC");
    const Picture picture = rows.at(1200);
    EXPECT_FALSE(picture.drawEta);
    EXPECT_TRUE(says(picture, Shown::drawEta, Reason::noGradient));
}

TEST(DrawForecast, SaysNothingWithoutPressure) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t < 600; ++t)
        rows.read(t, "syrup_pan", 103 + t * 1e-3, "degC");
    EXPECT_TRUE(says(rows.at(600), Shown::drawEta, Reason::noPressure));
}

TEST(DrawForecast, SaysNothingWhenTheShiftHasEnded) {
    Rows rows;
    const double now = boil(rows, {}, 2, 600);
    rows.add(now, "shift_end,,,");
    EXPECT_TRUE(says(rows.at(now + 10), Shown::drawEta, Reason::shiftEnded));
}

TEST(DrawForecast, AProbeThatIsGoneIsBelievedForAMinuteAndAHalf) {
    Rows rows;
    const double now = boil(rows, {}, 2, 600);
    EXPECT_TRUE(rows.at(now + 60).drawEta);
    const Picture later = rows.at(now + 200);
    EXPECT_FALSE(later.drawEta);
    EXPECT_TRUE(says(later, Shown::drawEta, Reason::noPanReading));
}

// Four draws keyed, and not a reading: the waits are a forecast.
TEST(DrawForecast, AWatchAloneForetellsFromTheFourthDrawOn) {
    Rows rows;
    rows.add(0, "lit,,,");
    const auto draw = [&](double open) { rows.add(open, "draw_open,,,").add(open + 100, "draw_close,4,L,"); };
    for (const double open : {3000.0, 4000.0, 5100.0})
        draw(open);
    EXPECT_TRUE(says(rows.at(5500), Shown::drawEta, Reason::noPressure)); // two waits only
    draw(6100);
    const auto eta = rows.at(6500).drawEta; // 300 s of some 930 are gone
    ASSERT_TRUE(eta && eta->p90);
    EXPECT_NEAR(seconds(eta->p50), 630, 150);
    EXPECT_LT(seconds(eta->p10), 630);
    EXPECT_GT(seconds(*eta->p90), 630);
    rows.add(6600, "shutdown,,,");
    EXPECT_FALSE(rows.at(6700).drawEta);
}

TEST(DrawForecast, AProbeThatIsGoneLeavesTheWatch) {
    Rows rows;
    const double now = boil(rows, {}, 5, 400);
    const auto eta = rows.at(now + 300).drawEta;
    ASSERT_TRUE(eta && eta->p90);
    EXPECT_NEAR(seconds(eta->p50), 500, 120);
}

// From a cold start it shoots up as it comes to the boil, then climbs by 0.3 brix a minute: 24 min to go from 59.5.
// What is observed must beat the steep rise before.
TEST(DrawForecast, HowItCameToTheBoilIsNoRateOfItsSugar) {
    Rows rows;
    rows.add(0, "lit,,,").read(0, "pressure", 100.0, "kPa");
    for (int t = 0; t < 420; ++t)
        rows.read(t, "syrup_pan", 20 + t * 0.195, "degC");
    double now = 420;
    for (; now < 1320; ++now)
        rows.read(now, "syrup_pan", reading(56 + (now - 420) * 0.23 / 60) + 0.02 * (std::fmod(now * 7, 5) - 2), "degC");
    const auto eta = rows.at(now).drawEta;
    ASSERT_TRUE(eta);
    const double left = (66.9 - 59.45) / 0.23 * 60;
    EXPECT_GT(seconds(eta->p50), 0.6 * left);
    EXPECT_LT(seconds(eta->p50), 1.6 * left);
    EXPECT_LT(seconds(eta->p10), left);
    EXPECT_GT(eta->p90 ? seconds(*eta->p90) : INFINITY, left);
}

// A crest that touches the mark for some seconds calls nobody.
TEST(DrawForecast, NowHasToStandBeforeItIsCalled) {
    Rows rows;
    double now = boil(rows, {}, 3, 1050);
    for (int i = 0; i < 15; ++i, ++now)
        rows.read(now + 1, "syrup_pan", reading(67.1), "degC");
    const auto touched = rows.at(now).drawEta;
    ASSERT_TRUE(touched);
    EXPECT_GT(seconds(touched->p50), 0);
    for (int i = 0; i < 30; ++i, ++now)
        rows.read(now + 1, "syrup_pan", reading(67.1), "degC");
    EXPECT_EQ(rows.at(now).drawEta, (Range{Duration{0}, Duration{0}, Duration{0}}));
    for (int i = 0; i < 12; ++i, ++now) // nor does a trough call it off
        rows.read(now + 1, "syrup_pan", reading(66.8), "degC");
    EXPECT_EQ(rows.at(now).drawEta, (Range{Duration{0}, Duration{0}, Duration{0}}));
}

TEST(DrawForecast, AfterTheShutdownMoreThanOneFutureInTenNeverGetsThere) {
    Rows rows;
    double now = boil(rows, {}, 3, 300);
    rows.add(now, "shutdown,,,");
    for (const double until = now + 1200; now < until; ++now)
        rows.read(now + 1, "syrup_pan", reading(62.6) + 0.01 * std::fmod(now, 3), "degC");
    const Picture picture = rows.at(now);
    EXPECT_TRUE(!picture.drawEta || !picture.drawEta->p90);
    EXPECT_TRUE(says(picture, Shown::drawEta, Reason::stoppedFiring));
}

TEST(DrawForecast, WorksOnAReadingAMinuteAndByHandButWider) {
    Rows quick, slow, hand;
    const double now = boil(quick, {}, 4, 600);
    boil(slow, {.every = 60, .detail = ""}, 4, 600);
    boil(hand, {.every = 300, .detail = "probe=hand"}, 4, 600);
    const auto width = [&](const Rows& rows) {
        const auto eta = rows.at(now).drawEta;
        return eta && eta->p90 ? seconds(*eta->p90 - eta->p10) : -1;
    };
    EXPECT_GT(width(quick), 0);
    EXPECT_GT(width(slow), 0);
    EXPECT_GT(width(hand), width(quick));
}

// A typed reading is soon old: what is shown climbs on as the pan did, also where it was typed from another place in
// the climb each time.
TEST(DrawForecast, FollowsTheSugarBetweenReadingsByHand) {
    Rows hand;
    const double now = boil(hand, {.every = 300, .wait = 700, .detail = "probe=hand"}, 5, 650);
    const double typed = 61 + 5.9 / 700 * 500, there = 61 + 5.9 / 700 * 650;
    const Picture picture = hand.at(now);
    ASSERT_TRUE(picture.brix);
    EXPECT_NEAR(picture.brix->degrees(), there, 0.5 * (there - typed));
}

TEST(DrawForecast, TwoAtOneTimeADrawOpenedTwiceAndOneNeverClosedDoNoHarm) {
    Rows rows;
    double now = boil(rows, {}, 2, 1246);
    rows.add(now, "draw_open,,,").add(now, "draw_open,,,");
    for (int i = 0; i < 3; ++i)
        rows.read(now, "syrup_pan", reading(66), "degC");
    for (const double until = now + 3600; now < until; now += 5)
        rows.read(now, "syrup_pan", reading(63), "degC");
    const Picture picture = rows.at(now);
    EXPECT_TRUE(picture.drawing);
    EXPECT_EQ(picture.closeEta, (Range{Duration{0}, Duration{0}, Duration{0}}));
}

TEST(DrawForecast, ScoresEachDraw) {
    Rows rows;
    const double now = boil(rows, {}, 4, 1290);
    const Picture picture = rows.at(now);
    ASSERT_TRUE(picture.lastScore);
    EXPECT_GT(picture.lastScore->forecasts, 20);
    EXPECT_LT(std::abs(seconds(picture.lastScore->twoBefore.value())), 90);
    EXPECT_LT(std::abs(seconds(picture.lastScore->tenBefore.value())), 240);
    EXPECT_GT(picture.lastScore->inside, 0.5);
}

TEST(DrawForecast, TheStateStaysSmall) { EXPECT_LE(sizeof(DrawForecast) + sizeof(Mark), 8192U); }

TEST(PastWaits, OfEqualWaitsHalfOfWhatIsLeftIsLeft) {
    PastWaits waits;
    EXPECT_FALSE(waits.rest(0));
    for (int i = 0; i < 10; ++i)
        waits.add(900);
    EXPECT_NEAR(waits.rest(0)->p50, 900, 15);
    EXPECT_NEAR(waits.rest(300)->p50, 600, 30);
    EXPECT_GT(waits.rest(1500)->p50, 30); // longer than usual: soon, but not at once
}

TEST(PastWaits, PinballLossByHand) {
    // Came at 100: p10 of 50 loses 0.1 * 50, p50 of 120 loses 0.5 * 20, p90 of 200 loses 0.1 * 100.
    EXPECT_NEAR(lossOf({50, 120, 200}, 100), 5 + 10 + 10, 1e-9);
}

// A cycle in which the pan said `pan` and the waits `waits` of what came; `under` brix a second before it.
void oneCycle(ForecastRecord& record, double came, double pan, double waits, double under = 0.005) {
    for (double lasted = 0; lasted < came; lasted += 20) {
        const double left = came - lasted;
        const Quantiles q{0.98 * pan * left, pan * left, 1.02 * pan * left};
        record.keep(lasted, {q, waits * left, under * left}, q);
    }
    record.judge(came, noon);
    record.forgetCycle();
}

TEST(ForecastRecord, WidensWhereItWasTooSureAndNarrowsWhereItNeverErred) {
    ForecastRecord wild, tame;
    const DrawGrounds sure{{590, 600, 610}, 600, 3};
    const auto width = [&](const ForecastRecord& record) {
        const Quantiles q = record.weighed(sure);
        return *q.p90 - q.p10;
    };
    const double before = width(wild);
    for (int draw = 0; draw < 6; ++draw) {
        oneCycle(wild, 800, draw % 2 ? 0.6 : 1.6, draw % 2 ? 0.6 : 1.6, draw % 2 ? 0.008 : 0.003);
        oneCycle(tame, 800, 1, 1);
    }
    EXPECT_GT(width(wild), 1.5 * before);
    EXPECT_LT(width(tame), before);
}

// Each side by itself: what always comes later than it was said widens the upper half alone.
TEST(ForecastRecord, WidensOnTheSideOnWhichItMissed) {
    ForecastRecord record;
    const DrawGrounds sure{{590, 600, 610}, 600, 3};
    const auto lower = [&] { return record.weighed(sure).p50 / (record.weighed(sure).p10 + 1); };
    const auto upper = [&] { return *record.weighed(sure).p90 / record.weighed(sure).p50; };
    const double lowerBefore = lower(), upperBefore = upper();
    for (int draw = 0; draw < 4; ++draw)
        oneCycle(record, 800, 0.6, 0.6, 0.005);
    EXPECT_GT(upper(), upperBefore);
    EXPECT_LE(lower(), lowerBefore);
}

// What was shown is wider than what was learned of the waits, by the mark's own doubt: by what a person saw it is
// judged.
TEST(ForecastRecord, NarrowsWhereWhatWasShownNeverErred) {
    const DrawGrounds sure{{590, 600, 610}, 600, 3};
    const auto lower = [&](double shown) {
        ForecastRecord record;
        for (int draw = 0; draw < 4; ++draw) {
            for (double lasted = 0; lasted < 800; lasted += 20) {
                const double left = 800 - lasted, said = 1.4 * left; // each time it comes sooner
                record.keep(lasted, {{0.98 * said, said, 1.02 * said}, said, 0.005 * left},
                            {shown * said, said, 1.1 * said});
            }
            record.judge(800, noon);
            record.forgetCycle();
        }
        const Quantiles q = record.weighed(sure);
        return q.p50 / (q.p10 + 1);
    };
    EXPECT_LT(lower(0.5), lower(0.98));
}

// Where the upper end was left open nothing was said that could have held.
TEST(ForecastRecord, AnOpenEndNarrowsNothing) {
    ForecastRecord record;
    const DrawGrounds sure{{590, 600, 610}, 600, 3};
    const auto upper = [&] { return *record.weighed(sure).p90 / record.weighed(sure).p50; };
    const double before = upper();
    for (int draw = 0; draw < 4; ++draw) {
        for (double lasted = 0; lasted < 800; lasted += 20) {
            const double left = 800 - lasted;
            record.keep(lasted, {{0.9 * left, left, {}}, left, 0.005 * left}, {0.9 * left, left, {}});
        }
        record.judge(800, noon);
        record.forgetCycle();
    }
    EXPECT_GT(upper() - 1, 0.9 * (before - 1));
}

TEST(ForecastRecord, LeansOnWhicheverLostLess) {
    const DrawGrounds asked{{900, 1200, 1500}, 400, {}};
    ForecastRecord fresh, byWaits, byPan;
    for (int draw = 0; draw < 8; ++draw) {
        oneCycle(byWaits, 800, draw % 2 ? 3 : 0.4, 1);
        oneCycle(byPan, 800, 1, draw % 2 ? 3 : 0.4);
    }
    EXPECT_LT(byWaits.weighed(asked).p50, fresh.weighed(asked).p50 - 100);
    EXPECT_GT(byPan.weighed(asked).p50, fresh.weighed(asked).p50 + 100);
}

// It hangs under the mark: the model of the pan sees no end, the distance and the pace of the shift do.
TEST(ForecastRecord, TheWaitsBoundWhatAPanThatStandsStillSays) {
    ForecastRecord record;
    for (int draw = 0; draw < 4; ++draw)
        oneCycle(record, 1200, 1, 1);
    const Quantiles still = record.weighed({{7200, 14400, {}}, 500, 2.5});
    EXPECT_LT(still.p50, 3600);
    EXPECT_GT(still.p50, 500);
    ASSERT_TRUE(still.p90);
    EXPECT_GT(*still.p90, still.p50);
}

// Near the mark nobody knows the second: the range holds what has just passed as well.
TEST(ForecastRecord, NearTheMarkItMayBeNow) { EXPECT_EQ(ForecastRecord{}.weighed({{20, 40, 60}, {}, {}}).p10, 0); }

} // namespace
} // namespace panside
