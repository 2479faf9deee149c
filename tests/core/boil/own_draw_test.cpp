// Draws that nobody keys: an automatic valve opens a little over the target each time, or lets syrup trickle for hours.
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::stood;

constexpr auto overTarget = Alarm::above_target;

// Up to `crest`, there for a minute until the valve has warmed and opens, and down.
void cycleOfAValve(BoilLog& log, double crest) {
    log.climb(61, crest, 700);
    log.hold(crest, 60);
    log.climb(crest, 61, 90);
}

TEST(AnAutomaticValve, IsNoPanOverTheTargetOnceItIsKnown) {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        cycleOfAValve(log, 68.2);
    EXPECT_GE(stood(log.rows, overTarget).times, 2);
    const int known = log.now;
    for (int i = 0; i < 5; ++i)
        cycleOfAValve(log, 68.2);
    EXPECT_LT(stood(log.rows, overTarget).last, known);
}

TEST(AnAutomaticValve, ThatStaysShutIsCalledAllTheSame) {
    BoilLog log;
    for (int i = 0; i < 4; ++i)
        cycleOfAValve(log, 68.2);
    const int shut = log.now;
    log.climb(61, 72, 1300);
    EXPECT_GE(stood(log.rows, overTarget).last, log.now - 5);
    EXPECT_LT(stood(log.rows, overTarget).last - shut, 1301);
    EXPECT_TRUE(test::stands(log.rows.at(shut + 1200), overTarget)); // 71.1 brix
}

TEST(AnAutomaticValve, ThatTricklesForHoursIsNoPanLeftAlone) {
    BoilLog log;
    log.climb(61, 67.8, 900);
    log.hold(67.8, 3600);
    const auto stands = stood(log.rows, overTarget);
    EXPECT_GT(stands.first, 0); // nothing tells at first
    EXPECT_LT(stands.last, 900 + 1000);
    // It clogs.
    log.climb(67.8, 70.5, 600);
    EXPECT_TRUE(test::stands(log.picture(), overTarget));
}

// Three draws that were keyed, and a fourth that was opened.
BoilLog fourthOpened() {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        log.cycle();
    log.climb(61, 67.3, 800);
    log.rows.add(log.now, "draw_open,,,");
    return log;
}

// The key that nobody pressed: it lasts far longer than their draws do, and the pan falls no more.
TEST(ACrewThatKeysItsDraws, HasShutOneThatLastsTooLongAndThinsNoMore) {
    BoilLog log = fourthOpened();
    log.climb(67.3, 61, 80);
    log.hold(61, 240);
    EXPECT_FALSE(log.picture().drawing);
}
TEST(ACrewThatKeysItsDraws, StillDrawsWhileThePanThinsAway) {
    BoilLog log = fourthOpened();
    log.climb(67.3, 47, 320);
    EXPECT_TRUE(log.picture().drawing);
    EXPECT_TRUE(test::stands(log.picture(), Alarm::draw_overdue));
}

// The same pan where a crew keys its draws: they have forgotten this one.
TEST(ACrewThatKeysItsDraws, IsCalledForAsLongAsThePanStandsOverTheTarget) {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        log.cycle();
    log.climb(61, 68.0, 900);
    log.hold(68.0, 1800);
    EXPECT_TRUE(test::stands(log.picture(), overTarget));
}

} // namespace
} // namespace panside
