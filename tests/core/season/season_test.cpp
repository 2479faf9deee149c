#include "core/season/season.h"

#include "core/boil/shift_log.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

SeasonShift night(const char* began, double hours, double syrupLitre, double cords) {
    ShiftAccount account;
    account.first = instantIn(began).value();
    account.last = account.first + Duration{hours * 3600};
    account.draws = account.drawsMeasured = 4;
    account.syrup = Volume::litre(syrupLitre);
    account.loads = account.loadsWeighed = 30;
    account.wood = Mass::kilogram(600);
    account.cords = cords;
    return {account.first, false, account};
}

TEST(Season, IsNamedByItsSpring) {
    EXPECT_EQ(seasonOf(instantIn("2026-03-14T18:00:00Z").value()), 2026);
    EXPECT_EQ(seasonOf(instantIn("2025-11-20T18:00:00Z").value()), 2026);
    EXPECT_EQ(seasonOf(instantIn("2026-06-30T23:59:59Z").value()), 2026);
    EXPECT_EQ(seasonOf(instantIn("2026-07-01T00:00:00Z").value()), 2027);
    const std::vector shifts{night("2025-03-01T18:00:00Z", 6, 20, 0.5), night("2026-03-01T18:00:00Z", 6, 20, 0.5)};
    EXPECT_EQ(seasonsOf(shifts), (std::vector{2026, 2025}));
}

TEST(Season, SumsWhatAddsAndDividesSumsWhereItDoesNot) {
    const std::vector shifts{night("2026-03-01T18:00:00Z", 4, 20, 0.5), night("2026-03-02T18:00:00Z", 8, 60, 1)};
    EXPECT_DOUBLE_EQ(totalOf(shifts, SeasonFigure::syrup).told->si, 0.080);
    EXPECT_FALSE(totalOf(shifts, SeasonFigure::syrup).told->atLeast);
    EXPECT_DOUBLE_EQ(totalOf(shifts, SeasonFigure::hours).told->si, 12 * 3600);
    // 80 L of 1.5 cords, not the mean of 40 and 60.
    EXPECT_DOUBLE_EQ(totalOf(shifts, SeasonFigure::syrupPerCord).told->si, 0.080 / 1.5);
}

TEST(Season, WeighsAMeanByTheHours) {
    std::vector shifts{night("2026-03-01T18:00:00Z", 2, 20, 0.5), night("2026-03-02T18:00:00Z", 6, 20, 0.5)};
    shifts[0].account->evaporation = VolumeFlow::litrePerHour(100);
    shifts[1].account->evaporation = VolumeFlow::litrePerHour(200);
    const auto total = totalOf(shifts, SeasonFigure::evaporation);
    EXPECT_NEAR(VolumeFlow::ofSi(total.told->si).litrePerHour(), 175, 1e-9);
    EXPECT_EQ(total.known, 2);
}

TEST(Season, AHoleIsNoZero) {
    std::vector shifts{night("2026-03-01T18:00:00Z", 4, 20, 0.5), night("2026-03-02T18:00:00Z", 4, 0, 0.5)};
    shifts[1].account->drawsMeasured = 0;
    EXPECT_FALSE(figureOf(*shifts[1].account, SeasonFigure::syrup));
    EXPECT_FALSE(figureOf(*shifts[1].account, SeasonFigure::syrupPerCord));
    const auto total = totalOf(shifts, SeasonFigure::syrup);
    EXPECT_EQ(total.known, 1);
    EXPECT_EQ(total.all, 2);
    EXPECT_TRUE(total.told->atLeast);
    EXPECT_FALSE(totalOf(shifts, SeasonFigure::evaporation).told);
    shifts.push_back({instantIn("2026-03-03T18:00:00Z").value(), false, {}}); // not worked out
    EXPECT_EQ(totalOf(shifts, SeasonFigure::draws).known, 2);
    EXPECT_TRUE(totalOf(shifts, SeasonFigure::draws).told->atLeast);
}

TEST(Season, ATotalIsAtLeastSoMuchWhereOneNightIs) {
    std::vector shifts{night("2026-03-01T18:00:00Z", 4, 20, 0.5), night("2026-03-02T18:00:00Z", 4, 20, 0.5)};
    shifts[0].account->drawsMeasured = 3;
    const auto total = totalOf(shifts, SeasonFigure::syrup);
    EXPECT_EQ(total.known, total.all);
    EXPECT_TRUE(total.told->atLeast);
}

TEST(Season, SyrupOfSomeDrawsIsAtLeastSoMuch) {
    auto shift = night("2026-03-01T18:00:00Z", 4, 20, 0.5);
    shift.account->drawsMeasured = 3;
    EXPECT_TRUE(figureOf(*shift.account, SeasonFigure::syrup)->atLeast);
    EXPECT_TRUE(figureOf(*shift.account, SeasonFigure::syrupPerCord)->atLeast);
    shift.account->loadsWeighed = 29; // wood is missing: syrup per cord would look too good
    EXPECT_FALSE(figureOf(*shift.account, SeasonFigure::syrupPerCord));
}

// R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 3 (the score interval without continuity
// correction): 81 of 263 gives 0.2553 to 0.3662, 15 of 148 gives 0.0624 to 0.1605, 0 of 20 gives 0 to 0.1611.
TEST(Season, GivesTheScoreIntervalOfAShare) {
    const struct {
        int hits, trials;
        double low, high;
    } published[] = {{81, 263, 0.2553, 0.3662}, {15, 148, 0.0624, 0.1605}, {0, 20, 0, 0.1611}};
    for (const auto& [hits, trials, low, high] : published) {
        const auto interval = wilsonInterval(static_cast<double>(hits) / trials, trials);
        EXPECT_NEAR(interval.low, low, 5e-5) << hits;
        EXPECT_NEAR(interval.high, high, 5e-5) << hits;
    }
}

TEST(Season, ShowsNoCalibrationWithoutDraws) {
    std::vector shifts{night("2026-03-01T18:00:00Z", 4, 20, 0.5)};
    EXPECT_TRUE(calibrationOf(shifts).levels.empty());
    shifts[0].account->forecast = {10, 1, 5, 9, 8};
    const auto picture = calibrationOf(shifts);
    EXPECT_EQ(picture.draws, 10);
    ASSERT_EQ(picture.levels.size(), 4U);
    for (const auto& level : picture.levels) {
        EXPECT_NEAR(level.share, level.nominal, 1e-12);
        EXPECT_LT(level.low, level.share);
        EXPECT_GT(level.high, level.share);
    }
}

} // namespace
} // namespace panside
