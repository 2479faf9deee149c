#include "ui/filter/filter_view.h"

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
