// What shifts before taught of the draws' rhythm: an expectation until this one has shown its own, and nothing after.
#include "core/boil/state.h"
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;

BoilLog knowing(const char* cycle, const char* brix) {
    BoilLog log;
    log.rows.add(0, fmt::format("set,{},min,key=learned_cycle", cycle));
    log.rows.add(0, fmt::format("set,{},min,key=learned_brix", brix));
    return log;
}
double middle(const Picture& picture) { return picture.drawEta ? picture.drawEta->p50.count() / 60 : -1; }

// A pan at 40 brix that has begun to climb by a brix in 5 min: 27 brix are two hours and more, and no hour.
TEST(LearnedRhythm, GivesTheFirstClimbItsRate) {
    const auto early = [](BoilLog log) {
        log.climb(40, 40.5, 180);
        return middle(log.picture());
    };
    const double blank = early(BoilLog{}), slow = early(knowing("20", "5"));
    EXPECT_GT(slow, 1.2 * blank);
    EXPECT_LT(std::abs(slow - 27 * 5), std::abs(blank - 27 * 5));
}

TEST(LearnedRhythm, GivesTheFirstWaitItsLength) {
    const auto after = [](BoilLog log) {
        log.cycle(61, 1500);
        log.hold(61, 200);
        return middle(log.picture());
    };
    EXPECT_LT(after(knowing("12", "2")), after(BoilLog{}));
}

TEST(LearnedRhythm, OfAnotherRigIsSoonForgotten) {
    const auto after = [](BoilLog log) {
        for (int i = 0; i < 8; ++i)
            log.cycle();
        log.climb(61, 63, 250);
        return middle(log.picture());
    };
    EXPECT_NEAR(after(knowing("60", "10")), after(BoilLog{}), 1.0);
}

// A watch alone: nothing of last night stands for three waits of this one.
TEST(LearnedRhythm, IsNoForecastWithoutAPan) {
    test::Rows rows;
    rows.add(0, "set,20,min,key=learned_cycle").add(0, "lit,,,");
    for (int i = 0; i < 3; ++i)
        rows.add(1200 * i + 600, "draw_open,,,").add(1200 * i + 660, "draw_close,2,L,");
    EXPECT_FALSE(rows.at(3400).drawEta);
}

TEST(LearnedRhythm, IsTaughtByAShiftOfFourWaits) {
    BoilLog log;
    const auto learned = [&] {
        State state;
        for (const Fact& fact : log.rows.facts)
            absorbUnwatched(state, fact);
        return state.forecast.learned();
    };
    for (int i = 0; i < 3; ++i)
        log.cycle();
    EXPECT_FALSE(learned().cycle);
    for (int i = 0; i < 3; ++i)
        log.cycle();
    EXPECT_NEAR(learned().cycle.value().count(), 790, 40); // from shut to the mark
    EXPECT_NEAR(learned().brix.value().count(), 800 / 6.3, 25);
}

} // namespace
} // namespace panside
