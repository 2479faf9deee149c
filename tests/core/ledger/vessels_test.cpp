#include "house.h"

#include "core/physics/sugar_density.h"

namespace panside {
namespace {

using namespace testing_house;

double kilograms(double litres, double brix) {
    return litres * 1e-3 * sugarDensity(Brix::degrees(brix), Temperature::celsius(20))->si() * brix / 100;
}
const std::string tanks =
    day(1, "08:00", "vessel,1000,L,name=tank;kind=hold") + day(1, "08:00", "vessel,500,L,name=feed;kind=feed") +
    day(1, "08:01", "vessel,40,gal,name=Drum 7;kind=drum") + day(1, "08:01", "vessel,40,gal,name=drum 8;kind=drum");

// ICUMSA SPS-4: a litre of 2 brix holds 20.12 g of sugar at 20 degC, so 300 L of 2 and 100 L of 3 make 400 L of 2.25.
TEST(LedgerVessels, ABlendKeepsMassAndSugar) {
    const FoldedHouse house{tanks + day(1, "09:00", "gathered,300,L,to=tank;from=north;brix=2") +
                            day(1, "10:00", "gathered,100,L,to=Tank;from=south;brix=3")};
    EXPECT_NEAR(house.sugar("tank"), kilograms(300, 2) + kilograms(100, 3), 1e-9);
    EXPECT_NEAR(house.litres("tank"), 400, 0.05);
    EXPECT_NEAR(house.vessel("tank").content.brix().degrees(), 2.251, 0.002);
    const Trace trace = house.trace("tank");
    EXPECT_EQ(trace.kind, TraceKind::tank);
    EXPECT_NEAR(*entryOf(trace.behind, TraceKind::gathered, "south")->share, kilograms(100, 3) / house.sugar("tank"),
                1e-9);
    double sum = 0;
    for (const TraceEntry& entry : trace.behind)
        sum += *entry.share;
    EXPECT_NEAR(sum, 1, 1e-9);
}

TEST(LedgerVessels, AllOfItMovesAndTheThreadGoesAlong) {
    const FoldedHouse house{tanks + day(1, "09:00", "gathered,300,L,to=tank;from=north;brix=2") +
                            day(1, "11:00", "moved,,,from=tank;to=feed") +
                            day(1, "12:00", "gathered,50,L,to=tank;from=south;brix=2")};
    EXPECT_NEAR(house.litres("feed"), 300, 1e-6);
    EXPECT_NEAR(house.litres("tank"), 50, 1e-6);
    EXPECT_EQ(entryOf(house.trace("tank").behind, TraceKind::gathered, "north"), nullptr);
    EXPECT_NEAR(*entryOf(house.trace("feed").behind, TraceKind::tank, "tank")->share, 1, 1e-12);
}

TEST(LedgerVessels, BelowEmptyAndOverTheRimAreMarked) {
    const FoldedHouse house{tanks + day(1, "09:00", "gathered,100,L,to=tank;brix=2") +
                            day(1, "10:00", "moved,110,L,from=tank;to=feed") +
                            day(1, "11:00", "gathered,600,L,to=feed;brix=2")};
    EXPECT_EQ(house.marked(MarkKind::belowEmpty), 1);
    EXPECT_EQ(house.marked(MarkKind::overRim), 1);
    EXPECT_NEAR(house.litres("feed"), 710, 0.1);
    EXPECT_NEAR(house.ledger->balance().doesNotClose, kilograms(10, 2), 1e-6);
}

// Three times as much as a drum holds was sold out of it: that is one thing that does not fit, not two.
TEST(LedgerVessels, WhatMustHaveBeenInItIsNotOverTheRimToo) {
    const FoldedHouse house{tanks + day(1, "09:00", "bought,100,L,what=syrup;vessel=drum 7;brix=67") +
                            day(1, "10:00", "sold,450,L,what=syrup;vessel=drum 7;to=x")};
    EXPECT_EQ(house.marked(MarkKind::belowEmpty), 1);
    EXPECT_EQ(house.marked(MarkKind::overRim), 0);
}

TEST(LedgerVessels, AShapeThatNobodyCanReadIsMarked) {
    const FoldedHouse house{day(1, "08:00", "vessel,500,L,name=a;kind=hold;shape=round 2")};
    EXPECT_EQ(house.marked(MarkKind::shapeUnread), 1);
}

TEST(LedgerVessels, ADipSetsTheVolumeAndStandsInTheBalance) {
    const FoldedHouse less{tanks + day(1, "09:00", "gathered,100,L,to=tank;brix=2") +
                           day(1, "10:00", "dipped,80,L,in=tank")};
    EXPECT_NEAR(less.litres("tank"), 80, 1e-6);
    EXPECT_NEAR(less.ledger->balance().doesNotClose, -kilograms(20, 2), 1e-6);
    const FoldedHouse more{tanks + day(1, "09:00", "gathered,60,L,to=tank;from=a;brix=2") +
                           day(1, "09:01", "gathered,40,L,to=tank;from=b;brix=2") +
                           day(1, "10:00", "dipped,150,L,in=tank")};
    EXPECT_NEAR(more.litres("tank"), 150, 1e-6);
    EXPECT_NEAR(*entryOf(more.trace("tank").behind, TraceKind::gathered, "b")->share, 0.4, 1e-9);
    const FoldedHouse empty{tanks + day(1, "09:00", "gathered,60,L,to=tank;brix=2") +
                            day(1, "10:00", "dipped,0,L,in=tank")};
    EXPECT_EQ(empty.litres("tank"), 0);
}

// Trade practice: a cylinder of a metre across holds 785.4 L a metre deep, by geometry.
TEST(LedgerVessels, ADepthIsAVolumeByTheShape) {
    const FoldedHouse house{day(1, "08:00", "vessel,,,name=round;kind=hold;shape=upright 1 1") +
                            day(1, "09:00", "gathered,500,L,to=round;brix=2") +
                            day(1, "10:00", "dipped,500,mm,in=round")};
    EXPECT_NEAR(house.litres("round"), 392.7, 0.1);
}

TEST(LedgerVessels, ConcentratingKeepsTheSugarAndTakesWaterOut) {
    const FoldedHouse house{tanks + day(1, "08:02", "vessel,300,L,name=conc;kind=concentrate") +
                            day(1, "09:00", "gathered,800,L,to=tank;brix=2") +
                            day(1, "10:00", "concentrated,100,L,from=tank;to=conc;brix=8")};
    EXPECT_NEAR(house.sugar("conc"), kilograms(100, 8), 1e-9);
    EXPECT_NEAR(house.sugar("tank") + house.sugar("conc"), kilograms(800, 2), 1e-6);
    EXPECT_NEAR(house.litres("tank"), 800 - 100 * 8 * 1030.0 / (2 * 1006.0), 2);
}

TEST(LedgerVessels, TheSameRowTwiceCountsOnce) {
    const FoldedHouse house{tanks + day(1, "09:00", "gathered,100,L,to=tank;brix=2") +
                            day(1, "09:00", "gathered,100,L,to=tank;brix=2")};
    EXPECT_NEAR(house.litres("tank"), 100, 1e-6);
    // Written down again later, by another's spelling; and what another hand emptied into it at that minute.
    const FoldedHouse again{tanks + day(1, "09:00", "gathered,100,L,to=tank;brix=2") +
                            day(1, "09:00", "gathered,100,L,brix=2.0;to=Tank;entered=2027-03-02T09:00:00Z") +
                            day(1, "09:00", "gathered,100,L,to=tank;brix=2;by=Ann")};
    EXPECT_NEAR(again.litres("tank"), 200, 1e-6);
}

TEST(LedgerVessels, WarmHoursAndTheOldestPartGoWithTheSap) {
    const FoldedHouse house{tanks + day(1, "09:00", "gathered,100,L,to=tank;brix=2;temp=12degC") +
                            day(1, "15:00", "moved,,,from=tank;to=feed")};
    EXPECT_NEAR(house.vessel("feed").over50F.count(), 6 * 3600, 1);
    EXPECT_EQ(textOf(*house.vessel("feed").oldest), "2027-03-01T09:00:00Z");
}

TEST(LedgerVessels, RopySapMarksAllThatFollows) {
    const FoldedHouse house{tanks + day(1, "09:00", "gathered,100,L,to=tank;brix=2;clear=ropy") +
                            day(1, "10:00", "moved,,,from=tank;to=feed")};
    EXPECT_TRUE(house.vessel("feed").taint.ropy);
    EXPECT_EQ(house.marked(MarkKind::ropy), 2);
}

TEST(LedgerVessels, MovesOfSapThatNobodyWroteComeOutOfAHole) {
    const FoldedHouse house{tanks + day(1, "10:00", "moved,100,L,from=tank;to=feed")};
    const Trace trace = house.trace("feed");
    ASSERT_EQ(trace.behind.size(), 2u);
    EXPECT_NEAR(*entryOf(trace.behind, TraceKind::hole, "tank")->share, 1, 1e-12);
}

} // namespace
} // namespace panside
