#include "tests/ui/board/scenes.h"
#include "tests/ui/pictures/said_by.h"
#include "ui/chart/rise_chart.h"

#include <QAbstractButton>
#include <QApplication>
#include <QImage>
#include <QKeyEvent>
#include <QPointingDevice>
#include <QScreen>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

Thinned::Sample sample(double second, float value, Trust trust = Trust::good, bool gap = false) {
    return {scenes::evening(second), value, trust, gap};
}

TEST(RiseChart, OfANightThatNobodyReadSaysSoInsteadOfEmptyAxes) {
    RiseChart chart;
    chart.wear({});
    chart.resize(900, 400);
    chart.showWhole();
    const auto said = [&] {
        QString all;
        for (const Word& word : wordsOn(chart))
            all += word.text + u' ';
        return all;
    };
    EXPECT_TRUE(said().contains(QStringLiteral("Nobody read the syrup pan"))) << said().toStdString();
    chart.trace().add(RisePoint{scenes::evening(60), 2.F, Trust::good, false});
    EXPECT_FALSE(said().contains(QStringLiteral("Nobody read"))) << said().toStdString();
}

TEST(Thinned, LosesNoPeak) {
    Thinned series;
    series.setColumn(std::chrono::seconds{60});
    for (int t = 0; t < 3600; ++t)
        series.add(sample(t, t == 1234 ? 9.5F : t == 2222 ? -3.F : 1.F));
    EXPECT_EQ(series.columns().size(), 60);
    float least = 1, greatest = 1;
    for (const auto& column : series.columns()) {
        least = std::min(least, column.least);
        greatest = std::max(greatest, column.greatest);
    }
    EXPECT_EQ(greatest, 9.5F);
    EXPECT_EQ(least, -3.F);
}

TEST(Thinned, KeptAsDataArriveIsTheSameAsMadeAnew) {
    Thinned kept, anew;
    kept.setColumn(std::chrono::seconds{7});
    for (int t = 0; t < 2000; ++t) {
        const auto one = sample(t, static_cast<float>(t % 37), t % 500 < 20 ? Trust::doubtful : Trust::good, t == 900);
        kept.add(one);
        anew.add(one);
    }
    anew.setColumn(std::chrono::seconds{7});
    EXPECT_EQ(kept.columns(), anew.columns());
}

TEST(Thinned, GivesBackTheSampleNearest) {
    Thinned series;
    for (int t = 0; t < 100; t += 10)
        series.add(sample(t, static_cast<float>(t)));
    EXPECT_EQ(series.nearest(scenes::evening(-50)).value, 0);
    EXPECT_EQ(series.nearest(scenes::evening(34)).value, 30);
    EXPECT_EQ(series.nearest(scenes::evening(36)).value, 40);
    EXPECT_EQ(series.nearest(scenes::evening(5000)).value, 90);
}

// A console that was started again draws what the one before it drew, and forgets what a late fact undid.
TEST(ShiftTrace, HoldsEvaporationAlsoOfWhatItDidNotSee) {
    Boil boil;
    ShiftTrace live;
    FactId id = 0;
    const auto read = [&](double t, Series series, double si, Unit unit) {
        boil.add(id++, Fact{scenes::evening(t), Reading{series, si, unit, ""}});
    };
    read(0, Series::pressure, 101300, Unit::kPa);
    for (int t = 0; t < 4800; t += 10) {
        read(t, Series::syrup_pan, Temperature::celsius(102 + 0.01 * (t % 7)).kelvin(), Unit::degC);
        read(t, Series::tank_level, Volume::litre(1500 - 200.0 * t / 3600).si(), Unit::L);
        live.follow(boil.fold());
    }
    const auto ratesOf = [](const ShiftTrace& trace) {
        std::vector<float> rates;
        for (std::size_t i = 0; i < trace.evaporation().size(); ++i)
            rates.push_back(trace.evaporation().sample(i).value);
        return rates;
    };
    const auto opened = [&] {
        ShiftTrace trace;
        trace.follow(boil.fold());
        return ratesOf(trace);
    };
    ASSERT_FALSE(ratesOf(live).empty());
    EXPECT_EQ(ratesOf(live), opened());
    read(3000, Series::tank_level, Volume::litre(900).si(), Unit::L);
    live.follow(boil.fold());
    EXPECT_EQ(ratesOf(live), opened());
}

// A new second paints what stands at now and after it; what is left on the screen is what a whole painting would show.
TEST(RiseChart, WhatASecondChangesIsAllThatIsPaintedForIt) {
    RiseChart chart;
    chart.resize(900, 420);
    chart.wear({});
    chart.show();
    Boil boil;
    FactId id = 0;
    int t = 0;
    const auto second = [&] {
        const double rise = 3 + 1.5 * std::sin(t / 200.0);
        boil.add(id++, Fact{scenes::evening(t), Reading{Series::syrup_pan, 273.15 + 100 + rise, Unit::degC, ""}});
        boil.add(id++, Fact{scenes::evening(t), Reading{Series::stack, 650 + 20 * std::sin(t / 90.0), Unit::degC, ""}});
        boil.add(id++, Fact{scenes::evening(t), Reading{Series::tank_level, 1.5 - t / 18000.0, Unit::L, ""}});
        chart.follow(boil.fold());
        chart.display(boil.pictureAt(scenes::evening(t)));
        ++t;
    };
    boil.add(id++, Fact{scenes::evening(0), Reading{Series::pressure, 101300, Unit::kPa, ""}});
    boil.add(id++, Fact{scenes::evening(0), Lit{}});
    while (t < 3000)
        second();
    QApplication::processEvents();
    int whole = 0;
    for (int i = 0; i < 60; ++i) {
        second();
        const int before = chart.wholePaintings();
        chart.redraw();
        QApplication::processEvents();
        whole += chart.wholePaintings() - before;
        const QImage onScreen =
            chart.screen()->grabWindow(chart.winId()).toImage().convertToFormat(QImage::Format_RGB32);
        const QImage anew = chart.grab().toImage().convertToFormat(QImage::Format_RGB32);
        ASSERT_EQ(onScreen.size(), anew.size());
        ASSERT_EQ(onScreen, anew) << t;
    }
    EXPECT_LT(whole, 20) << "a column of pixels holds some seconds";
}

TEST(TimeScale, PutsNowBeforeTheRightFifth) {
    const Instant now = scenes::evening(7200);
    const TimeScale scale = scaleFor(now, Duration{9000}, 0.8, 100, 900);
    EXPECT_NEAR(scale.x(now), 100 + 0.8 * 900, 1);
    EXPECT_NEAR(secondsBetween(scale.begin(), scale.end()), 9000, 10);
    EXPECT_NEAR(secondsBetween(scale.at(scale.x(now)), now), 0, 0.01);
}

TEST(TimeScale, StepsAreRound) {
    EXPECT_EQ(roundSteps(0, 10, 5), (std::vector<double>{0, 2, 4, 6, 8, 10}));
    EXPECT_TRUE(roundSteps(3, 3, 5).empty());
}

class Chart : public testing::Test {
protected:
    Chart() {
        chart.wear({Measure{96}, Look::day});
        chart.resize(900, 620);
        scenes::fillTrace(chart.trace());
        chart.display(scenes::calm());
    }
    // How many pixels of this colour stand in a column of the picture.
    int inkAt(const QImage& image, double x, const QColor& ink, int bottom) {
        int count = 0;
        for (int y = 40; y < bottom; ++y)
            count += image.pixelColor(static_cast<int>(x), y) == ink ? 1 : 0;
        return count;
    }
    RiseChart chart;
    const Inks& inks = inksOf(Look::day);
};

TEST_F(Chart, DrawsNoLineAcrossAGap) {
    for (int i = 0; i < 3; ++i)
        chart.zoom(1 / 1.5);
    const QImage image = chart.grab().toImage();
    const TimeScale& time = chart.timeScale();
    EXPECT_EQ(inkAt(image, time.x(scenes::evening(4150)), inks.trace, 440), 0); // silent from 4000 to 4300
    EXPECT_GT(inkAt(image, time.x(scenes::evening(3500)), inks.trace, 440), 0);
}

TEST_F(Chart, DrawsNoSolidLineInTheFuture) {
    const QImage image = chart.grab().toImage();
    const int from = static_cast<int>(chart.timeScale().x(scenes::calm().at)) + 20;
    const QColor panel = inks.panel;
    for (int y = 40; y < 430; ++y) { // the field of the rise without its scale's faint grid
        int filled = 0;
        for (int x = from; x < 890; ++x) {
            const QColor pixel = image.pixelColor(x, y);
            filled += pixel != panel && pixel != inks.faint ? 1 : 0;
        }
        EXPECT_LT(filled, 0.95 * (890 - from)) << "row " << y;
    }
}

TEST_F(Chart, PointingTellsTimeValueTrustAndWhatWasSaid) {
    chart.pointAt(scenes::evening(6200));
    const QString words = chart.pointedWords();
    for (const char* part : {"19:13", "rise", "good", "stack", "hydrometer 66.2"})
        EXPECT_TRUE(words.contains(part)) << words.toStdString();
    chart.pointAt(scenes::evening(4150));
    EXPECT_TRUE(chart.pointedWords().contains("nothing was read"));
    chart.pointAt(scenes::evening(9100));
    EXPECT_TRUE(chart.pointedWords().contains("in doubt"));
    chart.pointAt(scenes::evening(3 * 3600 + 600));
    EXPECT_TRUE(chart.pointedWords().contains(QString::fromUtf8("in 10\u00a0min · the draw comes in")))
        << chart.pointedWords().toStdString();
}

TEST_F(Chart, LeftInThePastItShowsTheWayBackAndComesBackByItself) {
    auto* now = chart.findChild<QAbstractButton*>(QStringLiteral("chartNow"));
    EXPECT_TRUE(now->isHidden());
    chart.setPatience(std::chrono::milliseconds{200});
    chart.pan(-0.5);
    EXPECT_FALSE(now->isHidden());
    EXPECT_FALSE(chart.followsNow());
    EXPECT_TRUE(QTest::qWaitFor([&] { return chart.followsNow(); }, 5000)) << "the fire is lit";
    EXPECT_TRUE(now->isHidden());
    chart.pan(-0.5);
    now->click();
    EXPECT_TRUE(chart.followsNow());
}

TEST_F(Chart, OneKeyBringsBackNow) {
    const TimeScale before = chart.timeScale();
    chart.press(QKeyEvent{QEvent::KeyPress, Qt::Key_Plus, Qt::NoModifier});
    chart.press(QKeyEvent{QEvent::KeyPress, Qt::Key_Left, Qt::NoModifier});
    EXPECT_FALSE(chart.followsNow());
    EXPECT_NE(chart.timeScale(), before);
    chart.press(QKeyEvent{QEvent::KeyPress, Qt::Key_Home, Qt::NoModifier});
    EXPECT_TRUE(chart.followsNow());
    EXPECT_EQ(chart.timeScale(), before);
}

TEST_F(Chart, FollowsTheHandThatDragsIt) {
    chart.zoom(3);
    chart.show();
    const Instant held = chart.timeScale().at(300);
    QTest::mousePress(&chart, Qt::LeftButton, {}, {300, 200});
    for (const int x : {340, 420, 480})
        QTest::mouseEvent(QTest::MouseMove, &chart, Qt::LeftButton, {}, {x, 200});
    EXPECT_NEAR(chart.timeScale().x(held), 480, 1.5);
    EXPECT_FALSE(chart.followsNow());
    EXPECT_TRUE(chart.pointedWords().isEmpty()); // a hand that drags does not point
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, {480, 200});
    const TimeScale let = chart.timeScale();
    QTest::mouseEvent(QTest::MouseMove, &chart, Qt::NoButton, {}, {200, 200});
    EXPECT_EQ(chart.timeScale(), let);
    EXPECT_FALSE(chart.pointedWords().isEmpty());
    QTest::mousePress(&chart, Qt::LeftButton, {}, {300, 200});
    QTest::mouseEvent(QTest::MouseMove, &chart, Qt::LeftButton, {}, {-800, 200});
    EXPECT_TRUE(chart.followsNow()); // no further than now
}

TEST_F(Chart, TakesAShortSlipForPointing) {
    chart.zoom(3);
    chart.show();
    const TimeScale before = chart.timeScale();
    QTest::mousePress(&chart, Qt::LeftButton, {}, {300, 200});
    QTest::mouseEvent(QTest::MouseMove, &chart, Qt::LeftButton, {}, {306, 200});
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, {306, 200});
    EXPECT_EQ(chart.timeScale(), before);
    EXPECT_FALSE(chart.pointedWords().isEmpty());
}

TEST_F(Chart, FollowsAFinger) {
    static QPointingDevice* const screen = QTest::createTouchDevice();
    chart.zoom(3);
    chart.show();
    const Instant held = chart.timeScale().at(300);
    QTest::touchEvent(&chart, screen).press(0, {300, 200});
    QTest::touchEvent(&chart, screen).move(0, {380, 200});
    QTest::touchEvent(&chart, screen).move(0, {460, 205});
    QTest::touchEvent(&chart, screen).release(0, {460, 205});
    EXPECT_NEAR(chart.timeScale().x(held), 460, 1.5);
}

TEST_F(Chart, KeepsTheWholeOfAShiftInItsWindow) {
    chart.showWhole();
    chart.show();
    const TimeScale whole = chart.timeScale();
    QTest::mousePress(&chart, Qt::LeftButton, {}, {300, 200});
    QTest::mouseEvent(QTest::MouseMove, &chart, Qt::LeftButton, {}, {700, 200});
    QTest::mouseRelease(&chart, Qt::LeftButton, {}, {700, 200});
    EXPECT_EQ(chart.timeScale(), whole); // all of it is there to be seen
    chart.zoomAbout(4, 500);
    EXPECT_NEAR(chart.timeScale().x(whole.at(500)), 500, 2); // what was pointed at stays
    for (int i = 0; i < 50; ++i)
        chart.pan(-0.25);
    EXPECT_NEAR(secondsBetween(scenes::evening(0), chart.timeScale().begin()), 0, 60); // and no further than its begin
}

TEST_F(Chart, PaintsAtMostTwentyFiveTimesASecond) {
    chart.show();
    QApplication::processEvents();
    const int before = chart.paintings();
    QElapsedTimer watch;
    watch.start();
    Picture picture = scenes::calm();
    int asked = 0;
    while (watch.elapsed() < 200) {
        picture.at += std::chrono::milliseconds{1};
        chart.display(picture);
        QApplication::processEvents();
        ++asked;
    }
    EXPECT_GT(asked, 0);
    EXPECT_LE(chart.paintings() - before, watch.elapsed() / 38 + 5); // a few more when the window comes up
}

} // namespace
} // namespace panside
