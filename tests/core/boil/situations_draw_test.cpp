// What happens at the draw-off, played through the engine. What is wanted is what people who boil ask for; sizes are
// common practice, no source.
#include "tests/core/boil/boil_log.h"

namespace panside {
namespace {

using test::BoilLog;
using test::stands;
using test::stood;

bool saysWhy(const Picture& picture, Shown figure, Reason reason) {
    return std::any_of(picture.why.begin(), picture.why.end(), [&](const Why& why) {
        return why.of == std::variant<Shown, Series>{figure} && why.reason == reason;
    });
}

TEST(SituationDraw, APanThatTurnsAllAtOnceIsAScorchBeforeItIsPastSaving) {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        log.cycle();
    log.climb(61, 66.9, 700);
    const int turns = log.now;
    log.climb(66.9, 75, 90); // in a minute and a half
    const int lost = log.now;
    log.hold(75, 60);
    const auto scorch = stood(log.rows, Alarm::scorch_risk);
    EXPECT_GE(scorch.first, turns);
    EXPECT_LE(scorch.first, lost - 10);
    EXPECT_EQ(scorch.last, log.now - 1);
}

TEST(SituationDraw, TheReadingThatClimbsALittleWhenTheDrawIsOpenedIsNoSecondAlarm) {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        log.cycle();
    log.climb(61, 67.2, 800);
    log.rows.add(log.now, "draw_open,,,");
    const int opened = log.now;
    log.climb(67.2, 67.9, 25);
    log.climb(67.9, 62, 70);
    log.rows.add(log.now, "draw_close,3,L,");
    log.hold(62, 60);
    EXPECT_LE(stood(log.rows, Alarm::above_target).last, opened);
    EXPECT_EQ(stood(log.rows, Alarm::scorch_risk).first, -1);
    for (int t = opened; t < opened + 40; ++t)
        EXPECT_FALSE(stands(log.rows.at(t), Alarm::draw_overdue)) << t;
}

// Drawn thin on purpose, to be finished on gas.
TEST(SituationDraw, SyrupDrawnThinOnPurposeIsJudgedByTheDensityThatWasSet) {
    BoilLog log;
    log.rows.add(0, "set,60,brix,key=target_density");
    log.climb(50, 60.4, 900);
    log.hold(60.4, 240);
    EXPECT_TRUE(stands(log.picture(), Alarm::above_target));
    log.rows.add(log.now, "draw_open,,,");
    const int opened = log.now;
    log.hold(60.4, 60);
    EXPECT_EQ(stood(log.rows, Alarm::draw_overdue).first, -1);
    log.climb(60.4, 54, 60);
    log.hold(54, 60);
    EXPECT_GT(stood(log.rows, Alarm::draw_overdue).first, opened + 60);
}

TEST(SituationDraw, WhereTheLawAsksForMoreADrawIsOverdueSooner) {
    const auto overdueAt = [](const char* least) {
        BoilLog log;
        log.rows.add(0, fmt::format("set,{},brix,key=legal_minimum", least));
        log.cycle();
        log.hold(67.2, 60);
        log.rows.add(log.now, "draw_open,,,");
        log.climb(67.2, 66.45, 60);
        log.hold(66.45, 120);
        return stands(log.picture(), Alarm::draw_overdue);
    };
    EXPECT_FALSE(overdueAt("66.0"));
    EXPECT_TRUE(overdueAt("66.9"));
}

// The sap is suddenly four times as sweet: the draws come three times as often.
TEST(SituationDraw, WhenTheSapTurnsSweetTheForecastFollowsWithinThreeDraws) {
    BoilLog log;
    for (int i = 0; i < 4; ++i)
        log.cycle(61, 900);
    for (int i = 0; i < 3; ++i)
        log.cycle(64.5, 300);
    log.climb(64.5, 65.9, 150);
    const double left = 300 * (66.9 - 64.5) / (67.3 - 64.5) - 150;
    const Picture picture = log.picture();
    ASSERT_TRUE(picture.drawEta && picture.drawEta->p90);
    EXPECT_NEAR(seconds(picture.drawEta->p50), left, 60);
    EXPECT_LE(seconds(picture.drawEta->p10), left);
    EXPECT_GE(seconds(*picture.drawEta->p90), left);
    EXPECT_EQ(stood(log.rows, Alarm::scorch_risk).first, -1);
}

// The float hangs: cold sap floods the pan, the gradient is gone.
TEST(SituationDraw, AFloodedPanIsNoDrawAndForetellsNoneSoon) {
    BoilLog log;
    for (int i = 0; i < 3; ++i)
        log.cycle();
    log.climb(61, 65, 400);
    log.climb(65, 15, 300);
    log.hold(15, 600);
    const Picture picture = log.picture();
    EXPECT_EQ(picture.draws, 3);
    EXPECT_FALSE(stands(picture, Alarm::scorch_risk));
    // Either it says that it cannot tell, or that it will be long.
    if (picture.drawEta) {
        EXPECT_GT(seconds(picture.drawEta->p50), 1200);
    }
    EXPECT_LT(picture.brix->degrees(), 30);
}

// Ten times a night the same nuisance is the end of an alarm: near the mark it begins once.
TEST(SituationDraw, AReadingThatHoversAtTheMarkCallsAtMostTwiceInHalfAnHour) {
    BoilLog log;
    log.cycle();
    for (const int until = log.now + 1800; log.now < until;)
        log.second(66.9 + 0.12 * std::sin(log.now / 20.0));
    EXPECT_LE(stood(log.rows, Alarm::above_target).times, 2);
}

// At the end of the season sap is chased out with water: syrup still comes while the reading falls back.
TEST(SituationDraw, AWaterChaseIsCalledOnceAndSeenItKeepsStill) {
    BoilLog log;
    log.cycle();
    log.rows.add(log.now, "shutdown,,,");
    log.climb(61, 67.2, 800);
    log.rows.add(log.now, "draw_open,,,");
    log.climb(67.2, 40, 300);
    log.rows.add(log.now, "alarm_seen,,,name=draw_overdue");
    log.climb(40, 20, 600);
    const Picture picture = log.picture();
    ASSERT_TRUE(stands(picture, Alarm::draw_overdue));
    for (const AlarmPicture& one : picture.alarms) {
        EXPECT_NE(one.state, AlarmState::unseen) << nameOf(one.alarm);
    }
    EXPECT_TRUE(saysWhy(picture, Shown::drawEta, Reason::drawing));
}

} // namespace
} // namespace panside
