#include "core/boil/end_of_boil.h"

#include "core/boil/state.h"
#include "tests/core/boil/logs.h"

#include <cmath>

namespace panside {
namespace {

using test::Rows;

EndBasis basis() {
    return {.tank = Volume::litre(1000),
            .use = VolumeFlow::litrePerHour(200),
            .useSd = VolumeFlow::litrePerHour(10),
            .steam = VolumeFlow::litrePerHour(196),
            .pans = Area::squareMetre(2),
            .depth = Length::millimetre(40),
            .burnOut = Duration{45 * 60}};
}

// By hand: 2 m2 by 40 mm are 80 L; half of 196 L/h over three quarters of an hour are 73.5 L; the rest of the 1000 L
// lasts 846.5/200 h. The first tenth of a normal spread lies 1.2816 standard deviations from its middle (any table).
TEST(EndOfBoil, IsTheArithmeticOfTheTank) {
    const auto plan = planEnd(basis());
    ASSERT_TRUE(plan);
    EXPECT_NEAR(plan->keepBack.litre(), 153.5, 1e-6);
    EXPECT_NEAR(seconds(plan->lastLoad.p50), 846.5 / 200 * 3600, 1e-6);
    EXPECT_NEAR(seconds(plan->lastLoad.p10), 846.5 / 212.816 * 3600, 1e-6);
    EXPECT_NEAR(seconds(*plan->lastLoad.p90), 846.5 / 187.184 * 3600, 1e-6);
    EXPECT_NEAR(seconds(plan->runsOut.p50), 5 * 3600, 1e-6);
    EXPECT_NEAR(seconds(plan->coldFire.p50 - plan->lastLoad.p50), 2700, 1e-6);
}

TEST(EndOfBoil, MoreSapPutsTheLastLoadOffByWhatItTakesToBoil) {
    const auto plan = planEnd(basis()), more = planEnd(basis(), {.moreSap = Volume::litre(300)});
    ASSERT_TRUE(plan && more);
    EXPECT_NEAR(seconds(more->lastLoad.p50 - plan->lastLoad.p50), 1.5 * 3600, 1e-6);
    EXPECT_EQ(more->keepBack, plan->keepBack);
}

// A quarter harder: 80 + 1.25 * 73.5 L are kept back, the rest goes at 250 L/h.
TEST(EndOfBoil, FiringHarderBringsItNearerAndKeepsMoreBack) {
    const auto plan = planEnd(basis(), {.harder = 0.25});
    ASSERT_TRUE(plan);
    EXPECT_NEAR(plan->keepBack.litre(), 80 + 1.25 * 73.5, 1e-6);
    EXPECT_NEAR(seconds(plan->lastLoad.p50), (1000 - 171.875) / 250 * 3600, 1e-6);
}

TEST(EndOfBoil, WithTooLittleSapTheLastLoadIsDueNow) {
    EndBasis low = basis();
    low.tank = Volume::litre(100);
    const auto plan = planEnd(low);
    ASSERT_TRUE(plan);
    EXPECT_EQ(seconds(plan->lastLoad.p50), 0);
}

// The area under a rate that falls evenly to nothing is half of rate times time: 75 L of 200 L/h over 45 min.
TEST(EndOfBoil, TheTankFallsEvenlyThenWithTheFire) {
    const auto plan = planEnd(basis());
    ASSERT_TRUE(plan);
    EXPECT_NEAR(tankAt(*plan, Duration{3600}).litre(), 800, 1e-6);
    EXPECT_NEAR(tankAt(*plan, plan->lastLoad.p50).litre(), 153.5, 1e-6);
    EXPECT_NEAR(tankAt(*plan, plan->coldFire.p50).litre(), 153.5 - 75, 1e-6);
    EXPECT_NEAR(tankAt(*plan, plan->coldFire.p50 + Duration{3600}).litre(), 153.5 - 75, 1e-6);
}

TEST(EndOfBoil, SaysNothingWhereNothingIsKnown) {
    EndBasis still = basis();
    still.use = VolumeFlow::litrePerHour(0.5);
    EXPECT_FALSE(planEnd(still));
    EXPECT_FALSE(planEnd(basis(), {.harder = -1}));
    EXPECT_FALSE(planEnd(basis(), {.moreSap = Volume::litre(-2000)}));
}

// A night of loads each 8 min, then a shutdown after which the stack falls away with a time constant of 20 min:
// (height over the air)^1.6 then falls with one of 12.5 min, so that twice its sum is 25 min, after 25 min at which
// it stands at 0.135 of the full heat.
Rows burntDown(int until, double air = 4) {
    Rows rows;
    rows.add(0, "lit,,,");
    for (int t = 0; t <= until; t += 10) {
        if (t % 480 == 0 && t <= 7200)
            rows.add(t, "fired,20,kg,");
        if (t == 7210)
            rows.add(t, "shutdown,,,");
        rows.read(t, "stack", t <= 7200 ? 400 : air + (400 - air) * std::exp(-(t - 7200) / 1200.0), "degC");
    }
    return rows;
}

std::optional<Duration> seenIn(const Rows& rows) {
    State state;
    for (const Fact& fact : rows.facts)
        absorb(state, fact);
    return state.balance.burnOutSeen(state);
}

TEST(BurnOut, IsSeenFromTheStackOnceTheFireIsNearlyOut) {
    const auto seen = seenIn(burntDown(7200 + 3600));
    ASSERT_TRUE(seen);
    EXPECT_NEAR(seconds(*seen) / 60, 25, 1.5);
    EXPECT_FALSE(seenIn(burntDown(7200 + 600))) << "half of the heat is still to come";
}

TEST(BurnOut, IsNotMadeUpWhereTheStackWasNotRead) {
    Rows rows = burntDown(7200 + 3600);
    std::erase_if(rows.facts, [](const Fact& fact) {
        const double since = secondsBetween(test::noon, fact.at);
        return std::holds_alternative<Reading>(fact.what) && since > 7500 && since < 7900;
    });
    EXPECT_FALSE(seenIn(rows));
}

} // namespace
} // namespace panside
