#include "ui/tank/tank_form.h"

#include "tests/ui/frame/in_front.h"
#include "ui/tank/tank_screen.h"

#include <QLabel>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant tankNow{std::chrono::seconds{1772215200}};

Yard lying() { return {.tank = LyingTank{Length::foot(4), Length::foot(8)}, .pile = {}, .pricePerCord = {}}; }

TEST(Yard, ComesBackAsItWasKept) {
    const TankShape shapes[] = {
        UprightTank{Length::inch(42), Length::inch(60)}, LyingTank{Length::foot(4), Length::foot(8)},
        BoxTank{Length::metre(2), Length::metre(1.1), Length::metre(0.7)},
        TankTable{{{Length::inch(10), Volume::gallon(100)}, {Length::inch(20), Volume::gallon(260)}}}};
    for (const TankShape& shape : shapes) {
        EXPECT_EQ(tankIn(textOf(shape)), shape) << textOf(shape).toStdString();
        for (const Units units : {Units::us, Units::metric}) {
            const auto again = yardOf(formOf({.tank = shape, .pile = {}, .pricePerCord = {}}, units), units);
            ASSERT_TRUE(std::holds_alternative<Yard>(again));
            EXPECT_NEAR(tankDepth(*std::get<Yard>(again).tank)->metre(), tankDepth(shape)->metre(), 1e-4);
        }
    }
    for (const char* wrong : {"", "round 1 2", "lying 1", "lying -1 2", "table 0.1 0.2", "box 1 2 x"})
        EXPECT_FALSE(tankIn(QString::fromLatin1(wrong))) << wrong;
}

// A full cord is 128 cubic feet stacked, 4 by 4 by 8 feet (NIST Handbook 130, method of sale of stove wood; from
// memory): a stack of 16-inch sticks of that face is a third of it.
TEST(Yard, APileIsCountedInFullCords) {
    EXPECT_NEAR((Woodpile{Length::foot(8), Length::foot(4), Length::foot(4)}).cords(), 1, 1e-12);
    EXPECT_NEAR((Woodpile{Length::foot(8), Length::foot(4), Length::inch(16)}).cords(), 1 / 3.0, 1e-12);
}

TEST(Dip, BecomesAVolumeReadByHand) {
    const Dip dip = dipOf(QStringLiteral("24"), lying(), Units::us, {}, false, tankNow);
    ASSERT_TRUE(dip.fact);
    const auto& reading = std::get<Reading>(dip.fact->what);
    EXPECT_TRUE(reading.byHand());
    EXPECT_EQ(reading.series, Series::tank_level);
    // Half of pi r^2 l of 2 by 8 feet, at 7.480519 gallons a cubic foot: 376.0.
    EXPECT_NEAR(reading.volume().gallon(), 376.0, 0.05);
    EXPECT_TRUE(dip.warning.isEmpty());
    EXPECT_EQ(dipOf(QStringLiteral("609,6"), lying(), Units::metric, {}, false, tankNow).fact->what.index(),
              dip.fact->what.index());
}

TEST(Dip, DeeperThanTheTankIsRefusedWithItsDepth) {
    const Dip dip = dipOf(QStringLiteral("50"), lying(), Units::us, {}, false, tankNow);
    EXPECT_FALSE(dip.fact);
    EXPECT_EQ(dip.warning, QString::fromUtf8("The tank is only 48.0\u00a0in deep: dip again, or put its shape right."));
    EXPECT_FALSE(dipOf(QStringLiteral("-1"), lying(), Units::us, {}, false, tankNow).fact);
    EXPECT_FALSE(dipOf(QStringLiteral("knee"), lying(), Units::us, {}, false, tankNow).fact);
    EXPECT_FALSE(dipOf(QStringLiteral("10"), {}, Units::us, {}, false, tankNow).fact);
}

TEST(Dip, ARiseWithoutSapIsSaidAndMayBeKept) {
    Picture picture;
    picture.readings[static_cast<std::size_t>(Series::tank_level)] = ReadingPicture{.si = Volume::gallon(300).si()};
    const Dip risen = dipOf(QStringLiteral("24"), lying(), Units::us, picture, false, tankNow);
    EXPECT_TRUE(risen.fact);
    EXPECT_TRUE(risen.warning.startsWith(QString::fromUtf8("76\u00a0gal more than read before")))
        << risen.warning.toStdString();
    EXPECT_TRUE(dipOf(QStringLiteral("24"), lying(), Units::us, picture, true, tankNow).warning.isEmpty());
    EXPECT_TRUE(dipOf(QStringLiteral("18"), lying(), Units::us, picture, false, tankNow).warning.isEmpty());
}

TEST(TankForm, SaysWhatIsWrongWithAShape) {
    TankForm form{
        .kind = TankKind::table, .sizes = {}, .marks = QStringLiteral("10 100; 20 90"), .pile = {}, .price = {}};
    EXPECT_TRUE(std::holds_alternative<QString>(yardOf(form, Units::us)));
    form.marks = QStringLiteral("10 100; 20 260");
    EXPECT_TRUE(std::holds_alternative<Yard>(yardOf(form, Units::us)));
    form.price = QStringLiteral("dear");
    EXPECT_TRUE(std::holds_alternative<QString>(yardOf(form, Units::us)));
    form.price = QStringLiteral("220");
    EXPECT_EQ(std::get<Yard>(yardOf(form, Units::us)).pricePerCord, 220);
    form.pile = {QStringLiteral("8"), QStringLiteral("4"), QStringLiteral("0")};
    EXPECT_TRUE(std::holds_alternative<QString>(yardOf(form, Units::us)));
}

TEST(TankScreen, TellsThatTheTankRunsOverAndWhatToBoilFirst) {
    TankScreen screen;
    screen.display(lying(), Units::us, {Measure{}, Look::day});
    Picture picture;
    screen.follow(picture, false, tankNow);
    const auto* stands = screen.findChild<QLabel*>(QStringLiteral("stands"));
    ASSERT_TRUE(stands);
    EXPECT_TRUE(stands->text().isEmpty());
    picture.store = {.oldest = Duration{30 * 3600}, .warmest = {}, .fullIn = Duration{1500}};
    screen.follow(picture, false, tankNow);
    EXPECT_TRUE(stands->text().startsWith(QStringLiteral("The feed tank is full in 25")));
    EXPECT_TRUE(stands->text().endsWith(QStringLiteral("boil it first; the syrup may come darker.")));
}

TEST(TankScreen, DipsByKeysAlone) {
    TankScreen screen;
    QSignalSpy left{&screen, &TankScreen::left};
    std::vector<Fact> kept;
    QObject::connect(&screen, &TankScreen::dipped, [&](const Fact& fact) { kept.push_back(fact); });
    screen.resize(1366, 768);
    screen.display(lying(), Units::us, {Measure{}, Look::day});
    screen.follow({}, false, tankNow);
    screen.show();
    auto* dip = screen.findChild<QLineEdit*>(QStringLiteral("dip"));
    ASSERT_TRUE(dip);
    screen.setFocus();
    EXPECT_EQ(screen.focusWidget(), dip) << "the page opens at the one field that matters";
    QTest::keyClicks(dip, QStringLiteral("50"));
    EXPECT_TRUE(screen.findChild<QLabel*>(QStringLiteral("odd"))->text().contains(QStringLiteral("only")));
    QTest::keyClick(dip, Qt::Key_Return);
    EXPECT_TRUE(kept.empty());
    dip->clear();
    QTest::keyClicks(dip, QStringLiteral("24"));
    QTest::keyClick(dip, Qt::Key_Return);
    ASSERT_EQ(kept.size(), 1U);
    QTest::keyClick(&screen, Qt::Key_Escape);
    EXPECT_EQ(left.count(), 1);
}

TEST(TankScreen, AYardIsKeptWhenItsLastMeasureIsTyped) {
    TankScreen screen;
    std::vector<Yard> yards;
    QObject::connect(&screen, &TankScreen::yardWanted, [&](const Yard& yard) { yards.push_back(yard); });
    screen.display({}, Units::us, {Measure{}, Look::night});
    screen.show();
    QTest::keyClicks(screen.findChild<QLineEdit*>(QStringLiteral("size0")), QStringLiteral("4"));
    QTest::keyClick(screen.findChild<QLineEdit*>(QStringLiteral("size0")), Qt::Key_Return);
    EXPECT_TRUE(yards.empty());
    QTest::keyClicks(screen.findChild<QLineEdit*>(QStringLiteral("size1")), QStringLiteral("5"));
    QTest::keyClick(screen.findChild<QLineEdit*>(QStringLiteral("size1")), Qt::Key_Return);
    ASSERT_FALSE(yards.empty());
    EXPECT_EQ(yards.back().tank, TankShape(UprightTank{Length::foot(4), Length::foot(5)}));
}

// The page is built anew when something of it is kept: whoever tabs on types into the next field, not into nothing.
TEST(TankScreen, TabGoesOnWhereSomethingWasKept) {
    TankScreen screen;
    QObject::connect(&screen, &TankScreen::yardWanted, [&](const Yard& yard) {
        screen.display(yard, Units::us, {Measure{}, Look::day});
    });
    screen.display({}, Units::us, {Measure{}, Look::day});
    EXPECT_TRUE(inFront(screen));
    screen.findChild<QLineEdit*>(QStringLiteral("pile0"))->setFocus();
    for (const char* words : {"16", "4", "18", "240"}) {
        ASSERT_TRUE(QApplication::focusWidget());
        QTest::keyClicks(QApplication::focusWidget(), QLatin1String(words));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    EXPECT_EQ(screen.findChild<QLineEdit*>(QStringLiteral("price"))->text().left(3), QStringLiteral("240"));
}

TEST(TankScreen, AnotherLightLeavesWhatIsHalfTyped) {
    TankScreen screen;
    screen.display({}, Units::us, {Measure{}, Look::day});
    EXPECT_TRUE(inFront(screen));
    screen.findChild<QLineEdit*>(QStringLiteral("price"))->setFocus();
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("26"));
    screen.display({}, Units::us, {Measure{}, Look::night});
    ASSERT_TRUE(QApplication::focusWidget());
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("0"));
    EXPECT_EQ(screen.findChild<QLineEdit*>(QStringLiteral("price"))->text(), QStringLiteral("260"));
}

TEST(TankScreen, AnotherYardFillsTheFieldsAnew) {
    TankScreen screen;
    const Dress dress{Measure{}, Look::day};
    screen.display(lying(), Units::us, dress);
    screen.display({.tank = BoxTank{Length::foot(6), Length::foot(3), Length::foot(2)}, .pile = {}, .pricePerCord = {}},
                   Units::us, dress);
    QStringList sizes;
    for (const char* field : {"size0", "size1", "size2"})
        if (const auto* edit = screen.findChild<QLineEdit*>(QLatin1String(field)))
            sizes << edit->text();
    EXPECT_EQ(sizes, (QStringList{"6", "3", "2"}));
}

TEST(TankScreen, APileIsKeptWithTheTimeItWasMeasured) {
    TankScreen screen;
    std::vector<Yard> yards;
    QObject::connect(&screen, &TankScreen::yardWanted, [&](const Yard& yard) { yards.push_back(yard); });
    screen.display({}, Units::us, {Measure{}, Look::night});
    screen.show();
    const auto type = [&screen](const char* field, const char* words) {
        auto* edit = screen.findChild<QLineEdit*>(QLatin1String(field));
        edit->selectAll();
        QTest::keyClicks(edit, QLatin1String(words));
        QTest::keyClick(edit, Qt::Key_Return);
    };
    type("pile0", "16");
    type("pile1", "4");
    type("pile2", "48");
    ASSERT_FALSE(yards.empty());
    ASSERT_TRUE(yards.back().measured);
    // Naming its price in another night, with other units, measures nothing anew: not even by what rounding leaves.
    Yard measured = yards.back();
    measured.measured = tankNow;
    measured.pile->length = Length::metre(3.7);
    screen.display(measured, Units::us, {Measure{}, Look::night});
    type("price", "240");
    EXPECT_EQ(yards.back().pricePerCord, 240);
    EXPECT_EQ(yards.back().measured, tankNow);
    EXPECT_EQ(yards.back().pile, measured.pile);
    // Stacked again to the same length, and typed again: a new measure.
    screen.display(yards.back(), Units::us, {Measure{}, Look::night});
    type("pile0", "16");
    EXPECT_GT(*yards.back().measured, tankNow);
}

} // namespace
} // namespace panside
