#include "ui/review/review_view.h"

#include "core/boil/shift_log.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

ShiftSummary listedNight(const char* began) {
    ShiftSummary summary;
    summary.shift = {.id = *instantIn(began), .open = false, .imported = false};
    summary.first = summary.shift.id;
    summary.last = summary.first + std::chrono::minutes{485};
    summary.sap = Volume::gallon(410);
    summary.syrup = Volume::gallon(9.2);
    summary.draws = summary.drawsMeasured = 7;
    summary.loads = 58;
    return summary;
}

TEST(ReviewView, TheNewestNightStandsFirst) {
    const auto rows = reviewRows({listedNight("2026-03-13T22:00:00Z"), listedNight("2026-03-14T22:00:00Z")}, Units::us);
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_GT(rows[0].shift, rows[1].shift);
}

TEST(ReviewView, TellsHowLongSapSyrupDrawsAndFirings) {
    const QString story = shiftStory(listedNight("2026-03-14T22:00:00Z"), Units::us);
    for (const QString& told : {QStringLiteral("8\u00a0h\u00a005"), QStringLiteral("410"), QStringLiteral("9.2"),
                                QStringLiteral("7 draws"), QStringLiteral("58 loads")})
        EXPECT_TRUE(story.contains(told)) << told.toStdString() << " in " << story.toStdString();
}

TEST(ReviewView, TheListSaysWhenAndHowMuchSyrup) {
    const auto row = reviewRows({listedNight("2026-03-14T22:00:00Z")}, Units::us).front();
    ASSERT_EQ(row.cells.size(), static_cast<qsizetype>(reviewColumns().size()));
    EXPECT_TRUE(row.cells[0].contains(QStringLiteral("14 Mar 2026"))) << row.cells[0].toStdString();
    EXPECT_TRUE(row.cells[1].startsWith(QStringLiteral("9.2")));
}

TEST(ReviewView, ASumOfWhatWasMeasuredOnlySaysHowMuchThatIs) {
    ShiftSummary summary = listedNight("2026-03-14T22:00:00Z");
    summary.drawsMeasured = 5;
    EXPECT_TRUE(reviewRows({summary}, Units::us).front().cells[1].startsWith(QStringLiteral("≥")));
    EXPECT_TRUE(shiftStory(summary, Units::us).contains(QStringLiteral("5 of 7")));
}

TEST(ReviewView, SyrupThatNobodyMeasuredIsADashNotAZero) {
    ShiftSummary summary = listedNight("2026-03-14T22:00:00Z");
    summary.drawsMeasured = 0;
    EXPECT_EQ(reviewRows({summary}, Units::us).front().cells[1], QStringLiteral("–"));
}

// "%n draw(s)" stood there letter for letter: English has no translation to take its plural from.
TEST(ReviewView, CountsDrawsAndLoadsInPlainWords) {
    ShiftSummary summary = listedNight("2026-03-14T22:00:00Z");
    EXPECT_TRUE(shiftStory(summary, Units::us).contains(QStringLiteral("7 draws")));
    summary.draws = summary.drawsMeasured = 1;
    const QString story = shiftStory(summary, Units::us);
    EXPECT_TRUE(story.contains(QStringLiteral("1 draw ")));
    EXPECT_FALSE(story.contains(QStringLiteral("(s)")));
}

} // namespace
} // namespace panside
