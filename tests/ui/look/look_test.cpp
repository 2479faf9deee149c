#include "ui/look/inks.h"
#include "ui/look/lettering.h"
#include "ui/look/measure.h"
#include "ui/look/units.h"
#include "ui/look/wall_clock.h"

#include <QFontMetricsF>
#include <gtest/gtest.h>

namespace panside {
namespace {

// W3C, Web Content Accessibility Guidelines 2.1, the contrast ratio's own ends: black on white is 21, equal colours
// are 1.
TEST(Inks, MeasuresContrastAsTheGuidelineDoes) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_NEAR(contrast(QColor{"#808080"}, QColor{"#808080"}), 1, 1e-9);
    EXPECT_NEAR(contrast(QColor{"#767676"}, Qt::white), 4.54, 0.01); // the well-known least grey on white
}

TEST(Inks, WordsStandOutByDayAndByNight) {
    for (const Look look : {Look::day, Look::night}) {
        const Inks& inks = inksOf(look);
        for (const QColor& ground : {inks.panel, inks.ground, inks.key})
            EXPECT_GE(contrast(inks.word, ground), 4.5);
        EXPECT_GE(contrast(inks.quiet, inks.panel), 4.5);
        EXPECT_GE(contrast(inks.trace, inks.panel), 4.5);
        for (const QColor& alarm : {inks.high, inks.medium, inks.low}) {
            EXPECT_GE(contrast(alarm, inks.panel), 4.5) << alarm.name().toStdString();
            EXPECT_GE(contrast(inks.onAlarm, alarm), 4.5) << alarm.name().toStdString();
        }
    }
}

TEST(Inks, LinesCanBeSeen) {
    for (const Look look : {Look::day, Look::night}) {
        const Inks& inks = inksOf(look);
        EXPECT_GE(contrast(inks.line, inks.panel), 3);
        EXPECT_GE(contrast(inks.line, inks.key), 3);
        EXPECT_GE(contrast(inks.band, inks.panel), 3);
        EXPECT_GE(contrast(inks.trace, inks.shade), 3);
        EXPECT_GE(contrast(inks.trace, inks.key), 3); // the ring of the focus
    }
}

TEST(Inks, NothingAtNightSpoilsEyesUsedToTheDark) {
    const Inks& inks = inksOf(Look::night);
    for (const QColor& ink : {inks.ground, inks.panel, inks.key, inks.word, inks.quiet, inks.line, inks.trace,
                              inks.high, inks.medium, inks.low, inks.band}) {
        EXPECT_LT(luminance(ink), 0.4) << ink.name().toStdString();
        EXPECT_GE(ink.red(), ink.blue()) << ink.name().toStdString();
    }
}

TEST(Measure, TakesTheScreensOwnResolution) {
    EXPECT_EQ(Measure{96}.px(mm::target), 45);
    EXPECT_EQ(Measure{141}.px(mm::chiefDigits), 111);
    EXPECT_NEAR(Measure{96}.millimetres(768), 203.2, 0.05);
}

TEST(Measure, DoesNotBelieveNonsense) {
    for (const double nonsense : {0.0, -5.0, 3.0, 5000.0, std::numeric_limits<double>::quiet_NaN()})
        EXPECT_EQ(Measure{nonsense}.dpi(), Measure::usualDpi);
}

TEST(Lettering, DigitsStandAsHighAsAsked) {
    const QFont font = lettering(Measure{96}, mm::chiefDigits);
    EXPECT_NEAR(QFontMetricsF{font}.tightBoundingRect("0").height(), Measure{96}.px(mm::chiefDigits), 2.5);
}

TEST(Lettering, MakesWordsSmallerBeforeItCutsThem) {
    const QFont font = lettering(Measure{96}, mm::fromAfar);
    const QString text = "bring sap, or stop firing while it still covers the pans";
    const QFont fitting = fitted(font, text, QSize{700, 60});
    EXPECT_LT(fitting.pixelSize(), font.pixelSize());
    EXPECT_TRUE(fits(fitting, text, QSize{700, 60}));
    EXPECT_EQ(fitted(font, "12", QSize{700, 60}).pixelSize(), font.pixelSize());
}

TEST(Units, SayEachFigureInThePersonsUnit) {
    EXPECT_EQ(figure(Temperature::celsius(100), Units::us).text(), QString::fromUtf8("212.0\u00a0°F"));
    EXPECT_EQ(figure(Temperature::celsius(100), Units::metric).text(), QString::fromUtf8("100.0\u00a0°C"));
    EXPECT_EQ(figure(TemperatureDifference::kelvin(4), Units::us).text(), QString::fromUtf8("7.2\u00a0°F")); // no 32
    EXPECT_EQ(figure(Volume::gallon(52), Units::us).text(), QString::fromUtf8("52\u00a0gal"));
    EXPECT_EQ(figure(Volume::gallon(52), Units::metric).text(), QString::fromUtf8("197\u00a0L"));
    EXPECT_EQ(figure(Pressure::inchesOfMercury(29.92), Units::us).number, "29.92");
    EXPECT_EQ(figure(Pressure::kilopascal(101.325), Units::metric).number, "101.33");
    EXPECT_EQ(figure(TemperatureDifference::kelvin(-0.01), Units::metric).number, "0.0");
    EXPECT_EQ(figure(TemperatureDifference::kelvin(-1.5), Units::metric).number, QString::fromUtf8("−1.5"));
}

TEST(Units, SaySpansAsPeopleDo) {
    EXPECT_EQ(spanText(Duration{40}), QString::fromUtf8("40\u00a0s"));
    EXPECT_EQ(spanText(Duration{720}), QString::fromUtf8("12\u00a0min"));
    EXPECT_EQ(spanText(Duration{6300}), QString::fromUtf8("1\u00a0h\u00a045"));
    EXPECT_EQ(countdownText(Duration{220}), "3:40");
    // Never a colon after hours: 1:30 is a minute and a half and nothing else.
    EXPECT_EQ(countdownText(Duration{90}), "1:30");
    EXPECT_EQ(countdownText(Duration{3729}), QString::fromUtf8("1\u00a0h\u00a002"));
}

TEST(WallClock, ShowsTheStepThatTheShiftsClockDidNotTake) {
    WallClock clock;
    const Instant noon = std::chrono::sys_days{std::chrono::year{2026} / 3 / 8} + std::chrono::hours{12};
    clock.moved(noon, Duration{3600});
    EXPECT_EQ(clock.at(noon - std::chrono::minutes{1}).secsTo(clock.at(noon + std::chrono::minutes{1})), 3720);
}

} // namespace
} // namespace panside
