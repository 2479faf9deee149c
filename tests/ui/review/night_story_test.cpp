#include "ui/review/night_story.h"

#include "core/boil/shift_log.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

ShiftAccount night() {
    ShiftAccount account;
    account.first = *instantIn("2026-03-14T17:55:00Z");
    account.lit = *instantIn("2026-03-14T18:05:00Z");
    account.last = *instantIn("2026-03-15T01:10:00Z");
    account.crew["Maud"] = std::chrono::hours{6};
    account.sapIn = Volume::litre(1600);
    account.draws = account.drawsMeasured = 5;
    account.syrup = Volume::litre(38);
    account.drawsJudged = 5;
    account.drawsInBand = 4;
    account.loads = account.loadsWeighed = 40;
    account.wood = Mass::kilogram(720);
    account.fireInterval = std::chrono::minutes{9};
    return account;
}

TEST(NightStory, TellsTheNightInTheOrderInWhichItWent) {
    const auto story = nightStory(night(), {}, Units::metric);
    ASSERT_EQ(story.size(), 5);
    EXPECT_EQ(story[0],
              QStringLiteral("The fire was lit at 18:05, and the last entry is of 01:10. At the pans: Maud."));
    EXPECT_TRUE(story[1].contains(QStringLiteral("of sap came in, its sugar unknown."))) << story[1].toStdString();
    EXPECT_EQ(story[2], QStringLiteral("5 draws gave 38\u00a0L of syrup; in the band, by the probe: 4 of 5."));
    EXPECT_EQ(story[3], QStringLiteral("40 loads of wood, 720\u00a0kg, one every 9\u00a0min."));
    EXPECT_EQ(story[4], QStringLiteral("There was no alarm."));
}

TEST(NightStory, SaysAtLeastWhereOnlyAPartWasMeasuredAndNothingOfWhatIsNotKnown) {
    ShiftAccount account = night();
    account.lit.reset();
    account.drawsMeasured = 3;
    account.loadsWeighed = 0;
    account.fireInterval.reset();
    account.sapIn.reset();
    account.alarms[Alarm::fire_overdue] = 2;
    const auto story = nightStory(account, {}, Units::metric);
    ASSERT_EQ(story.size(), 4);
    EXPECT_TRUE(story[0].startsWith(QStringLiteral("Nobody said when the fire was lit")));
    EXPECT_TRUE(story[1].contains(QStringLiteral("at least 38\u00a0L"))) << story[1].toStdString();
    EXPECT_EQ(story[2], QStringLiteral("40 loads of wood."));
    EXPECT_TRUE(story[3].contains(QStringLiteral("(2×)"))) << story[3].toStdString();
}

TEST(NightStory, TellsTheUsualErrorOfTheForecast) {
    std::vector<DrawScore> scores(3);
    scores[0].tenBefore = Duration{60};
    scores[1].tenBefore = Duration{-120};
    scores[2].tenBefore = Duration{600};
    const auto story = nightStory(night(), scores, Units::metric);
    EXPECT_TRUE(story.contains(QStringLiteral("Ten minutes before a draw the forecast was usually off by 2.0 min.")));
}

} // namespace
} // namespace panside
