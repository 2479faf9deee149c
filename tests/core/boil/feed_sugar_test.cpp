// How sweet the feed is, by what was told of each load.
#include "core/boil/feed_sugar.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

SapIn load(double litres, double brix) {
    SapIn sap{};
    sap.volume = {Volume::litre(litres), Unit::L};
    sap.all = litres <= 0;
    sap.sugar = Brix::degrees(brix);
    return sap;
}

// Mass balance: 300 L of 2 brix and 100 L of 8 make 3.5 brix, the volumes taken for masses.
TEST(FeedSugar, IsThatOfTheMix) {
    FeedSugar feed;
    EXPECT_FALSE(feed.tank());
    feed.came(load(300, 2), {}, Instant{});
    EXPECT_NEAR(feed.tank()->degrees(), 2, 1e-9);
    feed.came(load(100, 8), Volume::litre(300), Instant{} + std::chrono::hours{1});
    EXPECT_NEAR(feed.tank()->degrees(), 3.5, 1e-9);
    EXPECT_NEAR(feed.pans(Instant{} + std::chrono::hours{1})->degrees(), 2, 1e-9);
}

// "All of the concentrate" has no volume, and is what is boiled from then on.
TEST(FeedSugar, IsThatOfATankThatWasEmptiedIntoIt) {
    FeedSugar feed;
    feed.came(load(300, 2), {}, Instant{});
    feed.came(load(0, 8), Volume::litre(50), Instant{} + std::chrono::hours{1});
    EXPECT_NEAR(feed.tank()->degrees(), 8, 1e-9);
    EXPECT_NEAR(feed.pans(Instant{} + std::chrono::hours{1})->degrees(), 2, 1e-9);
    EXPECT_GT(feed.pans(Instant{} + std::chrono::hours{5})->degrees(), 5);
}

} // namespace
} // namespace panside
