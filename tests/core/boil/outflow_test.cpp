// Expected numbers are arithmetic on the rows themselves.
#include "core/boil/outflow.h"
#include "tests/core/boil/logs.h"

namespace panside {
namespace {

using test::noon;

Outflow falling(double litrePerHour, int every, int until, double jumpAt = -1, double jump = 0) {
    Outflow tank;
    for (int t = 0; t <= until; t += every)
        tank.addSample(noon + Duration{t},
                       Volume::litre(1000 - litrePerHour * t / 3600 + (jumpAt >= 0 && t >= jumpAt ? jump : 0)));
    return tank;
}

TEST(Outflow, SaysNothingUnderTenMinutes) { EXPECT_FALSE(falling(200, 1, 9 * 60).rate(noon + Duration{9 * 60})); }

TEST(Outflow, FollowsASteadyFall) {
    const auto rate = falling(200, 1, 1800).rate(noon + Duration{1800});
    ASSERT_TRUE(rate);
    EXPECT_NEAR(rate->litrePerHour, 200, 0.5);
}

TEST(Outflow, SapComingInIsNoOutflow) {
    const auto rate = falling(200, 1, 3600, 2400, 300).rate(noon + Duration{3600});
    ASSERT_TRUE(rate);
    EXPECT_NEAR(rate->litrePerHour, 200, 2);
}

// Forty litres let out for the dishes, or a float that slipped, are not boiled off; what goes on falling is.
TEST(Outflow, WhatIsGoneAtOnceIsNoOutflow) {
    for (const int at : {2400, 2450}) {
        const auto rate = falling(200, 1, 3600, at, -40).rate(noon + Duration{3600});
        ASSERT_TRUE(rate);
        EXPECT_NEAR(rate->litrePerHour, 200, 4);
    }
    Outflow faster;
    for (int t = 0; t <= 5400; t += 10)
        faster.addSample(noon + Duration{t}, Volume::litre(t < 2400 ? 2000 - t / 18.0 : 2000 - 133 - (t - 2400) / 4.5));
    EXPECT_NEAR(faster.rate(noon + Duration{5400})->litrePerHour, 800, 10);
}

TEST(Outflow, AMarkReadTwiceAnHourIsEnough) {
    const auto rate = falling(150, 1800, 2 * 3600).rate(noon + Duration{2 * 3600});
    ASSERT_TRUE(rate);
    EXPECT_NEAR(rate->litrePerHour, 150, 1);
}

TEST(Outflow, ALongerLookReachesFurtherBack) {
    Outflow tank;
    for (int t = 0; t <= 7200; t += 10) // 100 L/h, in the second hour 200
        tank.addSample(noon + Duration{t}, Volume::litre(t < 3600 ? 1000 - t / 36.0 : 900 - (t - 3600) / 18.0));
    const Instant now = noon + Duration{7200};
    EXPECT_NEAR(tank.rate(now)->litrePerHour, 200, 1);
    EXPECT_GT(tank.rate(now, Outflow::longestWindow)->litrePerHour, 120);
    EXPECT_LT(tank.rate(now, Outflow::longestWindow)->litrePerHour, 180);
}

TEST(Outflow, ForgetsWhatCameBefore) {
    auto tank = falling(200, 1, 1800);
    tank.forget();
    EXPECT_FALSE(tank.rate(noon + Duration{1800}));
}

} // namespace
} // namespace panside
