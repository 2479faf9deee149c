#include "tests/ui/look/contrast_pairs.h"
#include "ui/look/inks.h"
#include "ui/look/lettering.h"
#include "ui/look/measure.h"
#include "ui/look/units.h"
#include "ui/look/wall_clock.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
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

// Every pair that the screens paint, in all looks; what each must keep is said beside them.
TEST(Inks, EveryPairKeepsItsContrast) {
    for (const Look look : {Look::day, Look::night, Look::paper})
        for (const ContrastPair& pair : contrastPairs(inksOf(look)))
            EXPECT_GE(contrast(pair.ink, pair.ground), pair.least)
                << pair.what << ' ' << pair.ink.name().toStdString() << " on " << pair.ground.name().toStdString();
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

TEST(Measure, GrowsWithTheWindowAndNeverShrinks) {
    EXPECT_EQ(Measure{96}.grownTo(1024, 600), Measure{96});
    EXPECT_NEAR(Measure{96}.grownTo(1920, 1080).dpi(), 96 * 1.405, 1); // 508 mm / 361 mm, 286 / 203
    EXPECT_NEAR(Measure{96}.grownTo(5120, 2880).dpi(), 96 * 1.9, 0.1);
}

TEST(Measure, DoesNotBelieveNonsense) {
    for (const double nonsense : {0.0, -5.0, 3.0, 5000.0, std::numeric_limits<double>::quiet_NaN()})
        EXPECT_EQ(Measure{nonsense}.dpi(), Measure::usualDpi);
}

// The face comes with the program: a count-down does not tremble, and no desktop's fonts change the screens.
TEST(Lettering, TheFaceIsTheProgramsOwnWithDigitsOfOneWidth) {
    for (const bool bold : {false, true}) {
        const QFont font = lettering(Measure{96}, mm::chiefDigits, bold);
        EXPECT_EQ(QFontInfo{font}.family(), "Noto Sans");
        const QFontMetricsF metrics{font};
        for (char digit = '0'; digit <= '9'; ++digit)
            EXPECT_NEAR(metrics.horizontalAdvance(QChar::fromLatin1(digit)), metrics.horizontalAdvance(u'0'), 0.01);
    }
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

// Why a second console keeps nothing, in the place that the foot of a small screen has for it.
TEST(Lettering, WrapsWhatIsLongRatherThanLetItRunOver) {
    const QString text = "Not kept: /home/ann/.local/share/panside/journal.db: another console is writing in this "
                         "journal (process 27770); here it can only be read. Close the other one to write.";
    QImage image{400, 46, QImage::Format_RGB32};
    image.fill(Qt::white);
    const QRect place{0, 0, 130, 46};
    QPainter painter{&image};
    drawFitted(painter, place, Qt::AlignLeft | Qt::AlignVCenter, lettering(Measure{96}, mm::words), text, 2);
    painter.end();
    int beside = 0;
    for (int x = place.width() + 1; x < image.width(); ++x)
        for (int y = 0; y < image.height(); ++y)
            beside += image.pixel(x, y) != qRgb(255, 255, 255);
    EXPECT_EQ(beside, 0);
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
    EXPECT_EQ(spanText(Duration{47 * 3600}), QString::fromUtf8("47\u00a0h\u00a000"));
    EXPECT_EQ(spanText(Duration{76 * 3600}), QString::fromUtf8("3\u00a0d\u00a04\u00a0h"));
    EXPECT_EQ(spanText(Duration{72 * 3600}), QString::fromUtf8("3\u00a0d"));
    EXPECT_EQ(spanText(Duration{6515 * 3600}), QString::fromUtf8("271\u00a0d"));
    EXPECT_EQ(leftText(Duration{239}), QString::fromUtf8("3\u00a0min")) << "what is left is not rounded up";
    EXPECT_EQ(leftText(Duration{119}), "under 2 min");
    EXPECT_EQ(leftText(Duration{6300}), QString::fromUtf8("1\u00a0h\u00a045"));
}

TEST(WallClock, ShowsTheStepThatTheShiftsClockDidNotTake) {
    WallClock clock;
    const Instant noon = std::chrono::sys_days{std::chrono::year{2026} / 3 / 8} + std::chrono::hours{12};
    clock.moved(noon, Duration{3600});
    EXPECT_EQ(clock.at(noon - std::chrono::minutes{1}).secsTo(clock.at(noon + std::chrono::minutes{1})), 3720);
}

} // namespace
} // namespace panside
