// Stacks drawn by hand: a fire that sags, a door, a load. The times in them are the truth.
#include "core/boil/stack_trace.h"
#include "tests/core/boil/logs.h"

#include <cmath>

namespace panside {
namespace {

using test::noon;

// Degrees Celsius `t` seconds after a load: the door for half a minute, the catch, then a fall into coals.
double afterLoad(double t, double before) {
    if (t < 30)
        return before * (1 - 0.3 * t / 30);
    const double caught = 1 - std::exp(-(t - 30) / 60);
    return 0.7 * before + caught * (430 * std::exp(-(t - 30) / 900) - 0.7 * before);
}
double afterDoor(double t, double before) { // nothing put in: back on the old path
    const double path = before * std::exp(-t / 900);
    return t < 30 ? path * (1 - 0.3 * t / 30) : path * (1 - 0.3 * std::exp(-(t - 30) / 20));
}

StackTrace drawn(const std::vector<double>& celsius, int every = 1) {
    StackTrace trace;
    for (std::size_t t = 0; t < celsius.size(); t += static_cast<std::size_t>(every))
        trace.addSample(noon + Duration{static_cast<double>(t)}, Temperature::celsius(celsius[t]));
    return trace;
}
// Ten minutes of a falling fire, then what `then` makes of it.
std::vector<double> fireAnd(double (*then)(double, double), int length) {
    std::vector<double> celsius;
    for (int t = 0; t < 600; ++t)
        celsius.push_back(400 * std::exp(-t / 900.0));
    for (int t = 0; t < length; ++t)
        celsius.push_back(then(t, 400 * std::exp(-600 / 900.0)));
    return celsius;
}
// The first moment at which a load is told, and when it says the door opened.
std::optional<std::pair<double, double>> told(const std::vector<double>& celsius, int every = 1) {
    StackTrace trace;
    for (std::size_t t = 0; t < celsius.size(); t += static_cast<std::size_t>(every)) {
        const Instant now = noon + Duration{static_cast<double>(t)};
        trace.addSample(now, Temperature::celsius(celsius[t]));
        if (const auto opened = trace.loading(now, noon))
            return std::pair{secondsBetween(noon, now), secondsBetween(noon, *opened)};
    }
    return std::nullopt;
}

TEST(StackTrace, ALoadIsToldFromItsDipAndSurge) {
    const auto load = told(fireAnd(afterLoad, 400));
    ASSERT_TRUE(load);
    EXPECT_NEAR(load->second, 600, 20);
    EXPECT_LT(load->first, 600 + 240);
}

TEST(StackTrace, ADoorThatWasOnlyOpenedIsNoLoad) { EXPECT_FALSE(told(fireAnd(afterDoor, 400))); }

TEST(StackTrace, AFireThatOnlyFallsIsNoLoad) {
    EXPECT_FALSE(told(fireAnd([](double t, double before) { return before * std::exp(-t / 900); }, 400)));
}

TEST(StackTrace, AReadingEachTenSecondsIsEnough) {
    const auto load = told(fireAnd(afterLoad, 400), 10);
    ASSERT_TRUE(load);
    EXPECT_NEAR(load->second, 600, 25);
}

TEST(StackTrace, AGapTellsNothing) {
    auto celsius = fireAnd(afterLoad, 400);
    StackTrace trace;
    bool any = false;
    for (std::size_t t = 0; t < celsius.size(); ++t) {
        const Instant now = noon + Duration{static_cast<double>(t)};
        if (t < 560 || t > 700) // the door is not seen
            trace.addSample(now, Temperature::celsius(celsius[t]));
        any = any || trace.loading(now, noon);
    }
    EXPECT_FALSE(any);
}

// A square fire: hot for 200 s after the load, then cold. It sinks to its own mean as it goes cold, whatever the lag.
TEST(StackTrace, TheSagIsWhereTheHeatSinksToItsMean) {
    std::vector<double> celsius;
    for (int t = 0; t < 600; ++t)
        celsius.push_back(t < 30 ? 250 : t < 300 ? 400 : 250);
    const auto sag = drawn(celsius).sag(noon, noon + Duration{600});
    ASSERT_TRUE(sag);
    EXPECT_TRUE(sag->seen);
    EXPECT_NEAR(seconds(sag->heat), 300, 20);
}

// Fed three minutes and a half after the load, half a minute past the top of a slow catch: not down to its mean yet.
TEST(StackTrace, WhatIsFedBeforeItSagsIsFollowedOn) {
    std::vector<double> celsius;
    for (int t = 0; t < 210; ++t)
        celsius.push_back(t < 130 ? 200 + 1.5 * t : 395 - 0.3 * (t - 130));
    const auto sag = drawn(celsius).sag(noon, noon + Duration{210});
    ASSERT_TRUE(sag);
    EXPECT_FALSE(sag->seen);
    EXPECT_GT(seconds(sag->heat), 205);
    EXPECT_LE(seconds(sag->heat), 315);
}

TEST(StackTrace, SaysNothingOfAStackHardlyRead) {
    std::vector<double> celsius(600, 300);
    EXPECT_FALSE(drawn(celsius, 120).sag(noon, noon + Duration{600}));
    EXPECT_FALSE(StackTrace{}.loading(noon, noon));
    EXPECT_FALSE(StackTrace{}.burnsHigh(noon, noon + Duration{300}));
}

} // namespace
} // namespace panside
