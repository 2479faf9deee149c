// The page of the press by keys, with the cursor where it begins: in the gauge's line.
#include "ui/filter/filter_picture.h"
#include "ui/filter/filter_screen.h"
#include "ui/look/typed_line.h"

#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

TEST(FilterScreen, AKeyOfThePageIsNoFigureOfTheGauge) {
    FilterScreen screen;
    ListView view;
    view.keys = {{Qt::Key_E, QStringLiteral("end"), QStringLiteral("End the run")}};
    screen.display(view, {}, true);
    screen.show();
    auto* gauge = screen.findChild<TypedLine*>(QStringLiteral("gauge"));
    ASSERT_NE(gauge, nullptr);
    QSignalSpy pressed{&screen, &FilterScreen::pressed}, typed{&screen, &FilterScreen::gaugeTyped};
    QTest::keyClicks(gauge, QStringLiteral("12"));
    QTest::keyClick(gauge, Qt::Key_E);
    ASSERT_EQ(pressed.size(), 1);
    EXPECT_EQ(pressed[0][0].toInt(), Qt::Key_E);
    EXPECT_EQ(gauge->text(), QStringLiteral("12"));
    QTest::keyClick(gauge, Qt::Key_Return);
    ASSERT_EQ(typed.size(), 1);
    EXPECT_EQ(typed[0][0].toString(), QStringLiteral("12"));
    QTest::keyClick(&screen, Qt::Key_E);
    EXPECT_EQ(pressed.size(), 2) << "once each, wherever the cursor is";
}

// A glove has no keyboard: the touched line brings digits, and the key beside it keeps them.
TEST(FilterScreen, TakesThePressureByTouchAlone) {
    FilterScreen screen;
    screen.wear({}, QStringLiteral("psi"));
    screen.display({}, {}, false);
    screen.show();
    auto* digit = screen.findChild<QWidget*>(QStringLiteral("pad_7"));
    ASSERT_NE(digit, nullptr);
    EXPECT_FALSE(digit->isVisible()) << "nothing is typed while no run goes on";
    screen.display({}, {}, true);
    EXPECT_FALSE(digit->isVisible()) << "a keyboard wants the room for the run";
    auto* gauge = screen.findChild<QWidget*>(QStringLiteral("gauge"));
    QTest::mouseClick(gauge, Qt::LeftButton);
    ASSERT_TRUE(digit->isVisible());
    QSignalSpy typed{&screen, &FilterScreen::gaugeTyped};
    for (const char* touched : {"pad_1", "pad_7", "keepGauge"})
        QTest::mouseClick(screen.findChild<QWidget*>(QString::fromLatin1(touched)), Qt::LeftButton);
    ASSERT_EQ(typed.size(), 1);
    EXPECT_EQ(typed[0][0].toString(), QStringLiteral("17"));
    EXPECT_FALSE(digit->isVisible());
}

} // namespace
} // namespace panside
