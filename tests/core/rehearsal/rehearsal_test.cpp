// The rehearsal must be a boil that a sugarmaker would recognise, and the same one for the same seed. Figures are from
// common practice unless a source is named.
#include "core/boil/shift_log.h"
#include "core/rehearsal/liquid.h"
#include "core/rehearsal/rehearsal.h"
#include "core/rehearsal/rehearse.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>

namespace panside {
namespace {

std::vector<Fact> hours(double hours, std::uint64_t seed) {
    Rehearsal boil{anyBoil(seed), seed};
    return boil.advance(boil.options().begins + Duration{hours * 3600});
}

TEST(Rehearsal, IsTheSameForTheSameSeed) { EXPECT_EQ(hours(1.5, 7), hours(1.5, 7)); }

TEST(Rehearsal, IsAnotherForAnotherSeed) { EXPECT_NE(hours(0.2, 7), hours(0.2, 8)); }

TEST(Rehearsal, GoesTheSameInOneStrideOrInMany) {
    Rehearsal one{anyBoil(3), 3}, many{anyBoil(3), 3};
    const auto begins = one.options().begins;
    one.advance(begins + Duration{5000});
    for (int at = 0; at <= 5000; at += 7)
        many.advance(begins + Duration{static_cast<double>(at)});
    many.advance(begins + Duration{5000});
    EXPECT_EQ(one.truth().reading, many.truth().reading);
    EXPECT_EQ(one.truth().tank, many.truth().tank);
}

TEST(Rehearsal, GivesItsFactsInTheOrderOfTheirTimes) {
    const auto facts = hours(2, 5);
    EXPECT_TRUE(std::is_sorted(facts.begin(), facts.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; }));
}

// Saturation table of IAPWS-IF97 (R7-97(2012)), region 4: 70, 90, 101.325 kPa.
TEST(RehearsalLiquid, BoilsWaterByTheSteamTables) {
    EXPECT_NEAR(rehearsal::waterBoils(70e3), 89.932, 0.003);
    EXPECT_NEAR(rehearsal::waterBoils(90e3), 96.687, 0.003);
    EXPECT_NEAR(rehearsal::waterBoils(101.325e3), 99.974, 0.003);
}

// Sucrose boiling rise at 101.325 kPa after Starzak and Peacock, Zuckerindustrie 122 (1997).
TEST(RehearsalLiquid, LetsSugarRaiseTheBoilAsTheTablesSay) {
    const struct {
        double brix, rise;
    } published[] = {{20, 0.393}, {40, 1.146},   {50, 1.82},    {60, 2.938},
                     {66, 3.999}, {66.9, 4.198}, {68.9, 4.688}, {70, 4.99}};
    for (const auto& [brix, rise] : published)
        EXPECT_NEAR(rehearsal::risesBy(brix / 100, 101325), rise, 0.01) << brix;
    EXPECT_NEAR(rehearsal::risesBy(0.669, 80e3), 4.055, 0.01);
}

// Hydrometer for 60 degF in hot syrup: float balance worked with the sucrose density tables of ICUMSA SPS-4 (1998).
TEST(RehearsalLiquid, FloatsAHydrometerAsTheDensityTablesSay) {
    EXPECT_NEAR(rehearsal::hydrometerReads(66.0, 100.0), 58.00, 0.06);
    EXPECT_NEAR(rehearsal::hydrometerReads(66.0, 85.0), 59.62, 0.06);
    EXPECT_NEAR(rehearsal::hydrometerReads(66.0, 37.78), 64.21, 0.06);
    EXPECT_NEAR(rehearsal::hydrometerReads(66.9, 99.44), 59.00, 0.06);
}

// Common practice: boiling within half an hour of lighting, a first draw within four hours, draws 2 min to 1 h apart,
// flue gas between 150 and 520 degC, 40 to 65 percent of the wood's heat in the sap.
TEST(Rehearsal, BoilsAsASugarmakerKnowsIt) {
    int boils = 0;
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        auto options = anyBoil(seed);
        options.spacing = Duration{60};
        Rehearsal boil{options, seed};
        boil.advance(options.begins + Duration{40 * 60});
        EXPECT_TRUE(boil.truth().boiling) << seed;
        boil.advance(options.begins + Duration{5 * 3600});
        const auto closed = std::count_if(boil.deeds().begin(), boil.deeds().end(), [](const RehearsalDeed& deed) {
            return deed.kind == RehearsalDeed::Kind::closed;
        });
        EXPECT_GE(closed, 1) << seed;
        EXPECT_LE(closed, 70) << seed;
        EXPECT_FALSE(boil.truth().dry) << seed;
        const double efficiency = boil.truth().heatTaken / boil.truth().heatOfLoads;
        EXPECT_GT(efficiency, 0.35) << seed;
        EXPECT_LT(efficiency, 0.68) << seed;
        const double rate = boil.truth().boiledOff.litre() / 5 / options.rig.rate.litrePerHour();
        EXPECT_GT(rate, 0.6) << seed;
        EXPECT_LT(rate, 1.1) << seed;
        ++boils;
    }
    EXPECT_EQ(boils, 12);
}

// What went in as sap is in the pans, the pails or the tank; no sugar is made or lost.
TEST(Rehearsal, KeepsItsSugar) {
    auto options = anyBoil(4);
    options.spacing = Duration{60};
    options.probe.splashesPerHour = 0;
    Rehearsal boil{options, 4};
    const double before = boil.truth().sugarInPans.kilogram();
    boil.advance(options.begins + Duration{4 * 3600});
    const auto& truth = boil.truth();
    const double fed = (options.sap.atStart - truth.tank).litre() * 1.006 * options.sap.sugar.massFraction();
    EXPECT_NEAR(truth.sugarDrawn.kilogram() + truth.sugarInPans.kilogram() - before, fed, 0.02 * fed + 0.05);
}

TEST(Rehearsal, RunsThePanDryWhenTheFeedStopsAndNobodyComes) {
    auto options = anyBoil(6);
    options.spacing = Duration{60};
    options.feedFault = FeedFault::stops;
    options.feedFaultAfter = Duration{7200};
    options.crewSavesPan = false;
    Rehearsal boil{options, 6};
    double dryAfter = -1;
    for (double at = 0; at < 5 * 3600 && dryAfter < 0; at += 10) {
        boil.advance(options.begins + Duration{at});
        if (boil.truth().dry)
            dryAfter = at - 7200;
    }
    EXPECT_GT(dryAfter, 300);
    EXPECT_LT(dryAfter, 5400);
}

TEST(RehearsalUnderWay, IsMinutesFromItsNextDraw) {
    const Instant now = Instant{std::chrono::seconds{1772300000}};
    for (std::uint64_t seed = 1; seed <= 4; ++seed) {
        auto underWay = rehearsalUnderWay(anyBoil(seed), seed, now);
        EXPECT_EQ(underWay.rehearsal.now(), now);
        EXPECT_GT(underWay.past.size(), 1000U);
        EXPECT_LE(underWay.past.back().at, now);
        const auto deeds = underWay.rehearsal.deeds().size();
        underWay.rehearsal.advance(now + Duration{900});
        EXPECT_GT(underWay.rehearsal.deeds().size(), deeds) << seed;
    }
}

TEST(Rehearse, WritesALogWithoutAFault) {
    const auto log = readLog(rehearsedLog(Duration{3600}, 3, Duration{5}));
    EXPECT_TRUE(log.faults.empty());
    EXPECT_TRUE(log.warnings.empty());
    ASSERT_GT(log.facts.size(), 3000U);
    EXPECT_TRUE(std::holds_alternative<ShiftEnd>(log.facts.back().what));
}

TEST(Rehearse, MadeTheSampleDataAsItsReadmeSays) {
    std::ifstream file{PANSIDE_SOURCE "/sample-data/first-run.csv", std::ios::binary};
    const std::string kept{std::istreambuf_iterator<char>{file}, {}};
    ASSERT_FALSE(kept.empty());
    EXPECT_TRUE(kept == rehearsedLog(Duration{6 * 3600}, 1, Duration{30}));
}

} // namespace
} // namespace panside
