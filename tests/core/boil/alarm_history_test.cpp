// The alarms of a shift, each from beginning to end, beside what the pictures of the same facts show.
#include "core/boil/alarm_history.h"
#include "tests/core/boil/logs.h"

#include <gmock/gmock.h>

#include <cmath>
#include <fstream>
#include <iterator>
#include <set>
#include <tuple>

namespace panside {
namespace {

using test::noon;
using test::pressed;
using test::Rows;

AlarmHistory historyOf(const Rows& rows, double until) {
    return alarmHistory(rows.boil().facts(), noon + Duration{until});
}
AlarmSpan only(const AlarmHistory& history) {
    EXPECT_EQ(history.spans.size(), 1U);
    return history.spans.empty() ? AlarmSpan{} : history.spans.front();
}
double after(Instant at) { return secondsBetween(noon, at); }

using Standing = std::multiset<std::tuple<Alarm, std::optional<Series>, Instant, Priority>>;

// Second by second: what stands in the picture of a moment is what the spans say of it.
void agree(const std::vector<Fact>& facts) {
    Boil boil;
    FactId id = 0;
    for (const Fact& fact : facts)
        boil.add(id++, fact);
    Instant last{};
    std::vector<std::pair<Instant, Standing>> seen;
    replay(facts, {}, [&](const Picture& picture) {
        Standing standing;
        for (const AlarmPicture& one : picture.alarms)
            if (one.stands())
                standing.emplace(one.alarm, one.series, one.since, one.priority);
        seen.emplace_back(picture.at, std::move(standing));
        last = picture.at;
    });
    const AlarmHistory history = alarmHistory(boil.facts(), last);
    std::size_t compared = 0;
    for (const auto& [at, standing] : seen) {
        Standing told;
        for (const AlarmSpan& span : history.spans)
            if (span.began <= at && (span.ended ? at < *span.ended : at <= history.until) &&
                !(at >= history.until && history.until < last))
                told.emplace(span.alarm, span.series, span.began, span.priority);
        ASSERT_EQ(told, standing) << textOf(at);
        compared += standing.size();
    }
    EXPECT_GT(compared, 0U) << "no alarm at all: nothing was compared";
}

std::vector<Fact> factsOf(const std::string& log) {
    std::ifstream in{std::string{PANSIDE_SOURCE} + "/sample-data/" + log};
    const ReadLog read = readLog(std::string{std::istreambuf_iterator<char>{in}, {}});
    EXPECT_TRUE(read.faults.empty());
    return read.facts;
}

TEST(AlarmHistory, StandsWhereThePicturesOfARehearsedNightShowIt) {
    agree(factsOf("first-run.csv"));
    agree(factsOf("long-night.csv"));
}

TEST(AlarmHistory, StandsWhereThePicturesOfATroubledNightShowIt) {
    Rows rows;
    rows.add(0, "set,300,kPa,key=filter_limit").add(0, "set,4,min,key=fire_interval").add(0, "lit,,,");
    for (int t = 0; t < 1800; ++t) {
        if (t % 300 < 270) // the lead is loose
            rows.read(t, "syrup_pan", 102.5 + 0.05 * std::sin(t * 12.9898), "degC");
        if (t % 4 != 3)
            rows.read(t, "stack", t > 900 && t < 1100 ? 2000 : 400 + std::sin(t * 4.1414), "degC");
        rows.read(t, "filter_pressure", t % 200 < 40 ? 320 : 200, "kPa");
        if (t % 30 == 0)
            rows.read(t, "pressure", 101.3, "kPa");
    }
    rows.add(420, "fired,,,").add(700.5, "clock_step,3600,s,").add(900, "alarm_seen,,,name=filter_pressure_high");
    rows.add(1000, "alarm_shelved,5,min,name=filter_pressure_high").add(1300.25, "fired,,,");
    std::stable_sort(rows.facts.begin(), rows.facts.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    agree(rows.facts);
    rows.add(1799.5, "shift_end,,,").add(1820, "note,,,the door is shut");
    agree(rows.facts);
}

TEST(AlarmHistory, TellsBeginningEndAndAnswer) {
    Rows rows = pressed({{60, 200}, {120, 320}, {180, 200}});
    rows.add(105, "alarm_seen,,,name=filter_pressure_high;by=Maud");
    std::stable_sort(rows.facts.begin(), rows.facts.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    const AlarmSpan span = only(historyOf(rows, 180));
    EXPECT_EQ(span.alarm, Alarm::filter_pressure_high);
    EXPECT_EQ(span.priority, Priority::high);
    EXPECT_FALSE(span.series);
    // Two seconds of delay, and the few in which a step is not believed yet.
    EXPECT_THAT(after(span.began), testing::AllOf(testing::Ge(62), testing::Le(70)));
    EXPECT_THAT(after(span.ended.value()), testing::AllOf(testing::Ge(122), testing::Le(130)));
    EXPECT_DOUBLE_EQ(after(span.seen.value()), 105);
    EXPECT_EQ(span.seenBy, "Maud");
    EXPECT_TRUE(span.shelved.empty());
}

TEST(AlarmHistory, AnAnswerAfterItWasGoneCountsForItAndNotForTheOneBefore) {
    Rows rows = pressed({{60, 200}, {80, 320}, {120, 200}, {140, 320}, {180, 200}});
    rows.add(180, "alarm_seen,,,name=filter_pressure_high");
    const AlarmHistory history = historyOf(rows, 185);
    ASSERT_EQ(history.spans.size(), 2U);
    EXPECT_FALSE(history.spans[0].seen);
    EXPECT_DOUBLE_EQ(after(history.spans[1].seen.value()), 180);
    EXPECT_LT(after(history.spans[1].ended.value()), 180);
}

TEST(AlarmHistory, OneThatIsSeenTwiceWasSeenTheFirstTime) {
    Rows rows = pressed({{60, 200}, {300, 320}});
    rows.add(100, "alarm_seen,,,name=filter_pressure_high;by=Ansel");
    rows.add(200, "alarm_seen,,,name=filter_pressure_high;by=Maud");
    const AlarmSpan span = only(historyOf(rows, 299));
    EXPECT_DOUBLE_EQ(after(span.seen.value()), 100);
    EXPECT_EQ(span.seenBy, "Ansel");
    EXPECT_FALSE(span.ended);
}

TEST(AlarmHistory, TellsWhoShelvedItAndUntilWhen) {
    Rows rows = pressed({{60, 200}, {900, 320}});
    rows.add(100, "alarm_shelved,10,min,name=filter_pressure_high;by=Maud");
    rows.add(300, "alarm_shelved,5,min,name=filter_pressure_high;by=Ansel");
    const AlarmSpan span = only(historyOf(rows, 899));
    ASSERT_EQ(span.shelved.size(), 2U);
    EXPECT_EQ(span.shelved[0], (AlarmSpan::Shelf{noon + Duration{100}, noon + Duration{300}, "Maud"}));
    EXPECT_EQ(span.shelved[1], (AlarmSpan::Shelf{noon + Duration{300}, noon + Duration{600}, "Ansel"}));
    EXPECT_FALSE(span.seen);
}

TEST(AlarmHistory, OneThatBeginsOnTheShelfSaysSo) {
    Rows rows = pressed({{60, 200}, {300, 320}});
    rows.add(10, "alarm_shelved,2,min,name=filter_pressure_high");
    std::stable_sort(rows.facts.begin(), rows.facts.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    const AlarmSpan span = only(historyOf(rows, 299));
    ASSERT_EQ(span.shelved.size(), 1U);
    EXPECT_DOUBLE_EQ(after(span.shelved[0].until), 130);
}

TEST(AlarmHistory, AScorchRiskCannotBeShelved) {
    Rows rows;
    rows.add(0, "alarm_shelved,60,min,name=scorch_risk").add(0, "set,38,mm,key=running_depth").add(0, "lit,,,");
    for (int t = 0; t < 900; ++t)
        rows.read(t, "pan_level", std::max(1.0, 38 - 0.05 * t), "mm")
            .read(t, "syrup_pan", 102 + 0.05 * std::sin(t * 12.9898), "degC");
    bool any = false;
    for (const AlarmSpan& span : historyOf(rows, 899).spans)
        if (span.alarm == Alarm::scorch_risk) {
            any = true;
            EXPECT_TRUE(span.shelved.empty());
        }
    EXPECT_TRUE(any);
}

TEST(AlarmHistory, WhatStandsWhenTheShiftEndsStoodToTheEndAndNothingComesAfter) {
    Rows rows = pressed({{60, 200}, {300, 320}});
    rows.add(300, "shift_end,,,").add(310, "alarm_seen,,,name=filter_pressure_high");
    const AlarmHistory history = historyOf(rows, 4000);
    const AlarmSpan span = only(history);
    EXPECT_FALSE(span.ended);
    EXPECT_FALSE(span.seen);
    EXPECT_DOUBLE_EQ(after(history.until), 300);
}

TEST(AlarmHistory, WithoutAnEndItGoesAsFarAsTheLastFactUnlessSaidOtherwise) {
    Rows rows = pressed({{60, 200}});
    EXPECT_TRUE(alarmHistory(rows.boil().facts()).spans.empty());
    const AlarmSpan silent = only(historyOf(rows, 100)); // the clock alone: ten seconds after the last reading
    EXPECT_EQ(silent.alarm, Alarm::probe_silent);
    EXPECT_EQ(silent.series, Series::filter_pressure);
    EXPECT_DOUBLE_EQ(after(silent.began), 69);
}

TEST(AlarmHistory, AFiringThatIsUndoneIsOneThatNeverWas) {
    Rows rows;
    rows.add(0, "set,8,min,key=fire_interval").add(0, "lit,,,").add(10, "fired,,,").add(480, "fired,,,");
    Boil boil = rows.boil();
    const auto overdue = [&] {
        std::vector<double> began;
        for (const AlarmSpan& span : alarmHistory(boil.facts(), noon + Duration{1200}).spans)
            if (span.alarm == Alarm::fire_overdue)
                began.push_back(after(span.began));
        return began;
    };
    EXPECT_EQ(overdue(), std::vector<double>{960 + 120});
    ASSERT_TRUE(boil.withdraw(3));
    EXPECT_EQ(overdue(), std::vector<double>{490 + 120});
}

// The slot of all readings together once stood beside that of the one reading, so it was told twice.
TEST(AlarmHistory, ASilentProbeIsToldOnceThoughSomethingIsEntered) {
    Rows rows;
    for (int t = 0; t < 60; ++t)
        rows.read(t, "syrup_pan", 90 + 0.05 * std::sin(t * 12.9898), "degC");
    rows.add(80, "note,,,wet");
    EXPECT_EQ(only(historyOf(rows, 100)).series, Series::syrup_pan);
    EXPECT_EQ(rows.at(100).alarms.size(), 1U);
}

TEST(AlarmHistory, OfNothingIsNothing) {
    const AlarmHistory history = alarmHistory({});
    EXPECT_TRUE(history.spans.empty());
}

} // namespace
} // namespace panside
