// What counts as a load of wood, by the rule of loads.h.
#include "core/boil/loads.h"

#include "tests/core/boil/logs.h"

namespace panside {
namespace {

using test::noon;
using test::Rows;

// A stack that is opened at each of `doors`: it falls by a quarter for a minute and burns higher after.
Rows boilWith(const std::vector<int>& doors, int until) {
    Rows rows;
    rows.add(0, "set,10,kg,key=load_mass").add(0, "lit,,,");
    for (int t = 0; t <= until; t += 5) {
        double stack = 300;
        for (const int door : doors)
            if (t >= door) {
                const double since = t - door;
                stack = since < 60 ? 215 : 300 + 90 * std::min(1.0, (since - 60) / 120) * std::exp(-since / 1200);
            }
        rows.read(t, "stack", stack, "degC");
    }
    return rows;
}

LoadsOfShift loadsOf(const Rows& rows) {
    LoadsOfShift loads;
    auto facts = rows.facts;
    std::stable_sort(facts.begin(), facts.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    for (const Fact& fact : facts)
        loads.add(fact);
    return loads;
}

TEST(Loads, OnePressTwiceIsOneAndTwoScalesAreTwo) {
    Rows rows;
    rows.add(0, "set,10,kg,key=load_mass").add(60, "fired,,,by=Ada").add(85, "fired,,,by=Ada");
    EXPECT_EQ(loadsOf(rows).all().size(), 1U);
    rows.add(500, "fired,8,kg,by=Ada").add(520, "fired,9,kg,by=Ada");
    rows.add(900, "fired,8,kg,by=Ada").add(920, "fired,9,kg,by=Bo");
    ASSERT_EQ(loadsOf(rows).all().size(), 5U);
    EXPECT_NEAR(rows.at(1000).wood->kilogram(), 10 + 8 + 9 + 8 + 9, 1e-9);
}

TEST(Loads, ASecondTellingBringsTheMass) {
    Rows rows;
    rows.add(60, "fired,,,by=Ada");
    EXPECT_FALSE(rows.at(70).wood);
    rows.add(80, "fired,12,kg,by=Ada");
    EXPECT_NEAR(rows.at(90).wood->kilogram(), 12, 1e-9);
    EXPECT_EQ(rows.at(90).loads, 1);
}

// It was taken off the count of loads without a mass as well: less than none were left, and the wood was gone.
TEST(Loads, AnInferredLoadThatWasWeighedIsOneWhenItIsPressedToo) {
    Rows rows;
    rows.add(60, "fired,12,kg,inferred=yes").add(120, "fired,13,kg,by=Ada").add(600, "fired,11,kg,by=Ada");
    const auto picture = rows.at(700);
    EXPECT_EQ(picture.loads, 2);
    ASSERT_TRUE(picture.wood);
    EXPECT_NEAR(picture.wood->kilogram(), 24, 1e-9);
    EXPECT_FALSE(picture.lastFiredInferred);
}

// The mass that was set holds for the loads after it, and for those before the first that was ever set.
TEST(Loads, AreOfTheMassThatWasSetAtTheirTime) {
    Rows rows;
    rows.add(60, "fired,,,").add(500, "set,10,kg,key=load_mass").add(600, "fired,,,");
    rows.add(900, "set,15,kg,key=load_mass").add(1000, "fired,,,");
    EXPECT_NEAR(rows.at(1100).wood->kilogram(), 35, 1e-9);
    double sum = 0;
    for (const Load& load : loadsOf(rows).all())
        sum += load.mass.value_or(Mass{}).kilogram();
    EXPECT_NEAR(sum, 35, 1e-9);
}

TEST(Loads, WhatTheStackShowedIsProposedOnceAndKeptChangesNoPicture) {
    const Rows log = boilWith({900, 1500, 2100}, 2700);
    Boil live, alone;
    FactId id = 0;
    int proposed = 0;
    for (const Fact& fact : log.facts) {
        live.add(id, fact);
        alone.add(id++, fact);
        while (const auto noticed = live.fold().noticed()) {
            ++proposed;
            ASSERT_LT(proposed, 10) << "the same load again and again";
            EXPECT_TRUE(std::get<Fired>(noticed->what).inferred);
            EXPECT_LT(noticed->at, fact.at);
            EXPECT_EQ(noticed->entered, fact.at);
            live.add(100'000 + proposed, *noticed);
        }
        std::string kept, without;
        appendJson(kept, live.fold().pictureAt(fact.at));
        appendJson(without, alone.fold().pictureAt(fact.at));
        ASSERT_EQ(kept, without);
    }
    EXPECT_EQ(proposed, 3);
    EXPECT_EQ(live.fold().pictureAt(noon + Duration{2700}), alone.fold().pictureAt(noon + Duration{2700}));
    // Folded again from the rows alone, at every moment.
    for (int t = 600; t <= 2700; t += 60)
        EXPECT_EQ(live.fold().pictureAt(noon + Duration{1.0 * t}), alone.fold().pictureAt(noon + Duration{1.0 * t}))
            << t;
}

TEST(Loads, ARecordOfTheStackCountsWhereTheStackIsGone) {
    Rows rows;
    rows.add(0, "lit,,,").add(300, "fired,,,inferred=yes;entered=2025-03-14T12:09:00Z").add(1200, "note,,,later");
    EXPECT_EQ(rows.at(1200).loads, 1);
    EXPECT_EQ(rows.at(1200).lastFired, noon + Duration{300});
    EXPECT_EQ(loadsOf(rows.add(1300, "shift_end,,,")).all().size(), 1U);
}

TEST(Loads, WhoeverSaysThereWasNoneIsBelieved) {
    Rows log = boilWith({900, 1500}, 2100);
    Boil boil;
    FactId id = 0;
    for (const Fact& fact : log.facts)
        boil.add(id++, fact);
    const auto noticed = boil.fold().noticed();
    ASSERT_TRUE(noticed);
    EXPECT_EQ(boil.fold().pictureAt(noon + Duration{2100}).loads, 2);
    const Fact denial = denialOf(*noticed, noon + Duration{1300});
    boil.add(id, denial);
    EXPECT_EQ(boil.fold().pictureAt(noon + Duration{2100}).loads, 1);
    log.facts.push_back(denial);
    EXPECT_EQ(loadsOf(log).all().size(), 1U);
    // It comes back from a log as it was.
    const auto read = factOfLine(textOf(denial.at) + ",fired,0,kg,inferred=yes;entered=2025-03-14T12:21:40Z");
    ASSERT_TRUE(std::holds_alternative<Fact>(read));
    EXPECT_TRUE(deniesLoad(std::get<Fired>(std::get<Fact>(read).what)));
}

} // namespace
} // namespace panside
