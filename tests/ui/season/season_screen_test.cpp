#include "ui/season/season_screen.h"

#include "core/boil/shift_log.h"

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>
#include <algorithm>
#include <gtest/gtest.h>

namespace panside {
namespace {

std::vector<SeasonShift> nights(int count) {
    std::vector<SeasonShift> shifts;
    const Instant begins = instantIn("2026-03-01T22:00:00Z").value();
    for (int i = 0; i < count; ++i) {
        ShiftAccount account;
        account.first = begins + std::chrono::days{i};
        account.last = account.first + std::chrono::hours{6};
        account.draws = account.drawsMeasured = 5;
        account.syrup = Volume::litre(20 + (i * 7) % 13);
        account.crew[i % 2 ? "Maud" : "Ansel"] = std::chrono::hours{6};
        shifts.push_back({account.first, false, account});
    }
    return shifts;
}

class SeasonScreenTest : public ::testing::Test {
protected:
    SeasonScreenTest() {
        screen_.resize(1366, 768);
        screen_.wear(Dress{});
        screen_.display(nights(8));
        screen_.show();
    }
    void press(Qt::Key key) { QTest::keyClick(screen_.findChild<QWidget*>(QStringLiteral("seasonTable")), key); }
    QString said(const char* label) { return screen_.findChild<QLabel*>(QString::fromLatin1(label))->text(); }
    SeasonScreen screen_;
};

TEST_F(SeasonScreenTest, ShowsTheNewestSeasonTheLatestNightChosen) {
    EXPECT_EQ(screen_.choice().year, 2026);
    EXPECT_EQ(screen_.table().lines.size(), 8U);
    EXPECT_EQ(screen_.chosen(), instantIn("2026-03-08T22:00:00Z"));
}

TEST_F(SeasonScreenTest, OpensTheChosenShiftByEnter) {
    std::optional<Instant> opened;
    QObject::connect(&screen_, &SeasonScreen::openWanted, [&](Instant shift) { opened = shift; });
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(opened, instantIn("2026-03-07T22:00:00Z"));
}

TEST_F(SeasonScreenTest, SortsByTheChosenColumnAndBackwards) {
    press(Qt::Key_O); // syrup is the column at first
    EXPECT_EQ(screen_.choice().sortBy, SeasonFigure::syrup);
    EXPECT_TRUE(screen_.choice().falling);
    press(Qt::Key_O);
    EXPECT_FALSE(screen_.choice().falling);
    press(Qt::Key_Left);
    press(Qt::Key_O);
    EXPECT_EQ(screen_.choice().sortBy, SeasonFigure::sapSugar);
}

TEST_F(SeasonScreenTest, FiltersAsItIsTypedAndForgetsByEscape) {
    press(Qt::Key_N);
    auto* filter = screen_.findChild<QLineEdit*>(QStringLiteral("filterText"));
    ASSERT_TRUE(filter->isVisible());
    QTest::keyClicks(filter, QStringLiteral("maud"));
    EXPECT_EQ(screen_.table().lines.size(), 4U);
    QTest::keyClick(filter, Qt::Key_Return);
    EXPECT_TRUE(filter->isVisible()); // as long as it leaves something out
    press(Qt::Key_N);
    QTest::keyClick(filter, Qt::Key_Escape);
    EXPECT_EQ(screen_.table().lines.size(), 8U);
    EXPECT_FALSE(filter->isVisible());
}

TEST_F(SeasonScreenTest, LaysTwoMarkedShiftsSideBySide) {
    press(Qt::Key_B);
    EXPECT_EQ(screen_.leaf(), SeasonScreen::Leaf::table);
    EXPECT_TRUE(said("said").contains(QStringLiteral("Mark two")));
    press(Qt::Key_Space);
    press(Qt::Key_Down);
    press(Qt::Key_Space);
    press(Qt::Key_B);
    EXPECT_EQ(screen_.leaf(), SeasonScreen::Leaf::beside);
    auto* beside = screen_.findChild<QTableWidget*>(QStringLiteral("besideTable"));
    EXPECT_GT(beside->rowCount(), 10);
    EXPECT_EQ(beside->columnCount(), 4);
    press(Qt::Key_Escape);
    EXPECT_EQ(screen_.leaf(), SeasonScreen::Leaf::table);
}

TEST_F(SeasonScreenTest, ChoosesColumnsByKeys) {
    const auto before = screen_.choice().columns;
    press(Qt::Key_K);
    ASSERT_EQ(screen_.leaf(), SeasonScreen::Leaf::columns);
    auto* list = screen_.findChild<QListWidget*>(QStringLiteral("columnList"));
    QTest::keyClick(list, Qt::Key_Space); // hours, the first, goes
    QTest::keyClick(list, Qt::Key_Return);
    EXPECT_EQ(screen_.leaf(), SeasonScreen::Leaf::table);
    EXPECT_EQ(screen_.choice().columns.size(), before.size() - 1);
    EXPECT_NE(screen_.choice().columns.front(), SeasonFigure::hours);
}

TEST_F(SeasonScreenTest, TurnsToWhatPaysToTheForecastAndBackByKeys) {
    screen_.turnTo(SeasonScreen::Leaf::tuning);
    EXPECT_EQ(screen_.leaf(), SeasonScreen::Leaf::tuning);
    const auto title = said("tuningTitle");
    press(Qt::Key_T); // the other question
    EXPECT_NE(said("tuningTitle"), title);
    screen_.turnTo(SeasonScreen::Leaf::calibration);
    EXPECT_EQ(screen_.leaf(), SeasonScreen::Leaf::calibration);
    press(Qt::Key_Escape);
    EXPECT_EQ(screen_.leaf(), SeasonScreen::Leaf::table);
    QSignalSpy left{&screen_, &SeasonScreen::left};
    press(Qt::Key_Escape);
    EXPECT_EQ(left.count(), 1);
}

TEST_F(SeasonScreenTest, GoesThroughTheSeasonsAndAllOfThem) {
    auto shifts = nights(3);
    SeasonShift old = shifts.front();
    old.id = old.account->first = instantIn("2025-03-09T22:00:00Z").value();
    shifts.insert(shifts.begin(), old);
    screen_.display(shifts);
    press(Qt::Key_Y);
    EXPECT_EQ(screen_.choice().year, 2025);
    EXPECT_EQ(screen_.table().lines.size(), 1U);
    press(Qt::Key_Y);
    EXPECT_FALSE(screen_.choice().year);
    EXPECT_EQ(screen_.table().lines.size(), 4U);
    press(Qt::Key_Y);
    EXPECT_EQ(screen_.choice().year, 2026);
}

TEST_F(SeasonScreenTest, KeepsTheChosenShiftWhileOthersAreWorkedOut) {
    press(Qt::Key_Down);
    const auto chosen = screen_.chosen();
    auto shifts = nights(8);
    shifts[1].account->syrup = Volume::litre(99);
    screen_.display(shifts);
    EXPECT_EQ(screen_.chosen(), chosen);
}

TEST_F(SeasonScreenTest, SaysWhichColumnsWereChosenSoThatTheyCanBeKept) {
    std::vector<SeasonFigure> told;
    QObject::connect(&screen_, &SeasonScreen::columnsChosen,
                     [&](const std::vector<SeasonFigure>& columns) { told = columns; });
    press(Qt::Key_K);
    auto* list = screen_.findChild<QListWidget*>(QStringLiteral("columnList"));
    QTest::keyClick(list, Qt::Key_Space); // the first: hours
    QTest::keyClick(list, Qt::Key_Return);
    ASSERT_FALSE(told.empty());
    EXPECT_EQ(std::count(told.begin(), told.end(), SeasonFigure::hours), 0);
    SeasonScreen next;
    next.setColumns(told);
    EXPECT_EQ(next.choice().columns, told);
    next.setColumns({}); // nothing was kept: as it is
    EXPECT_EQ(next.choice().columns, told);
}

} // namespace
} // namespace panside
