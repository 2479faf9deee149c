#include "core/boil/boil.h"

#include "core/boil/past_shift.h"
#include "tests/core/boil/logs.h"

#include <random>

namespace panside {
namespace {

using test::noon;
using test::Rows;

// A quarter of an hour of a calm boil near syrup.
Rows calm() {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t < 900; ++t) {
        rows.read(t, "syrup_pan", 103 + 0.001 * t + 0.05 * ((t * 37) % 11 - 5) / 5.0, "degC");
        if (t % 60 == 0)
            rows.read(t, "pressure", 100.0, "kPa");
        if (t % 240 == 200)
            rows.add(t, "fired,,,");
    }
    return rows;
}

TEST(Boil, TakesLateFactsAsIfTheyHadComeInTime) {
    Rows rows = calm();
    std::vector<std::size_t> order(rows.facts.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::mt19937 random{7};
    std::shuffle(order.begin(), order.end(), random);
    Boil shuffled;
    for (std::size_t i = 0; i < order.size(); ++i) {
        shuffled.add(static_cast<FactId>(order[i]), rows.facts[order[i]]);
        if (i % 100 == 0)
            (void)shuffled.fold().pictureAt(noon + Duration{900});
    }
    const Boil inOrder = rows.boil();
    for (const double t : {1.0, 333.0, 600.5, 899.0, 930.0})
        EXPECT_EQ(shuffled.fold().pictureAt(noon + Duration{t}), inOrder.pictureAt(noon + Duration{t})) << t;
    EXPECT_EQ(shuffled.rise().size(), inOrder.rise().size());
}

// A pan that is drawn too late and a probe that falls silent, with a check and a correction between.
TEST(Boil, UnwatchedTellsTheSameButForTheAlarms) {
    Rows rows = calm();
    for (int t = 900; t < 1500; ++t)
        rows.read(t, "syrup_pan", 104.5 + 0.002 * (t - 900), "degC");
    rows.add(1510, "draw_open,,,");
    rows.add(1600, "draw_close,6,L,");
    rows.add(1700, "density_check,67.5,brix,drawn=" + textOf(noon + Duration{1590}));
    rows.read(1800, "pressure", 99.0, "kPa");
    Boil unwatched{Boil::Alarms::unwatched};
    Boil watched;
    PastShift past;
    EXPECT_FALSE(past.last());
    for (std::size_t i = 0; i < rows.facts.size(); ++i) {
        for (Boil* boil : {&unwatched, &watched})
            boil->add(static_cast<FactId>(i), rows.facts[i]);
        past.add(rows.facts[i]);
    }
    unwatched.fold();
    watched.fold();
    ASSERT_EQ(past.rise().size(), watched.rise().size());
    EXPECT_EQ(past.rise().back().rise, watched.rise().back().rise);
    EXPECT_EQ(past.steam().size(), watched.steam().size());
    EXPECT_EQ(past.last(), unwatched.pictureAt(rows.facts.back().at));
    ASSERT_EQ(unwatched.rise().size(), watched.rise().size());
    for (std::size_t i = 0; i < watched.rise().size(); ++i)
        EXPECT_EQ(unwatched.rise()[i].rise, watched.rise()[i].rise) << i;
    std::size_t alarms = 0;
    for (const double t : {600.0, 1500.0, 1620.0, 1800.0}) {
        Picture seen = watched.pictureAt(noon + Duration{t});
        alarms += seen.alarms.size();
        seen.alarms.clear();
        seen.drawDue = seen.drawDue || unwatched.pictureAt(noon + Duration{t}).drawDue; // an alarm may forbid it
        EXPECT_EQ(unwatched.pictureAt(noon + Duration{t}), seen) << t;
    }
    EXPECT_GT(alarms, 0U);
}

TEST(Boil, AWithdrawnFactWasNeverEntered) {
    Rows rows = calm();
    Boil boil = rows.boil();
    const Picture before = boil.pictureAt(noon + Duration{900});
    boil.add(100000, Fact{noon + Duration{300}, DrawOpened{}});
    EXPECT_NE(boil.fold().pictureAt(noon + Duration{900}), before);
    EXPECT_TRUE(boil.withdraw(100000));
    EXPECT_FALSE(boil.withdraw(100000));
    EXPECT_EQ(boil.fold().pictureAt(noon + Duration{900}), before);
}

TEST(Boil, APictureOfThePastIsTheOneThatWas) {
    Rows rows = calm();
    Boil growing;
    Boil whole = rows.boil();
    FactId id = 0;
    for (const Fact& fact : rows.facts) {
        growing.add(id++, fact);
        if (id % 97 != 0)
            continue;
        EXPECT_EQ(growing.fold().pictureAt(fact.at + std::chrono::microseconds{1}),
                  whole.pictureAt(fact.at + std::chrono::microseconds{1}));
    }
}

TEST(Replay, BeginsOnAWholeSecondAndEndsAtOrAfterTheLastRow) {
    Rows rows;
    rows.add(0.5, "lit,,,").add(4.2, "fired,,,");
    std::vector<Instant> times;
    replay(rows.facts, {.every = Duration{2}}, [&](const Picture& picture) { times.push_back(picture.at); });
    EXPECT_EQ(times, (std::vector{noon + Duration{1}, noon + Duration{3}, noon + Duration{5}}));
}

TEST(Replay, AsEnteredALateFactIsNotKnownBeforeItWasEntered) {
    Rows rows;
    rows.add(0, "lit,,,").add(10, "fired,,,entered=2025-03-14T12:01:00Z").add(100, "note,,,over");
    int loadsAt30 = -1, loadsAt30AsEntered = -1, loadsAt60AsEntered = -1;
    replay(rows.facts, {}, [&](const Picture& picture) {
        if (picture.at == noon + Duration{30})
            loadsAt30 = picture.loads;
    });
    replay(rows.facts, {.asEntered = true}, [&](const Picture& picture) {
        if (picture.at == noon + Duration{30})
            loadsAt30AsEntered = picture.loads;
        if (picture.at == noon + Duration{60})
            loadsAt60AsEntered = picture.loads;
    });
    EXPECT_EQ(loadsAt30, 1);
    EXPECT_EQ(loadsAt30AsEntered, 0);
    EXPECT_EQ(loadsAt60AsEntered, 1);
}

TEST(Replay, ASettingThatTheLogHasIsTheLogs) {
    Rows rows;
    rows.add(0, "set,10,min,key=fire_interval").add(1, "lit,,,");
    const ReplayOptions options{
        .settings = {{Setting::fire_interval, 300, Unit::min}, {Setting::pressure_offset, 1, Unit::kPa}}};
    Picture last;
    replay(rows.facts, options, [&](const Picture& picture) { last = picture; });
    EXPECT_EQ(last.fireInterval, Duration{600});
}

TEST(Replay, RefusesALogWithFaults) {
    int pictures = 0;
    const auto faults =
        replay("time,what,value,unit,detail\nnow,lit,,,\nthen,lit,,,\n", {}, [&](const Picture&) { ++pictures; });
    EXPECT_EQ(faults.size(), 2u);
    EXPECT_EQ(pictures, 0);
}

} // namespace
} // namespace panside
