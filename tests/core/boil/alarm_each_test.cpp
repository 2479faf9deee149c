// Each alarm of the contract on its own: it comes after its delay, it goes, it does not chatter about its limit, it is
// silent on a calm night, and it goes through the states of ISA-18.2 in whichever order a person answers. Limits and
// delays are those of the contract; sizes are common practice, no source.
#include "tests/core/boil/boil_log.h"

#include <ostream>

namespace panside {

std::ostream& operator<<(std::ostream& out, AlarmState state) { return out << static_cast<int>(state); }

namespace {

using test::BoilLog;
using test::noise;
using test::Rows;
using test::stands;
using test::stood;

using Over = std::function<double(int)>; // SI of no matter: the unit is beside it

// A reading a second from `from` to `until`.
void readAlong(Rows& rows, std::string_view series, std::string_view unit, int from, int until, const Over& course) {
    for (int t = from; t < until; ++t)
        rows.read(t, series, course(t), unit);
}
Rows litAtNoon() {
    Rows rows;
    rows.add(0, "lit,,,");
    return rows;
}
// `calm`, then `odd` from 100 to 300, then calm again.
Over oddBetween(double calm, double odd, double scatter) {
    return [=](int t) { return (t >= 100 && t < 300 ? odd : calm) + noise(t, scatter); };
}
// A pan at rises over boiling water at 101.325 kPa (99.974 degC, IAPWS R7-97(2012)), without scatter worth the name.
void panAt(Rows& rows, int from, int until, const Over& rise) {
    for (int t = from; t < until; ++t) {
        if (t % 30 == 0)
            rows.read(t, "pressure", 101.325, "kPa");
        rows.read(t, "syrup_pan", 99.974 + rise(t) + noise(t, 0.02), "degC");
    }
}
double riseOf(double brix) { return boilingRise(Brix::degrees(brix), Pressure::kilopascal(101.325)).value().kelvin(); }

// ---- the fire's heat at the stack

Rows stackOf(int until, const Over& celsius) {
    Rows rows = litAtNoon();
    readAlong(rows, "stack", "degC", 0, until, celsius);
    return rows;
}

TEST(StackHot, NeedsHalfAMinuteAndEndsTwentyKelvinLower) {
    // 25 s past 600 degC, twice, is a load that catches.
    const auto flares = [](int t) { return (t % 150 >= 100 && t % 150 < 120 ? 615 : 450) + noise(t, 2); };
    EXPECT_EQ(stood(stackOf(600, flares), Alarm::stack_hot).first, -1);

    const auto falls = [](int t) { return (t < 100 ? 450 : t < 200 ? 630 : t < 300 ? 590 : 560) + noise(t, 2); };
    const test::Stood hot = stood(stackOf(400, falls), Alarm::stack_hot);
    EXPECT_GE(hot.first, 130);
    EXPECT_LE(hot.first, 145);
    EXPECT_EQ(hot.times, 1);
    EXPECT_GT(hot.last, 299) << "590 is within the deadband";
    EXPECT_LE(hot.last, 325);
}

TEST(StackHot, IsHotterThanThisRigWasEverSeenToRun) {
    const auto after = [](int watched) {
        return stood(stackOf(watched + 200, [=](int t) { return (t < watched ? 420 : 550) + noise(t, 5); }),
                     Alarm::stack_hot);
    };
    const test::Stood known = after(2 * 3600);
    EXPECT_GE(known.first, 7200 + 30);
    EXPECT_LE(known.first, 7200 + 60);
    // What this rig does is not known after ten minutes.
    EXPECT_EQ(after(600).first, -1);
    // A hard-fired night of which 530 is a part: 550 is nothing new.
    const auto usual = [](int t) { return (t % 480 < 100 ? 530 : 420) + (t > 7200 ? 20 : 0) + noise(t, 5); };
    EXPECT_EQ(stood(stackOf(9000, usual), Alarm::stack_hot).first, -1);
}

TEST(StackHot, DoesNotChatterAboutItsLimit) {
    const auto hovers = [](int t) { return 600 + 9 * std::sin(t / 25.0) + noise(t, 3); };
    EXPECT_EQ(stood(stackOf(1800, hovers), Alarm::stack_hot).times, 1);
}

// ---- the level

Rows levelOf(int until, const Over& millimetre, const char* depth = "40") {
    Rows rows = litAtNoon();
    if (depth)
        rows.add(0, fmt::format("set,{},mm,key=running_depth", depth));
    readAlong(rows, "pan_level", "mm", 0, until, millimetre);
    return rows;
}

TEST(PanLow, IsUnderHalfTheRunningDepthForTenSecondsAndEndsAtElevenTwentieths) {
    const auto dips = [](int t) { return (t < 100 ? 30 : t < 160 ? 18.5 : t < 220 ? 21 : 24) + noise(t, 0.2); };
    const test::Stood low = stood(levelOf(300, dips), Alarm::pan_low);
    EXPECT_GE(low.first, 110);
    EXPECT_LE(low.first, 125);
    EXPECT_EQ(low.times, 1);
    EXPECT_GT(low.last, 219) << "21 mm is within the deadband of 20 mm";
    EXPECT_LE(low.last, 235);
}

TEST(PanLow, ASurgeOfAFewSecondsIsNone) {
    const auto surges = [](int t) { return (t % 60 >= 30 && t % 60 < 37 ? 18 : 30) + noise(t, 0.2); };
    EXPECT_EQ(stood(levelOf(600, surges), Alarm::pan_low).first, -1);
}

TEST(PanLow, DoesNotChatterAboutHalfTheDepth) {
    const auto hovers = [](int t) { return 20 + 0.8 * std::sin(t / 20.0) + noise(t, 0.3); };
    EXPECT_EQ(stood(levelOf(1800, hovers), Alarm::pan_low).times, 1);
}

TEST(PanLow, IsNotJudgedWhereTheRunningDepthIsNotKnown) {
    EXPECT_EQ(stood(levelOf(
                        300, [](int t) { return 6 + noise(t, 0.2); }, nullptr),
                    Alarm::pan_low)
                  .first,
              -1);
    // Said at last, in the middle of the night, it counts at once.
    Rows rows = levelOf(
        300, [](int t) { return 12 + noise(t, 0.2); }, nullptr);
    rows.add(150.5, "set,1,in,key=running_depth");
    const test::Stood low = stood(rows, Alarm::pan_low);
    EXPECT_GE(low.first, 160);
    EXPECT_LE(low.first, 165);
}

// ---- the filter

TEST(FilterPressureHigh, TheLimitIsThePersonsOwn) {
    const auto press = [](double limit, const char* unit) {
        Rows rows;
        if (limit > 0)
            rows.add(0, fmt::format("set,{},{},key=filter_limit", limit, unit));
        readAlong(rows, "filter_pressure", "kPa", 0, 60, [](int t) { return t < 30 ? 200.0 : 350.0; });
        return stood(rows, Alarm::filter_pressure_high).first;
    };
    EXPECT_EQ(press(0, ""), -1) << "nobody set one";
    EXPECT_EQ(press(400, "kPa"), -1);
    EXPECT_GE(press(300, "kPa"), 32);
    EXPECT_EQ(press(52, "psi"), -1); // 358.5 kPa, with 1 psi = 6.894757 kPa (NIST SP 811, 2008)
    EXPECT_GE(press(50, "psi"), 32); // 344.7 kPa
}

TEST(FilterPressureHigh, AnotherLimitCountsFromWhenItIsSet) {
    Rows rows;
    rows.add(0, "set,400,kPa,key=filter_limit");
    readAlong(rows, "filter_pressure", "kPa", 0, 200, [](int) { return 350.0; });
    rows.add(50.5, "set,300,kPa,key=filter_limit").add(150.5, "set,400,kPa,key=filter_limit");
    const test::Stood high = stood(rows, Alarm::filter_pressure_high);
    EXPECT_GE(high.first, 52);
    EXPECT_LE(high.first, 54);
    EXPECT_GE(high.last, 150);
    EXPECT_LE(high.last, 154);
}

TEST(FilterPressureHigh, AStrokeOfThePumpIsNoneAndHoveringCallsOnce) {
    const auto strokes = test::pressed({{30, 200}, {31, 330}, {60, 200}, {61, 330}, {90, 200}});
    EXPECT_EQ(stood(strokes, Alarm::filter_pressure_high).first, -1);
    Rows hovers;
    hovers.add(0, "set,300,kPa,key=filter_limit");
    readAlong(hovers, "filter_pressure", "kPa", 0, 900, [](int t) { return 300 + 8 * std::sin(t / 6.0); });
    EXPECT_EQ(stood(hovers, Alarm::filter_pressure_high).times, 1);
}

// ---- the end of the sap

// A tank that falls by 200 L/h, loads of eight minutes; what is known of the rig is told or not.
struct FallingTank {
    Rows rows;
    double litre;
    int t = 0;
    explicit FallingTank(double from, bool knowsPans = true) : litre{from} {
        if (knowsPans)
            rows.add(0, "set,2,m2,key=flue_pan_area").add(0, "set,40,mm,key=running_depth");
        rows.add(0, "lit,,,");
    }
    void run(int seconds, double litrePerHour = 200, bool fed = true) {
        for (const int until = t + seconds; t < until; t += 10, litre -= litrePerHour / 360) {
            rows.read(t, "syrup_pan", 102 + noise(t, 0.05), "degC").read(t, "tank_level", litre + noise(t, 2), "L");
            if (t % 60 == 0)
                rows.read(t, "pressure", 101.325, "kPa");
            if (fed && t % 480 == 0)
                rows.add(t, "fired,20,kg,");
        }
    }
};
double litreAt(const FallingTank& log, int t, double from) { return from - (t < log.t ? t : log.t) * 200.0 / 3600; }

// 2 m2 by 40 mm are 80 L; half of 200 L/h for a burn-out of 45 min are 75 L. 155 L cover the pans (common practice).
TEST(SapLow, ComesWhenTheTankHoldsLessThanTheShutdownNeedsAndGoesWithMoreSap) {
    FallingTank log{500};
    log.run(7200);
    const test::Stood low = stood(log.rows, Alarm::sap_low);
    ASSERT_GT(low.first, 0);
    EXPECT_NEAR(litreAt(log, low.first, 500), 155, 12);
    EXPECT_EQ(low.times, 1);
    EXPECT_TRUE(stands(log.rows.at(log.t), Alarm::sap_low));

    log.rows.add(log.t, "sap_in,800,L,brix=2.0");
    const int more = log.t;
    log.litre += 800;
    log.run(600);
    const test::Stood after = stood(log.rows, Alarm::sap_low);
    EXPECT_EQ(after.first, low.first);
    EXPECT_GE(after.last, more + 50) << "its release is a minute";
    EXPECT_LE(after.last, more + 120);
}

TEST(SapLow, AfterTheShutdownTheSapKeptBackIsForThePansAndNoAlarm) {
    FallingTank log{300};
    log.run(5000);
    ASSERT_TRUE(stands(log.rows.at(log.t), Alarm::sap_low));
    log.rows.add(log.t, "shutdown,,,");
    log.run(300, 100, false);
    EXPECT_FALSE(stands(log.rows.at(log.t), Alarm::sap_low));
    EXPECT_FALSE(stands(log.rows.at(log.t), Alarm::last_load));
}

// Where nobody said how large the pans are, what covers them is not known: an hour's sap stands in for it.
TEST(SapLow, WhereThePansAreNotKnownAnHourIsKeptInHand) {
    FallingTank log{500, false};
    log.run(8000);
    const test::Stood low = stood(log.rows, Alarm::sap_low);
    ASSERT_GT(low.first, 0);
    EXPECT_NEAR(litreAt(log, low.first, 500), 200, 12);
    EXPECT_EQ(low.times, 1);
}

TEST(SapLow, ATankThatHoversCallsOnce) {
    FallingTank log{400};
    log.run(4000);
    // Sap trickles in as fast as it boils off, the gauge sloshes by six litres.
    for (const int until = log.t + 3600; log.t < until; log.t += 10) {
        log.rows.read(log.t, "syrup_pan", 102 + noise(log.t, 0.05), "degC")
            .read(log.t, "tank_level", 152 + 6 * std::sin(log.t / 90.0), "L");
        if (log.t % 480 == 0)
            log.rows.add(log.t, "fired,20,kg,");
    }
    // What is to be kept back is reckoned over hours of use, so no slosh of the gauge crosses both limits.
    EXPECT_EQ(stood(log.rows, Alarm::sap_low).times, 1);
}

// The load of 200 L/h each eight minutes takes 27 L: with 155 L to keep back, the last but one goes in at about 210 L.
TEST(LastLoad, ComesALoadAheadAndGoesWithMoreSap) {
    FallingTank log{500};
    log.run(7000);
    const test::Stood last = stood(log.rows, Alarm::last_load);
    ASSERT_GT(last.first, 0);
    EXPECT_NEAR(litreAt(log, last.first, 500), 155 + 1.5 * 27, 27);
    EXPECT_LT(last.first, stood(log.rows, Alarm::sap_low).first) << "it is called before there is too little";
    EXPECT_EQ(last.times, 1) << "not anew with each load";

    log.rows.add(log.t, "sap_in,800,L,brix=2.0");
    log.litre += 800;
    log.run(600);
    EXPECT_FALSE(stands(log.rows.at(log.t), Alarm::last_load));
}

// ---- probes

TEST(ProbeSilent, EndsWithTheNextReadingAndSaysWhichProbe) {
    Rows rows = litAtNoon();
    readAlong(rows, "stack", "degC", 0, 60, [](int t) { return 400 + noise(t, 5); });
    readAlong(rows, "stack", "degC", 100, 130, [](int t) { return 400 + noise(t, 5); });
    const test::Stood silent = stood(rows, Alarm::probe_silent);
    EXPECT_EQ(silent.first, 69); // ten seconds after the last reading
    EXPECT_EQ(silent.last, 99);
    EXPECT_EQ(silent.times, 1);
    EXPECT_EQ(rows.at(80).alarms.at(0).series, Series::stack);
}

TEST(ProbeSilent, AProbeThatSpeaksAsItLikesIsNotCalledForEachPause) {
    // Now each second, now after seven.
    Rows rows = litAtNoon();
    for (int t = 0, i = 0; t < 1200; t += 1 + (i * i) % 7, ++i)
        rows.read(t, "stack", 400 + noise(t, 5), "degC");
    EXPECT_EQ(stood(rows, Alarm::probe_silent).first, -1);
}

Rows frozenDigit(double celsius) {
    Rows rows = litAtNoon();
    readAlong(rows, "stack", "degC", 0, 500, [](int t) { return 400 + noise(t, 5); });
    readAlong(rows, "syrup_pan", "degC", 0, 500,
              [=](int t) { return t >= 300 && t < 420 ? celsius : celsius + noise(t, 0.05); });
    return rows;
}
TEST(ProbeStuck, EndsWhenADigitMovesAndKeepsStillWhereNothingBoils) {
    const test::Stood stuck = stood(frozenDigit(102.5), Alarm::probe_stuck);
    EXPECT_GE(stuck.first, 355);
    EXPECT_LE(stuck.first, 361);
    EXPECT_GE(stuck.last, 419);
    EXPECT_LE(stuck.last, 425);
    EXPECT_EQ(stood(frozenDigit(8.5), Alarm::probe_stuck).first, -1) << "cold sap in a pan not yet lit";
}

TEST(ReadingImplausible, NeedsFiveSecondsAndEndsWithReadingsThatCanBe) {
    const auto odd = [](int seconds) {
        Rows rows = litAtNoon();
        readAlong(rows, "syrup_pan", "degC", 0, 500,
                  [=](int t) { return t >= 300 && t < 300 + seconds ? 900.0 : 102.5 + noise(t, 0.05); });
        return stood(rows, Alarm::reading_implausible);
    };
    EXPECT_EQ(odd(4).first, -1);
    const test::Stood implausible = odd(60);
    EXPECT_EQ(implausible.first, 305);
    EXPECT_GE(implausible.last, 359);
    EXPECT_LE(implausible.last, 370);
    EXPECT_EQ(implausible.times, 1);
}

// ---- the mark

TEST(DrawOverdue, ASagOfSecondsIsNoneAndHoveringCallsOnce) {
    const double least = riseOf(66.0);
    const auto drawing = [&](const Over& rise) {
        Rows rows = litAtNoon();
        panAt(rows, 0, 900, [&](int t) { return t < 200 ? least + 0.4 : rise(t); });
        rows.add(200, "draw_open,,,");
        return stood(rows, Alarm::draw_overdue);
    };
    // Cold sap splashes past the probe for a quarter of a minute.
    EXPECT_EQ(drawing([&](int t) { return least + (t >= 400 && t < 412 ? -0.3 : 0.3); }).first, -1);
    const test::Stood hovers = drawing([&](int t) { return least + 0.03 * std::sin(t / 20.0) - 0.01; });
    EXPECT_EQ(hovers.times, 1);
}

// ---- all of them, in every order of the answers

struct Story {
    Alarm alarm;
    Rows rows;
    int calm, stands, gone; // moments before, in and well after it
};

Rows panRuns(const Over& rise, int until = 600) {
    Rows rows = litAtNoon();
    panAt(rows, 0, until, rise);
    return rows;
}
std::vector<Story> stories() {
    std::vector<Story> all;
    // Falls dry from 300 on at 0.05 mm/s, flooded at 1000.
    Rows dry = levelOf(1600, [](int t) {
        return (t < 300 ? 40 : t < 1000 ? 40 - 0.05 * (t - 300) : std::min(40.0, 5 + 0.5 * (t - 1000))) + noise(t, 0.5);
    });
    readAlong(dry, "syrup_pan", "degC", 0, 1600, [](int t) { return 103 + noise(t, 0.05); });
    all.push_back({Alarm::scorch_risk, dry, 250, 990, 1500});
    all.push_back({Alarm::pan_low, dry, 250, 990, 1500});
    all.push_back({Alarm::stack_hot, stackOf(600, oddBetween(420, 640, 5)), 90, 290, 500});
    all.push_back({Alarm::filter_pressure_high, test::pressed({{100, 200}, {300, 350}, {600, 200}}), 90, 290, 500});
    Rows silent = litAtNoon();
    readAlong(silent, "stack", "degC", 0, 100, [](int t) { return 400 + noise(t, 5); });
    readAlong(silent, "stack", "degC", 300, 600, [](int t) { return 400 + noise(t, 5); });
    all.push_back({Alarm::probe_silent, silent, 90, 290, 500});
    all.push_back({Alarm::above_target, panRuns(oddBetween(riseOf(65), riseOf(68), 0)), 90, 290, 500});
    Rows draw = panRuns(oddBetween(riseOf(68), riseOf(64), 0));
    draw.add(50, "draw_open,,,").add(310, "draw_close,5,L,");
    all.push_back({Alarm::draw_overdue, draw, 90, 290, 500});
    Rows fire;
    fire.add(0, "set,6,min,key=fire_interval").add(1, "lit,,,").add(60, "fired,,,").add(600, "fired,,,");
    all.push_back({Alarm::fire_overdue, fire, 400, 590, 700});
    for (const Alarm alarm : {Alarm::sap_low, Alarm::last_load}) {
        FallingTank tank{400};
        tank.run(4800);
        tank.rows.add(4800, "sap_in,800,L,brix=2.0");
        tank.litre += 800;
        tank.run(900);
        all.push_back({alarm, tank.rows, 2000, 4790, 5600});
    }
    // Filled at 1200 L/h from 600 L on, shut off at 900.
    Rows fills = litAtNoon();
    fills.add(0, "set,1000,L,key=feed_tank_volume");
    for (int t = 0; t < 2000; t += 10)
        fills.read(t, "tank_level", 600 + std::min(t, 900) / 3.0 + noise(t, 2), "L");
    all.push_back({Alarm::tank_overflow, fills, 250, 890, 1800});
    all.push_back({Alarm::probe_stuck, frozenDigit(102.5), 290, 410, 480});
    all.push_back({Alarm::reading_implausible,
                   [] {
                       Rows rows = litAtNoon();
                       readAlong(rows, "syrup_pan", "degC", 0, 600, oddBetween(102.5, 900, 0.05));
                       return rows;
                   }(),
                   90, 290, 500});
    Rows clock = litAtNoon();
    clock.add(100, "clock_step,-3600,s,").add(1500, "note,,,end");
    all.push_back({Alarm::clock_changed, clock, 90, 600, 1400});
    return all;
}

AlarmState stateOf(const Story& story, const Rows& rows, double time) {
    for (const AlarmPicture& one : rows.at(time).alarms)
        if (one.alarm == story.alarm)
            return one.state;
    return AlarmState::normal;
}
std::string answered(const char* fact, const Story& story) {
    return fmt::format("{}name={}", fact, nameOf(story.alarm));
}

class EachAlarm : public testing::TestWithParam<Story> {};
INSTANTIATE_TEST_SUITE_P(Each, EachAlarm, testing::ValuesIn(stories()),
                         [](const auto& param) { return std::string{nameOf(param.param.alarm)}; });

TEST(EachAlarm, IsToldHere) {
    // No fact brings `journal_trouble`: it is tested where facts are kept.
    for (std::size_t i = 0; i < alarmCount; ++i) {
        const auto alarm = static_cast<Alarm>(i);
        const auto all = stories();
        EXPECT_TRUE(alarm == Alarm::journal_trouble ||
                    std::any_of(all.begin(), all.end(), [&](const Story& one) { return one.alarm == alarm; }))
            << nameOf(alarm);
    }
}

TEST_P(EachAlarm, ComesOnceAndGoes) {
    const Story& story = GetParam();
    const test::Stood once = stood(story.rows, story.alarm);
    EXPECT_EQ(once.times, 1);
    EXPECT_GT(once.first, story.calm);
    EXPECT_LE(once.first, story.stands);
    EXPECT_GE(once.last, story.stands);
    EXPECT_LT(once.last, story.gone);
}

TEST_P(EachAlarm, RaisedSeenNormal) {
    const Story& story = GetParam();
    Rows rows = story.rows;
    EXPECT_EQ(stateOf(story, rows, story.calm), AlarmState::normal);
    EXPECT_EQ(stateOf(story, rows, story.stands), AlarmState::unseen);
    rows.add(story.stands + 1, answered("alarm_seen,,,by=Ada;", story));
    EXPECT_EQ(stateOf(story, rows, story.stands + 2), AlarmState::seen);
    EXPECT_EQ(stateOf(story, rows, story.gone), AlarmState::normal);
}

TEST_P(EachAlarm, RaisedGoneSeen) {
    const Story& story = GetParam();
    Rows rows = story.rows;
    EXPECT_EQ(stateOf(story, rows, story.gone), AlarmState::goneUnseen);
    rows.add(story.gone + 1, answered("alarm_seen,,,", story));
    EXPECT_EQ(stateOf(story, rows, story.gone + 2), AlarmState::normal);
}

TEST_P(EachAlarm, SeenBeforeItComesIsNotSeen) {
    const Story& story = GetParam();
    Rows rows = story.rows;
    rows.add(story.calm, answered("alarm_seen,,,", story));
    EXPECT_EQ(stateOf(story, rows, story.stands), AlarmState::unseen);
}

TEST_P(EachAlarm, ShelvedForATimeByNameAndBackUnlessItIsTheScorch) {
    const Story& story = GetParam();
    Rows rows = story.rows;
    // From before it comes to a moment at which it has long stood.
    const double minutes = (story.stands - 1 - story.calm) / 60.0;
    rows.add(story.calm, answered(fmt::format("alarm_shelved,{:.6f},min,by=Ada;", minutes).c_str(), story));
    const int first = stood(story.rows, story.alarm).first;
    const bool scorch = story.alarm == Alarm::scorch_risk;
    EXPECT_EQ(stateOf(story, rows, first), scorch ? AlarmState::unseen : AlarmState::shelved);
    EXPECT_EQ(stateOf(story, rows, story.stands), AlarmState::unseen) << "the shelf is over";
    EXPECT_EQ(stateOf(story, rows, story.gone), AlarmState::goneUnseen);
    rows.add(story.stands + 1, answered("alarm_shelved,600,min,", story));
    EXPECT_EQ(stateOf(story, rows, story.stands + 2), scorch ? AlarmState::unseen : AlarmState::shelved);
    EXPECT_EQ(stateOf(story, rows, story.gone), scorch ? AlarmState::goneUnseen : AlarmState::normal);
    EXPECT_TRUE(stands(rows.at(story.stands + 2), story.alarm)) << "what is shelved stands all the same";
}

TEST_P(EachAlarm, SeenThenShelvedComesBackSeen) {
    const Story& story = GetParam();
    Rows rows = story.rows;
    const int first = stood(story.rows, story.alarm).first;
    const double minutes = (story.stands - first - 2) / 60.0;
    rows.add(first, answered("alarm_seen,,,", story));
    rows.add(first + 1, answered(fmt::format("alarm_shelved,{:.6f},min,", minutes).c_str(), story));
    EXPECT_EQ(stateOf(story, rows, story.stands), AlarmState::seen);
    EXPECT_EQ(stateOf(story, rows, story.gone), AlarmState::normal);
}

// ---- and a night in which nothing is wrong, everything read, every limit set

TEST(CalmNight, WithEveryReadingAndEveryLimitRaisesNothing) {
    BoilLog log;
    for (const char* set :
         {"set,40,mm,key=running_depth", "set,2,m2,key=flue_pan_area", "set,0.6,m2,key=syrup_pan_area",
          "set,300,kPa,key=filter_limit", "set,9,min,key=fire_interval", "set,0.1,K,key=probe_offset_sd"})
        log.rows.add(0, set);
    log.rows.add(0, "sap_in,3000,L,brix=2.0");
    log.stack = [](int t) { return t % 480 < 40 ? 330 : 430 - 0.15 * (t % 480); };
    const auto draws = [&](int cycles) {
        for (int i = 0; i < cycles; ++i) {
            log.climb(61, 67.0, 800);
            log.rows.add(log.now, "draw_open,,,");
            log.climb(67.0, 66.3, 60);
            log.rows.add(log.now, "draw_close,3,L,");
            log.climb(66.3, 61, 60);
        }
    };
    draws(13);
    double depth = 40;
    for (int t = 0; t < log.now; ++t) {
        depth += t % 920 >= 800 && t % 920 < 860 ? -0.12 : std::min(0.05, 40 - depth);
        log.rows.read(t, "pan_level", depth + noise(t, 1.5), "mm")
            .read(t, "flue_level", 45 + noise(t + 3, 2), "mm")
            .read(t, "tank_level", 3000 - t * 200.0 / 3600 + noise(t, 3), "L")
            .read(t, "feed_flow", 200 + noise(t + 5, 20), "L/h")
            .read(t, "flue_pan", 100.6 + noise(t + 9, 0.05), "degC")
            .read(t, "air", 2 + noise(t + 2, 0.2), "degC")
            .read(t, "feed", 5 + noise(t + 2, 0.2), "degC")
            .read(t, "filter_pressure", t % 920 > 860 ? 200 + noise(t, 10) : 3 + noise(t, 1), "kPa");
    }
    ASSERT_GT(log.now, 3 * 3600);
    for (std::size_t i = 0; i < alarmCount; ++i) {
        const test::Stood some = stood(log.rows, static_cast<Alarm>(i));
        EXPECT_EQ(some.first, -1) << nameOf(static_cast<Alarm>(i)) << " at " << some.first << ", " << some.times
                                  << " times";
    }
}

} // namespace
} // namespace panside
