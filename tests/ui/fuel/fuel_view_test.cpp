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
    picture.fuel.hour = HeatAccount{.fuel = Energy::joule(1000e6),
                                    .boiling = Energy::joule(500e6),
                                    .stackLoss = Energy::joule(250e6),
                                    .wood = Mass::kilogram(70),
                                    .over = Duration{3600}};
    return picture;
}

TEST(FuelView, SaysWhyTheCallMoved) {
    EXPECT_TRUE(fuelView(known(), Units::us)
                    .call.contains(QStringLiteral("boil sags at 8:40 after loading; call moved to 8:00")));
}

TEST(FuelView, ShowsWhatTheBalanceLeavesOver) {
    const auto view = fuelView(known(), Units::metric);
    ASSERT_EQ(view.heat.size(), 4U);
    EXPECT_EQ(view.heat[1].value, QString::fromUtf8("500\u00a0MJ, 50\u00a0%"));
    EXPECT_EQ(view.heat[3].value, QString::fromUtf8("250\u00a0MJ, 25\u00a0%"));
}

TEST(FuelView, PlansTheEndInHours) {
    const auto view = fuelView(known(), Units::metric);
    ASSERT_TRUE(view.plan);
    EXPECT_DOUBLE_EQ(view.plan->perHour, 200);
    EXPECT_DOUBLE_EQ(view.plan->likely, 3.25);
    EXPECT_DOUBLE_EQ(view.plan->burnOut, 0.75);
}

TEST(FuelView, WithoutATankSaysWhyThereIsNoPlan) {
    Picture picture = known();
    picture.fuel.tank.reset();
    picture.why = {{"sapLeftS", Reason::noTankLevel}};
    const auto view = fuelView(picture, Units::us);
    EXPECT_FALSE(view.plan);
    EXPECT_FALSE(view.noPlan.isEmpty());
}

TEST(FuelView, AfterTheShutdownAsksForTheLastLook) {
    Picture picture = known();
    picture.fuel.lastLook = Duration{-5};
    EXPECT_EQ(fuelView(picture, Units::us).caution, QStringLiteral("Take the last look now: roof, fire, pans."));
}

TEST(FuelScreen, PaintsAtBothSizesByDayAndNightAndIsLeftByEscape) {
    ShiftTrace trace;
    scenes::fillTrace(trace);
    FuelScreen screen;
    QSignalSpy left{&screen, &FuelScreen::left};
    for (const Look look : {Look::day, Look::night})
        for (const QSize size : {QSize{1366, 768}, QSize{1920, 1080}}) {
            screen.resize(size);
            screen.wear({Measure{}, look});
            screen.display(fuelView(known(), Units::us), trace, known().at, Units::us);
            const QImage image = screen.grab().toImage();
            QSet<QRgb> inks;
            for (int x = 0; x < image.width(); x += 2)
                inks.insert(image.pixel(x, image.height() / 4));
            EXPECT_GT(inks.size(), 1) << "nothing was drawn";
        }
    EXPECT_FALSE(screen.accessibleName().isEmpty());
    screen.show();
    QTest::keyClick(&screen, Qt::Key_Escape);
    EXPECT_EQ(left.count(), 1);
}

} // namespace
} // namespace panside
