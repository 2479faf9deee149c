#include "core/boil/reconcile.h"
#include "tests/core/boil/logs.h"

#include <cmath>

namespace panside {
namespace {

using test::noon;
using test::Rows;

// A calm boil of 200 L/h from the tank, a load of 20 kg each 8 min, a pan that boils.
Rows boil(double litrePerHour, int until, double kilogram = 20) {
    Rows rows;
    rows.add(0, "set,2,m2,key=flue_pan_area")
        .add(0, "set,40,mm,key=running_depth")
        .add(0, "sap_in,1500,L,brix=2.0")
        .add(0, "lit,,,");
    for (int t = 0; t <= until; t += 10) {
        rows.read(t, "syrup_pan", 102 + 0.01 * (t % 7), "degC");
        rows.read(t, "tank_level", 1500 - litrePerHour * t / 3600, "L");
        if (t % 60 == 0)
            rows.read(t, "pressure", 101.3, "kPa");
        if (t % 480 == 0)
            rows.add(t, fmt::format("fired,{:.1f},kg,", kilogram));
    }
    return rows;
}

TEST(Balance, WhatLeavesTheTankIsBoiledOffButForTheSyrup) {
    const auto picture = boil(200, 5400).at(5400);
    ASSERT_TRUE(picture.evaporation);
    // A litre of 66.9 brix takes some 43 litres of 2 brix sap: 2 percent of what leaves the tank is syrup.
    EXPECT_NEAR(picture.evaporation->litrePerHour(), 196, 6);
    ASSERT_TRUE(picture.fuel.evaporationSd);
    EXPECT_GT(picture.fuel.evaporationSd->litrePerHour(), 0);
}

// What the strip of the fire draws is what the board showed, whether it was open then or is opened afterwards, and
// follows a fact entered late or taken back.
TEST(Balance, EvaporationIsTracedFromTheFactsAlone) {
    const Rows rows = boil(200, 5400);
    const Boil opened = rows.boil();
    const auto& steam = opened.steam();
    ASSERT_GT(steam.size(), 40U);
    for (const auto& point : {steam.front(), steam[20], steam.back()})
        EXPECT_NEAR(point.rate / opened.pictureAt(point.at).evaporation.value().si(), 1, 1e-3);
    EXPECT_LE(secondsBetween(steam.back().at, rows.facts.back().at), 60);

    const auto ratesOf = [](const Boil& boil) {
        std::vector<float> rates;
        for (const auto& point : boil.steam())
            rates.push_back(point.rate);
        return rates;
    };
    Boil live = rows.boil();
    const auto before = ratesOf(live);
    live.add(1000000, Rows{}.read(4000, "tank_level", 900, "L", "probe=hand").facts.front());
    EXPECT_NE(ratesOf(live.fold()), before);
    live.withdraw(1000000);
    EXPECT_EQ(ratesOf(live.fold()), before);
}

TEST(Balance, TheHeatIsAccountedForAndNotForcedToClose) {
    const auto picture = boil(60, 7200).at(7200);
    ASSERT_TRUE(picture.fuel.hour);
    const auto& hour = *picture.fuel.hour;
    EXPECT_NEAR(hour.wood.kilogram() / seconds(hour.over) * 3600, 150, 8);   // 20 kg each 8 min
    EXPECT_NEAR((hour.boiling + hour.rest()).joule(), hour.fuel.joule(), 1); // no stack probe: no loss is made up
    EXPECT_FALSE(hour.stackLoss);
    EXPECT_NEAR(hour.boiling / hour.fuel, *picture.efficiency, 1e-9);
}

// What the others weighed says nothing of it: an efficiency by less wood than was burnt would look too good.
TEST(Balance, OneLoadThatNobodyWeighedLeavesTheWoodOfItsHourUnknown) {
    ASSERT_TRUE(boil(60, 7200).at(7200).efficiency);
    Rows rows = boil(60, 7200);
    for (Fact& fact : rows.facts)
        if (auto* fired = std::get_if<Fired>(&fact.what); fired && fact.at == noon + std::chrono::seconds{5760})
            fired->load.reset();
    const auto picture = rows.at(7200);
    EXPECT_FALSE(picture.efficiency);
    EXPECT_EQ(std::count(picture.why.begin(), picture.why.end(), Why{Shown::efficiency, Reason::noLoadMass}), 1);
}

// 20 kg of wood of 20 percent moisture give about 280 MJ: the 7.5 loads of an hour boil no more than 500 L at 65
// percent, so 1200 L/h is a leak.
TEST(Balance, ATankThatFallsFasterThanWoodCanBoilIsALeak) {
    const auto picture = boil(1200, 4200).at(4200);
    EXPECT_EQ(picture.fuel.doubt, Disagreement::tankSaysMore);
}

// What the pans take up has left the tank too: 24 mm an hour over 2 and 1 m2 are 72 litres an hour that do not boil
// off.
TEST(Balance, WhatThePansTakeUpIsNotBoiledOff) {
    Rows rows = boil(200, 5400);
    rows.add(0, "set,1,m2,key=syrup_pan_area");
    for (int t = 0; t <= 5400; t += 10) {
        rows.read(t, "pan_level", 36 + 24 * t / 3600.0 + 0.8 * std::sin(t / 40.0), "mm");
        rows.read(t, "flue_level", 40 + 24 * t / 3600.0 + 0.8 * std::cos(t / 50.0), "mm");
    }
    std::ranges::stable_sort(rows.facts, {}, &Fact::at);
    const auto tankAlone = [](const Picture& picture) {
        return std::ranges::find(picture.fuel.ways, EvaporationWay::tankAlone, &WayPicture::way)->sd.litrePerHour();
    };
    const Picture both = rows.at(5400);
    EXPECT_NEAR(both.evaporation.value().litrePerHour(), 196 - 72, 8);
    Rows fewer = rows;
    std::erase_if(fewer.facts, [](const Fact& fact) {
        const auto* reading = std::get_if<Reading>(&fact.what);
        return reading && reading->series == Series::flue_level;
    });
    // A pan that nobody reads goes with the other, more or less.
    const Picture one = fewer.at(5400);
    EXPECT_NEAR(one.evaporation.value().litrePerHour(), 196 - 72, 30);
    EXPECT_GT(tankAlone(one), 2 * tankAlone(both));
}

// A pan of 1 m2 that is drained and filled again within five minutes: no line through that says what boils off. Without
// the row the test itself would show it: half an hour's line through such a hole is some 70 mm an hour steep.
TEST(Balance, APanThatIsSwappedOrDrainedIsNoPanThatFills) {
    const auto furthestOff = [](const char* row) {
        Rows rows = boil(200, 7200);
        rows.add(0, "set,1,m2,key=syrup_pan_area");
        for (int t = 0; t <= 7200; t += 10) {
            const double drained = std::clamp((t - 5400) / 120.0, 0.0, 1.0),
                         filled = std::clamp((t - 5580) / 120.0, 0.0, 1.0);
            rows.read(t, "pan_level", 40 - 35 * drained + 35 * filled + 0.8 * std::sin(t / 40.0), "mm");
        }
        if (row)
            rows.add(5400, row);
        std::ranges::stable_sort(rows.facts, {}, &Fact::at);
        const Boil boiled = rows.boil();
        double most = 0;
        for (int t = 5460; t <= 7200; t += 60) {
            const auto steam = boiled.pictureAt(noon + std::chrono::seconds{t}).evaporation;
            most = std::max(most, steam ? std::abs(steam->litrePerHour() - 196) : 0.0);
        }
        return most;
    };
    EXPECT_LT(furthestOff("pan_swapped,,,"), 12);
    EXPECT_LT(furthestOff("pans_emptied,35,L,"), 12);
    EXPECT_GT(furthestOff(nullptr), 40);
}

// By the feed meter alone: what filled the pans before they boiled was no part of what it has measured since.
TEST(Balance, PansThatWereFilledBeforeTheyBoiledTakeNothingOffTheMeter) {
    Rows rows;
    rows.add(0, "set,2,m2,key=flue_pan_area").add(0, "set,1,m2,key=syrup_pan_area").add(0, "lit,,,");
    for (int t = 0; t <= 2880; t += 10) {
        rows.read(t, "syrup_pan", t < 1800 ? 20 + t * 0.044 : 102, "degC");
        rows.read(t, "feed_flow", 200, "L/h");
        const double level = 10 + 30 * std::clamp((t - 1200) / 600.0, 0.0, 1.0) + 0.8 * std::sin(t / 40.0);
        rows.read(t, "pan_level", level, "mm").read(t, "flue_level", level, "mm");
        if (t % 60 == 0)
            rows.read(t, "pressure", 101.3, "kPa");
    }
    EXPECT_NEAR(rows.at(2880).evaporation.value().litrePerHour(), 196, 12);
}

// A load set as three pounds: the pans would have got more heat than the wood holds.
TEST(Balance, MoreHeatThanTheWoodHoldsIsNoEfficiency) {
    ASSERT_GT(boil(60, 5400, 4).at(5400).efficiency.value(), 0.3);
    const Picture picture = boil(200, 5400, 4).at(5400);
    EXPECT_FALSE(picture.efficiency);
    EXPECT_TRUE(std::ranges::count(picture.why, Why{Shown::efficiency, Reason::outsidePhysics}));
}

TEST(Balance, ATankThatHardlyFallsBeforeItBoilsDoesNotLastForDays) {
    Rows rows = boil(4, 5400);
    for (Fact& fact : rows.facts)
        if (auto* reading = std::get_if<Reading>(&fact.what); reading && reading->series == Series::syrup_pan)
            reading->si = Temperature::celsius(60).kelvin();
    const Picture picture = rows.at(5400);
    EXPECT_FALSE(picture.sapLeft);
    for (const Shown figure : {Shown::sapLeftS, Shown::lastLoadS})
        EXPECT_TRUE(std::ranges::count(picture.why, Why{figure, Reason::notBoiling}));
}

TEST(Balance, ATankThatRisesUnaskedIsSaid) {
    const auto picture = boil(-60, 5400).at(5400);
    EXPECT_EQ(picture.fuel.doubt, Disagreement::tankRises);
    // What would rest on it is not shown, and says why.
    for (const auto figure : {Shown::evaporationLph, Shown::sapLeftS, Shown::efficiency})
        EXPECT_EQ(std::count(picture.why.begin(), picture.why.end(), Why{figure, Reason::tankRises}), 1)
            << nameOf(figure);
    EXPECT_FALSE(picture.evaporation || picture.sapLeft || picture.efficiency);
}

TEST(Balance, ATankReadForTooShortATimeIsNotATankThatIsNotRead) {
    const auto early = boil(200, 120).at(120);
    EXPECT_EQ(std::count(early.why.begin(), early.why.end(), Why{Shown::efficiency, Reason::tooShort}), 1);
}

// Dips by hand each 20 min: sap that came in unentered is said, sap that was entered is not.
TEST(Balance, AHigherDipWithNoSapEnteredIsSaid) {
    const auto dips = [](bool entered) {
        Rows rows = boil(200, 0);
        for (int t = 1200; t <= 7200; t += 1200) {
            if (entered && t == 4800)
                rows.add(t - 60, "sap_in,300,L,brix=2.0");
            rows.read(t, "tank_level", 1500 - 200.0 * t / 3600 + (t >= 4800 ? 300 : 0), "L", "probe=hand");
        }
        return rows.at(7201).fuel.doubt;
    };
    EXPECT_EQ(dips(false), Disagreement::tankRises);
    EXPECT_EQ(dips(true), Disagreement::none);
}

// What the sap brought: water boiled off and syrup drawn came as sap of 2 brix. 3 h at 200 L/h are 600 L, with 5 L/h
// of syrup of 66.9 brix (1.33 kg/L, ICUMSA SPS-4): 12 kg in, 13.3 kg out would be too much; at 4 L/h 10.7 kg are out.
TEST(Balance, SugarComesInAndGoesOutAndStaysInThePans) {
    Rows rows = boil(200, 10800);
    for (int t = 3600; t <= 10800; t += 1800)
        rows.add(t, "draw_open,,,").add(t + 60, "draw_close,2,L,");
    const auto sugar = rows.at(10900).fuel.sugar;
    ASSERT_TRUE(sugar);
    EXPECT_NEAR(sugar->in.kilogram(), 600 * 0.02, 0.6);
    EXPECT_NEAR(sugar->out.kilogram(), 10 * 1.33 * 0.669, 0.1);
    EXPECT_NEAR(sugar->inPans().kilogram(), sugar->in.kilogram() - sugar->out.kilogram(), 1e-9);
}

// A sap hydrometer made for 38 degF that reads 2.3 at 60 degF means 2.5 (extension practice).
TEST(Balance, TheSapHydrometersScaleIsTakenIntoSugarAndSyrup) {
    const auto saidOf = [](const char* sap) {
        Rows rows = boil(200, 7200);
        rows.add(0, sap);
        return rows.at(7200).fuel;
    };
    const auto read = saidOf("sap_in,1500,L,brix=2.3;temp=60degF;cal=38degF"), meant = saidOf("sap_in,1500,L,brix=2.5"),
               plain = saidOf("sap_in,1500,L,brix=2.3;temp=60degF");
    ASSERT_TRUE(read.sugar && meant.sugar && plain.sugar && read.syrupExpected && meant.syrupExpected);
    EXPECT_NEAR(read.sugar->in / meant.sugar->in, 1, 0.01);
    EXPECT_NEAR(*read.syrupExpected / *meant.syrupExpected, 1, 0.01);
    EXPECT_LT(plain.sugar->in / meant.sugar->in, 0.96);
}

TEST(Balance, SugarIsNotAccountedForWhereADrawHasNoMeasure) {
    Rows rows = boil(200, 7200);
    rows.add(5000, "draw_open,,,").add(5060, "draw_close,,,");
    EXPECT_FALSE(rows.at(7200).fuel.sugar);
}

// The call comes while a load is still to be made, never after the tank is too low for it.
TEST(Balance, TheLastLoadIsCalledBeforeItIsDue) {
    Rows rows = boil(1200, 4200);
    std::optional<double> called;
    double leftThen = 0;
    for (int t = 2400; t <= 3600 && !called; t += 10) {
        const auto picture = rows.at(t);
        if (test::stands(picture, Alarm::last_load) && picture.lastLoad) {
            called = t;
            leftThen = seconds(picture.lastLoad->p50);
        }
    }
    ASSERT_TRUE(called);
    EXPECT_GT(leftThen, 0);
}

TEST(Balance, TheLastLoadLeavesWhatCoversThePans) {
    const auto picture = boil(200, 5400).at(5400);
    ASSERT_TRUE(picture.keepBack);
    // 2 m2 by 40 mm, and half of 45 min at the rate.
    EXPECT_NEAR(picture.keepBack->litre(), 80 + 196 * 0.375, 3);
    ASSERT_TRUE(picture.lastLoad);
    EXPECT_NEAR(seconds(picture.lastLoad->p50), (1500 - 300 - picture.keepBack->litre()) / 200 * 3600, 120);
    EXPECT_LT(picture.lastLoad->p10, picture.lastLoad->p50);
    EXPECT_LT(picture.lastLoad->p50, *picture.lastLoad->p90);
}

TEST(Balance, MoreSapMovesTheLastLoadAtOnce) {
    Rows rows = boil(200, 5400);
    const auto before = rows.at(5400);
    rows.add(5401, "sap_in,200,L,brix=2.0");
    for (int t = 5410; t <= 5700; t += 10)
        rows.read(t, "tank_level", 1700 - 200.0 * t / 3600, "L");
    const auto after = rows.at(5700);
    ASSERT_TRUE(before.lastLoad && after.lastLoad);
    EXPECT_NEAR(seconds(after.lastLoad->p50) - seconds(before.lastLoad->p50), 3600 - 300, 120);
}

// Two figures of one thing, by hand: the mean weighted by 1/sd^2, (100/25 + 130/100) / (1/25 + 1/100) = 106.
TEST(Reconcile, WeighsEachByItsUncertainty) {
    const auto all =
        reconcile({.sap = Rated{100, 5}, .syrup = {}, .steam = Rated{130, 10}, .syrupShare = 0, .shareSd = 0.3});
    ASSERT_TRUE(all);
    EXPECT_NEAR(all->steam.litrePerHour, 106, 0.1);
    EXPECT_NEAR(all->steam.sd, std::sqrt(1 / (1 / 25.0 + 1 / 100.0)), 0.01);
    EXPECT_NEAR(*all->steamOff, 2.4, 0.02);
}

TEST(Reconcile, WithoutATankTheDrawsSayIt) {
    const auto all = reconcile({.sap = {}, .syrup = Rated{4, 0.2}, .steam = {}, .syrupShare = 0.025, .shareSd = 0.1});
    ASSERT_TRUE(all);
    EXPECT_NEAR(all->steam.litrePerHour, 4 * 39, 0.5);
}

TEST(Reconcile, WithNothingKnownSaysNothing) {
    EXPECT_FALSE(reconcile({.sap = {}, .syrup = {}, .steam = {}, .syrupShare = 0.02, .shareSd = 0.3}));
    EXPECT_FALSE(reconcile({.sap = Rated{100, 0}, .syrup = {}, .steam = {}, .syrupShare = 0.02, .shareSd = 0.3}));
}

} // namespace
} // namespace panside
