#include "ui/filter/filter_picture.h"

#include "tests/ui/ledger/house_of.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

std::vector<Fact> filterRows(bool ended) {
    std::vector<Fact> rows{
        rowIn("2026-03-02T20:00:00Z,press_on,,,from=pail 3;to=pail 4;aid=diatomite 1lb lot 7;temp=190degF"),
        rowIn("2026-03-02T20:10:00Z,press_off,2,gal,result=clear"),
        rowIn("2026-03-02T21:00:00Z,press_on,,,from=pail 3;to=pail 4;temp=170degF")};
    if (ended)
        rows.push_back(rowIn("2026-03-02T21:20:00Z,press_off,1,gal,result=cloudy"));
    return rows;
}

FilterNow nowOf(const HouseLedger& house, int readings) {
    FilterNow now;
    now.run = openRun(house);
    now.flow = usualFlow(house);
    now.limit = Pressure::kilopascal(140);
    const Instant begun = instantIn("2026-03-02T21:00:00Z").value();
    for (int i = 1; i <= readings; ++i)
        now.readings.push_back({begun + std::chrono::minutes{i}, Pressure::kilopascal(20 + 10 * i)});
    now.now = begun + std::chrono::minutes{readings};
    return now;
}

TEST(FilterView, KnowsTheRunThatGoesOnAndTheFlowOfThoseBefore) {
    const HouseLedger going = houseOf(filterRows(false)), over = houseOf(filterRows(true));
    ASSERT_TRUE(openRun(going));
    EXPECT_EQ(openRun(going)->from, QStringLiteral("pail 3"));
    EXPECT_FALSE(openRun(over));
    EXPECT_NEAR(usualFlow(going)->si() * 600, Volume::gallon(2).si(), 1e-9); // two gallons in ten minutes
}

// By hand: the gauge climbs 10 kPa a minute from 20: 140 at the twelfth minute, so seven after the fifth.
TEST(FilterView, SaysARangeThatHoldsWhereTheLineMeetsTheLimit) {
    const HouseLedger house = houseOf(filterRows(false));
    const QString words = filterSentence(nowOf(house, 5), Units::metric);
    EXPECT_TRUE(words.contains(QStringLiteral("The limit in "))) << words.toStdString();
    EXPECT_TRUE(words.contains(QString::fromUtf8("70\u00a0kPa, at most 140"))) << words.toStdString();
}

// Nobody read the gauge for an hour: of what the readings foretold nothing is left to come.
TEST(FilterView, SendsToTheGaugeOnceItsForecastIsOver) {
    const HouseLedger house = houseOf(filterRows(false));
    FilterNow now = nowOf(house, 9);
    now.now += std::chrono::hours{1};
    const QString words = filterSentence(now, Units::metric);
    EXPECT_FALSE(words.contains(QStringLiteral("The limit in "))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("look at the gauge"))) << words.toStdString();
}

TEST(FilterView, SaysNothingOfALimitThatNobodyWrote) {
    const HouseLedger house = houseOf(filterRows(false));
    FilterNow now = nowOf(house, 5);
    now.limit.reset();
    EXPECT_TRUE(filterSentence(now, Units::us).contains(QStringLiteral("there is no usual one")));
}

TEST(FilterView, WarnsOfARunThatIsTooCool) {
    const HouseLedger house = houseOf(filterRows(false));
    EXPECT_TRUE(filterSentence(nowOf(house, 2), Units::us).contains(QStringLiteral("stop or circulate")));
    EXPECT_TRUE(filterSentence(nowOf(house, 2), Units::us).contains(QStringLiteral("third reading")));
}

// A run whose gauge climbed 10 kPa a minute, and one that goes on an hour later.
HouseLedger houseOfTwoRuns(const std::string& papers) {
    const Instant begun = instantIn("2026-03-02T20:00:00Z").value();
    std::vector<Boil::Entry> night{{1, {begun, Lit{}}}};
    for (int i = 1; i <= 9; ++i)
        night.push_back(
            {i + 1,
             {begun + std::chrono::minutes{i}, Reading{Series::filter_pressure, 20e3 + 10e3 * i, Unit::kPa, {}}}});
    HouseLedger::Parts parts;
    parts.shifts.push_back(std::make_shared<const HouseShift>(houseShift(begun, night)));
    return {parts,
            {rowIn("2026-03-02T12:00:00Z,vessel,5,gal,name=pail 3;kind=pail"),
             rowIn("2026-03-02T12:00:00Z,vessel,5,gal,name=pail 4;kind=pail"),
             rowIn("2026-03-02T20:00:00Z,press_on,,,from=pail 3;to=pail 4;aid=Diatomite 1lb lot 7;papers=new"),
             rowIn("2026-03-02T20:10:00Z,press_off,2,gal,result=clear"),
             rowIn("2026-03-02T21:00:00Z,press_on,,,from=pail 3;to=pail 4;aid=diatomite 2lb lot 9;papers=" + papers)}};
}

TEST(FilterView, LearnsFromRunsOfTheSameAidAndPapers) {
    const HouseLedger same = houseOfTwoRuns("new"), other = houseOfTwoRuns("washed");
    const auto runs = runsBefore(same, openRun(same).value());
    ASSERT_EQ(runs.size(), 1U);
    EXPECT_TRUE(runs[0].sameNight);
    EXPECT_EQ(runs[0].readings.size(), 9U);
    EXPECT_NEAR(runs[0].readings[0].through, 60, 1e-9);
    EXPECT_TRUE(runsBefore(other, openRun(other).value()).empty());
    FilterNow now = nowOf(same, 4);
    now.before = runs;
    const QString words = filterSentence(now, Units::us);
    EXPECT_TRUE(words.contains(QStringLiteral("Learned from runs with this aid"))) << words.toStdString();
    // Two gallons in ten minutes are 0.8 in four; 10 kPa a minute are 50 kPa, 7.3 psi, each gallon.
    EXPECT_TRUE(words.contains(QString::fromUtf8("About 0.80\u00a0gal through"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("It climbs 7"))) << words.toStdString();
}

// By hand: two gallons in ten minutes are 0.2 a minute; 30 kPa after the first minute are 4.35 psi, 60 after the fourth
// 8.70; 10 kPa a minute from 20 stand at 140 after twelve minutes, 2.4 gal.
TEST(FilterChart, DrawsTheGaugeAgainstWhatWentThroughUpToTheLimit) {
    const HouseLedger house = houseOfTwoRuns("new");
    FilterNow now = nowOf(house, 4);
    now.before = runsBefore(house, openRun(house).value());
    const FilterChart chart = filterChart(now, Units::us);
    EXPECT_TRUE(chart.byVolume);
    EXPECT_EQ(chart.acrossUnit, QStringLiteral("gal"));
    EXPECT_EQ(chart.upUnit, QStringLiteral("psi"));
    ASSERT_EQ(chart.now.size(), 4U);
    EXPECT_NEAR(chart.now[0].x(), 0.2, 1e-9);
    EXPECT_NEAR(chart.now[0].y(), 4.351, 1e-3);
    EXPECT_NEAR(chart.now[3].y(), 8.702, 1e-3);
    ASSERT_EQ(chart.before.size(), 1U);
    EXPECT_EQ(chart.before[0].size(), 9U);
    EXPECT_NEAR(chart.limit.value(), 20.305, 1e-3);
    ASSERT_TRUE(chart.meetsFrom && chart.meetsTo);
    EXPECT_LE(*chart.meetsFrom, 2.4);
    EXPECT_GE(*chart.meetsTo, 2.4);
}

TEST(FilterChart, CountsMinutesWhereNoRunToldItsVolume) {
    const HouseLedger house = houseOf({rowIn("2026-03-02T21:00:00Z,press_on,,,from=pail 3;to=pail 4")});
    const FilterChart chart = filterChart(nowOf(house, 3), Units::metric);
    EXPECT_FALSE(chart.byVolume);
    ASSERT_EQ(chart.now.size(), 3U);
    EXPECT_NEAR(chart.now[2].x(), 3, 1e-9);
    EXPECT_TRUE(filterChart({}, Units::metric).now.empty());
}

TEST(FilterPicture, ShowsOnceTwoReadingsMakeALine) {
    const HouseLedger house = houseOfTwoRuns("new");
    FilterPicture picture;
    picture.display(filterChart(nowOf(house, 1), Units::us));
    EXPECT_TRUE(picture.isHidden());
    picture.display(filterChart(nowOf(house, 4), Units::us));
    EXPECT_FALSE(picture.isHidden());
    EXPECT_TRUE(picture.accessibleDescription().startsWith(QStringLiteral("9 psi at 0.8 gal")))
        << picture.accessibleDescription().toStdString();
}

TEST(FilterView, AlwaysCautionsOfThePressure) {
    const auto view = filterView(nullptr, {}, Units::us);
    EXPECT_TRUE(view.notes.contains(QStringLiteral("under pressure hurts")));
    const HouseLedger house = houseOf(filterRows(true));
    EXPECT_EQ(filterView(&house, {}, Units::us).rows.size(), 2U);
}

TEST(FilterView, TakesTheGaugeSinceTheRunBeganAndThinsAProbe) {
    const Instant begun = instantIn("2026-03-02T21:00:00Z").value();
    std::vector<Boil::Entry> facts;
    for (int i = -60; i < 120; ++i)
        facts.push_back(
            {i + 100, {begun + std::chrono::seconds{i}, Reading{Series::filter_pressure, 5e4, Unit::kPa, {}}}});
    EXPECT_EQ(gaugeSince(begun, facts, {}).size(), 6U);
    const GaugeReading typed[] = {{begun + std::chrono::seconds{5}, Pressure::kilopascal(51)}};
    EXPECT_EQ(gaugeSince(begun, {}, typed).size(), 1U);
}

} // namespace
} // namespace panside
