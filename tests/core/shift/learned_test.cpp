// What a shift hands on to the next.
#include "core/shift/learned.h"

#include "core/boil/state.h"
#include "tests/core/boil/boil_log.h"

#include <algorithm>

namespace panside {
namespace {

// Of a night of seven draws, each some 790 s after the one before was shut.
std::optional<double> cycleLearned(std::optional<double> minutesBefore) {
    test::BoilLog log;
    if (minutesBefore)
        log.rows.add(0, fmt::format("set,{},min,key=learned_cycle", *minutesBefore));
    for (int i = 0; i < 7; ++i)
        log.cycle();
    State state;
    for (const Fact& fact : log.rows.facts)
        absorbUnwatched(state, fact);
    for (const Set& set : learnedIn(state))
        if (set.key == Setting::learned_cycle)
            return set.si / 60;
    return std::nullopt;
}

TEST(Learned, TheFirstNightsRhythmIsTakenAsItWas) { EXPECT_NEAR(cycleLearned({}).value(), 790 / 60.0, 0.7); }

// The next has other sap and other wood: half way, by ratio.
TEST(Learned, OneNightCountsHalfOfWhatStoodBefore) {
    EXPECT_NEAR(cycleLearned(26.4).value(), std::sqrt(26.4 * 13.2), 1.5);
    EXPECT_NEAR(cycleLearned(6.6).value(), std::sqrt(6.6 * 13.2), 0.8);
}

TEST(Learned, WhatIsAsItWasIsNoNews) { EXPECT_FALSE(cycleLearned(13.2)); }

} // namespace
} // namespace panside
