#include "ui/fuel/fuel_view.h"

#include "tests/ui/board/scenes.h"
#include "ui/fuel/fuel_screen.h"

#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

Picture known() {
    Picture picture = scenes::calm();
    picture.callMoved = CallMoved{picture.at, Duration{540}, Duration{480}, Duration{520}};
    picture.fireDue = Duration{100};
    picture.fuel.tank = Volume::litre(800);
    picture.fuel.burnOut = Duration{2700};
    picture.sapLeft = Duration{4 * 3600};
    picture.keepBack = Volume::litre(150);
    picture.lastLoad = Range{Duration{10800}, Duration{11700}, Duration{12600}};
    picture.fuel.end = EndBasis{.tank = Volume::litre(800),
                                .use = VolumeFlow::litrePerHour(200),
                                .useSd = VolumeFlow::litrePerHour(10),
                                .steam = VolumeFlow::litrePerHour(196),
                                .pans = Area::squareMetre(2),
                                .depth = Length::millimetre(40),
                                .burnOut = Duration{2700}};
    picture.fuel.hour = HeatAccount{.fuel = Energy::joule(1000e6),
                                    .boiling = Energy::joule(500e6),
                                    .stackLoss = Energy::joule(250e6),
                                    .wood = Mass::kilogram(70),
                                    .over = Duration{3600}};
    return picture;
}

TEST(FuelView, SaysWhyTheCallMoved) {
    EXPECT_TRUE(fuelView(known(), Units::us)
                    .call.contains(QString::fromUtf8("boil sags 9\u00a0min after loading; call moved to 8\u00a0min")));
}

TEST(FuelView, ShowsWhatTheBalanceLeavesOver) {
    const auto view = fuelView(known(), Units::metric);
    ASSERT_EQ(view.heat.size(), 4U);
    EXPECT_EQ(view.heat[1].value, QString::fromUtf8("500\u00a0MJ, 50\u00a0%"));
    EXPECT_EQ(view.heat[3].value, QString::fromUtf8("250\u00a0MJ, 25\u00a0%"));
}

QString valueOf(const std::vector<FuelLine>& lines, const char* label) {
    for (const FuelLine& line : lines)
        if (line.label == QString::fromUtf8(label))
            return line.value;
    return {};
}

// 800 L less 80 + 73.5 L kept back, at 200 L/h: 3 h 14 min. 400 L more put it off by two hours.
TEST(FuelView, PlansTheEndAndWhatWouldChangeIt) {
    const auto view = fuelView(known(), Units::metric);
    ASSERT_TRUE(view.plan);
    EXPECT_TRUE(view.plan->headline.contains(QString::fromUtf8("3\u00a0h\u00a014")))
        << view.plan->headline.toStdString();
    EXPECT_EQ(valueOf(view.plan->lines, "keep back for the pans"), QString::fromUtf8("154\u00a0L"));
    EXPECT_TRUE(
        valueOf(view.plan->changes, "400\u00a0L more sap").contains(QString::fromUtf8("2\u00a0h\u00a000 later")));
    EXPECT_TRUE(valueOf(view.plan->changes, "fired 10 % harder").contains(QStringLiteral("sooner")));
}

TEST(FuelView, AskingForNothingChangesNothing) {
    const auto view = fuelView(known(), Units::metric, {.steps = {.sap = 0, .fire = 0}});
    ASSERT_TRUE(view.plan);
    EXPECT_FALSE(view.plan->withSap || view.plan->withFire);
    EXPECT_EQ(view.plan->changes.front().value, QStringLiteral("as it is"));
}

TEST(FuelView, CountsTheWoodInMoneyAndInNights) {
    Picture picture = known();
    picture.fuel.cords = 0.5;
    picture.fuel.cordPerHour = 0.1;
    picture.syrupOut = Volume::litre(50);
    picture.lastLoad = Range{Duration{4 * 3600}, Duration{5 * 3600}, Duration{6 * 3600}};
    const auto view = fuelView(picture, Units::metric, {.pricePerCord = 200.0, .pile = true, .pileCords = 5.0});
    EXPECT_TRUE(valueOf(view.yield, "what the wood cost").contains(QStringLiteral("100.00")));
    EXPECT_TRUE(valueOf(view.yield, "what the wood cost").contains(QStringLiteral("2.00 a L")));
    EXPECT_EQ(valueOf(view.yield, "left of the pile"), QStringLiteral("5.0 cords, 5.0 nights like this"));
    EXPECT_EQ(valueOf(fuelView(picture, Units::metric, {.pile = true}).yield, "left of the pile"),
              QStringLiteral("not known: no journal to count from"));
}

TEST(FuelView, SaysWhereTheSugarIs) {
    Picture picture = known();
    picture.fuel.sugar = SugarAccount{.in = Mass::kilogram(40), .out = Mass::kilogram(31)};
    EXPECT_EQ(valueOf(fuelView(picture, Units::metric).yield, "sugar in, out, in the pans"),
              QString::fromUtf8("40, 31, 9.0\u00a0kg"));
}

TEST(FuelView, SaysWhoseTurnItIs) {
    Picture picture = known();
    picture.turn = "Ansel";
    EXPECT_TRUE(fuelView(picture, Units::us).call.contains(QStringLiteral("Ansel's turn")));
}

TEST(FuelView, WithoutATankSaysWhyThereIsNoPlan) {
    Picture picture = known();
    picture.fuel.end.reset();
    picture.why = {{Shown::sapLeftS, Reason::noTankLevel}};
    const auto view = fuelView(picture, Units::us);
    EXPECT_FALSE(view.plan);
    EXPECT_FALSE(view.noPlan.isEmpty());
}

TEST(FuelView, AfterTheShutdownAsksForTheLastLook) {
    Picture picture = known();
    picture.fuel.lastLook = Duration{-5};
    EXPECT_EQ(fuelView(picture, Units::us).caution, QStringLiteral("Take the last look now: roof, fire, pans."));
}

TEST(FuelScreen, AnswersWhatIfByMouse) {
    ShiftTrace trace;
    scenes::fillTrace(trace);
    FuelScreen screen;
    screen.resize(1366, 768);
    screen.wear({Measure{}, Look::day});
    screen.display(fuelView(known(), Units::us), trace, known().at);
    screen.turnTo(FuelScreen::Face::plan);
    screen.show();
    const PlanSteps from = screen.steps();
    const auto click = [&](const char* name) {
        auto* key = screen.findChild<QWidget*>(QString::fromLatin1(name));
        EXPECT_TRUE(key && key->isVisible()) << name;
        QTest::mouseClick(key, Qt::LeftButton);
        return screen.steps();
    };
    EXPECT_EQ(click("lessSap"), (PlanSteps{.sap = from.sap - 1, .fire = from.fire}));
    EXPECT_EQ(click("moreSap"), from);
    EXPECT_EQ(click("softerFire"), (PlanSteps{.sap = from.sap, .fire = from.fire - 1}));
    EXPECT_EQ(click("harderFire"), from);
}

TEST(FuelScreen, AnswersWhatIfByKeyAndTurnsToTheAccount) {
    ShiftTrace trace;
    scenes::fillTrace(trace);
    FuelScreen screen;
    QSignalSpy changed{&screen, &FuelScreen::stepsChanged};
    screen.resize(1366, 768);
    screen.wear({Measure{}, Look::day});
    screen.display(fuelView(known(), Units::us), trace, known().at);
    screen.show();
    QTest::keyClick(&screen, Qt::Key_Up);
    EXPECT_EQ(changed.count(), 0) << "the account asks nothing";
    QTest::keyClick(&screen, Qt::Key_P);
    QTest::keyClick(&screen, Qt::Key_Up);
    QTest::keyClick(&screen, Qt::Key_Left);
    EXPECT_EQ(changed.count(), 2);
    EXPECT_EQ(screen.steps(), (PlanSteps{.sap = 3, .fire = 1}));
    for (int i = 0; i < 100; ++i)
        QTest::keyClick(&screen, Qt::Key_Down);
    EXPECT_EQ(screen.steps().sap, leastSap);
    QTest::keyClick(&screen, Qt::Key_P);
    EXPECT_EQ(screen.face(), FuelScreen::Face::account);
}

TEST(FuelScreen, PaintsAtBothSizesByDayAndNightAndIsLeftByEscape) {
    ShiftTrace trace;
    scenes::fillTrace(trace);
    FuelScreen screen;
    QSignalSpy left{&screen, &FuelScreen::left};
    for (const Look look : {Look::day, Look::night})
        for (const auto face : {FuelScreen::Face::account, FuelScreen::Face::plan})
            for (const QSize size : {QSize{1366, 768}, QSize{1920, 1080}}) {
                screen.resize(size);
                screen.turnTo(face);
                screen.wear({Measure{}, look});
                screen.display(fuelView(known(), Units::us), trace, known().at);
                const QImage image = screen.grab().toImage();
                QSet<QRgb> inks;
                for (int x = 0; x < image.width(); x += 2)
                    inks.insert(image.pixel(x, image.height() / 4));
                EXPECT_GT(inks.size(), 1) << "nothing was drawn";
            }
    EXPECT_FALSE(screen.accessibleDescription().isEmpty());
    screen.show();
    QTest::keyClick(&screen, Qt::Key_Escape);
    EXPECT_EQ(left.count(), 1);
}

} // namespace
} // namespace panside
