#include "core/ledger/mark_hindsight.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

Instant at(int minutes) { return Instant{} + std::chrono::minutes{minutes}; }

// By hand: 0 ± 0.3 beforehand and one check of 0.2 ± 0.1 are, weighed by their variances, 0.18 ± 0.0949.
TEST(MarkHindsight, WeighsWhatWasKnownAndACheckByTheirVariances) {
    MarkHindsight mark;
    mark.begin(at(0), {0, 0.3});
    mark.check(at(10), {0.2, 0.1}, 0);
    mark.ask(at(10));
    ASSERT_EQ(mark.answers().size(), 1U);
    EXPECT_NEAR(mark.answers()[0].kelvin, 0.18, 1e-9);
    EXPECT_NEAR(mark.answers()[0].sd, 0.094868, 1e-6);
}

TEST(MarkHindsight, ACheckAfterADrawCountsForItToo) {
    MarkHindsight mark;
    mark.begin(at(0), {0, 0.3});
    mark.ask(at(5));
    mark.drift(0, 0.0001);
    mark.check(at(10), {0.2, 0.1}, 0);
    EXPECT_NEAR(mark.answers()[0].kelvin, 0.18, 0.001);
    EXPECT_NEAR(mark.answers()[0].sd, 0.095, 0.001);
}

// What the scale on the pan grew by after a draw is no word for that draw: by hand, two checks of 0.1 apart with a
// drift of 0.1 between them say one and the same, and the draw beside the first of them is told what that one saw.
TEST(MarkHindsight, WhatDriftedLaterIsNotCountedForAnEarlierDraw) {
    MarkHindsight mark;
    mark.begin(at(0), {0.3, 0.3});
    mark.check(at(10), {0.3, 0.05}, 0);
    mark.ask(at(10));
    mark.drift(0.1, 0.0004);
    mark.check(at(200), {0.4, 0.05}, 0);
    mark.ask(at(200));
    EXPECT_NEAR(mark.answers()[0].kelvin, 0.3, 1e-9);
    EXPECT_NEAR(mark.answers()[1].kelvin, 0.4, 1e-9);
}

TEST(MarkHindsight, OneCheckFarOffTheOthersCountsLittle) {
    MarkHindsight with, without;
    for (MarkHindsight* mark : {&with, &without}) {
        mark->begin(at(0), {0, 0.3});
        for (int i = 1; i <= 4; ++i)
            mark->check(at(10 * i), {0.2 + 0.01 * (i % 2), 0.06}, 0);
    }
    with.check(at(45), {1.2, 0.06}, 0);
    for (MarkHindsight* mark : {&with, &without})
        mark->ask(at(46));
    EXPECT_NEAR(with.answers()[0].kelvin, without.answers()[0].kelvin, 0.03);
}

TEST(MarkHindsight, AnotherPanBeginsAnew) {
    MarkHindsight mark;
    mark.begin(at(0), {0, 0.3});
    mark.check(at(10), {0.5, 0.05}, 0);
    mark.ask(at(10));
    mark.begin(at(20), {0, 0.2});
    mark.ask(at(30));
    EXPECT_NEAR(mark.answers()[0].kelvin, 0.486, 0.001);
    EXPECT_DOUBLE_EQ(mark.answers()[1].kelvin, 0);
    EXPECT_DOUBLE_EQ(mark.answers()[1].sd, 0.2);
}

// A crew as slow with one cup as with the next: ten cups are no surer than that.
TEST(MarkHindsight, WhatIsAlikeInEveryCupDoesNotAverageOut) {
    MarkHindsight told, untold;
    for (int i = 0; i < 10; ++i) {
        told.check(at(i), {0.2, 0.1}, 0);
        untold.check(at(i), {0.2, 0.1}, 0.05 * 0.05);
    }
    told.ask(at(10));
    untold.ask(at(10));
    EXPECT_LT(told.answers()[0].sd, 0.035);
    EXPECT_GT(untold.answers()[0].sd, 0.05);
}

} // namespace
} // namespace panside
