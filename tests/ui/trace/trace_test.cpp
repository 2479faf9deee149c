#include "tests/ui/ledger/house_of.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/trace/trace_picture.h"
#include "ui/trace/trace_screen.h"

#include <QLabel>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

HouseLedger threadHouse() {
    return houseOf({rowIn("2026-03-03T11:00:00Z,moved,4,gal,from=pail 3;to=drum 7"),
                    rowIn("2026-03-04T12:00:00Z,packed,24,,lot=A1;from=drum 7;size=1pt;capped=185degF;brix=66.9"),
                    rowIn("2026-03-05T14:00:00Z,shipped,20,,lot=A1;size=1pt;to=a shop")});
}

QStringList titlesOf(const TraceColumn& column) {
    QStringList titles;
    for (const TraceBox& box : column.boxes)
        titles << box.title;
    return titles;
}

TEST(TraceView, StandsFromLeftToRightWithTheAskedBetweenItsPastAndItsBuyers) {
    const HouseLedger house = threadHouse();
    const auto view = traceView(house.ledger(), traceOf(house.ledger(), "A1").value(), Units::us);
    const auto asked =
        std::find_if(view.columns.begin(), view.columns.end(), [](const auto& one) { return one.asked; });
    ASSERT_NE(asked, view.columns.end());
    EXPECT_EQ(titlesOf(*asked), QStringList{QStringLiteral("A1")});
    EXPECT_EQ(titlesOf(view.columns.back()), QStringList{QStringLiteral("a shop")});
    QStringList vessels;
    for (auto column = view.columns.begin(); column != asked; ++column)
        vessels << titlesOf(*column);
    EXPECT_TRUE(vessels.contains(QStringLiteral("drum 7")));
    EXPECT_TRUE(vessels.contains(QStringLiteral("pail 3")));
    EXPECT_TRUE(view.notes.contains(QStringLiteral("made 24, sold 20, came back 0, destroyed 0, here 4")));
}

class TraceScreenTest : public ::testing::Test {
protected:
    TraceScreenTest() {
        screen_.resize(946, 430);
        screen_.wear(Dress{});
        QObject::connect(&screen_, &TraceScreen::wanted, [this](const QString& name) { wanted_ << name; });
        screen_.offer({QStringLiteral("A1"), QStringLiteral("drum 7")});
        screen_.display(traceView(house_.ledger(), traceOf(house_.ledger(), "A1").value(), Units::us), true);
        screen_.show();
    }
    TypedLine& line() { return *screen_.findChild<TypedLine*>(QStringLiteral("asked")); }
    TracePicture& picture() { return *screen_.findChild<TracePicture*>(); }
    HouseLedger house_ = threadHouse();
    TraceScreen screen_;
    QStringList wanted_;
};

TEST_F(TraceScreenTest, IsAskedByTypingAndByPressing) {
    QTest::keyClicks(&line(), QStringLiteral("drum 7"));
    QTest::keyClick(&line(), Qt::Key_Return);
    QTest::mouseClick(screen_.findChild<Press*>(QStringLiteral("name0")), Qt::LeftButton);
    EXPECT_EQ(wanted_, (QStringList{QStringLiteral("drum 7"), QStringLiteral("A1")}));
}

TEST_F(TraceScreenTest, IsWalkedAlongByTheArrows) {
    QTest::keyClick(&line(), Qt::Key_Down); // out of the field
    ASSERT_TRUE(picture().at());
    EXPECT_EQ(picture().at()->title, QStringLiteral("A1"));
    QTest::keyClick(&picture(), Qt::Key_Left);
    const QString at = picture().at()->asks;
    EXPECT_FALSE(at.isEmpty());
    QTest::keyClick(&picture(), Qt::Key_Return);
    EXPECT_EQ(wanted_, QStringList{at});
}

TEST_F(TraceScreenTest, OffersTheNearNamesOfOneThatIsNone) {
    screen_.refuse(QStringLiteral("A2"), {QStringLiteral("A1")});
    EXPECT_TRUE(screen_.headline().contains(QStringLiteral("A2")));
    QTest::mouseClick(screen_.findChild<Press*>(QStringLiteral("name0")), Qt::LeftButton);
    EXPECT_EQ(wanted_, QStringList{QStringLiteral("A1")});
}

TEST_F(TraceScreenTest, GivesARecallOfALotAlone) {
    QSignalSpy recall{&screen_, &TraceScreen::recallWanted};
    QTest::keyClick(&line(), Qt::Key_Down);
    QTest::keyClick(&picture(), Qt::Key_R);
    EXPECT_EQ(recall.count(), 1);
    screen_.display(traceView(house_.ledger(), traceOf(house_.ledger(), "drum 7").value(), Units::us), false);
    QTest::keyClick(&picture(), Qt::Key_R);
    EXPECT_EQ(recall.count(), 1);
}

} // namespace
} // namespace panside
