#include "ui/entry/water_sheet.h"

#include "core/boil/shift_log.h"
#include "ui/look/press.h"

#include <QLabel>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant boilNow = *instantIn("2026-03-14T22:42:00Z");
const ExpectedBoil expected{Temperature::celsius(99.6), TemperatureDifference::kelvin(0.2)};

WaterLook look(WaterVerdict verdict, double celsius, double off) {
    return {.verdict = verdict,
            .at = Temperature::celsius(celsius),
            .scatter = TemperatureDifference::kelvin(0.04),
            .watched = Duration{30},
            .off = TemperatureDifference::kelvin(off)};
}

struct Water : testing::Test {
    QWidget window;
    WaterSheet sheet{&window};
    std::vector<Fact> kept;
    int typed = 0, left = 0;

    Water() {
        window.resize(1366, 768);
        window.show();
        QObject::connect(&sheet, &WaterSheet::kept, [this](const std::vector<Fact>& facts) { kept = facts; });
        QObject::connect(&sheet, &WaterSheet::typeWanted, [this] { ++typed; });
        QObject::connect(&sheet, &WaterSheet::left, [this] { ++left; });
        sheet.wear({});
        sheet.begin("pan box", boilNow, Units::metric);
    }
    QString text(const char* name) { return sheet.findChild<QLabel*>(QLatin1String(name))->text(); }
};

TEST_F(Water, EnterKeepsNothingWhileThereIsNothing) {
    QTest::keyClick(&sheet, Qt::Key_Return);
    sheet.display(look(WaterVerdict::stillWarming, 80, -19), expected, {}, boilNow);
    QTest::keyClick(&sheet, Qt::Key_Return);
    EXPECT_TRUE(kept.empty());
    EXPECT_TRUE(sheet.isVisible());
    EXPECT_FALSE(sheet.findChild<Press*>(QStringLiteral("waterKeep"))->isEnabled());
}

TEST_F(Water, EnterKeepsATrueBoilAsTheFactOfItsProbe) {
    sheet.display(look(WaterVerdict::fits, 99.9037, 0.3037), expected, {}, boilNow);
    EXPECT_EQ(text("waterHeadline"), QStringLiteral("The water boils; the probe reads 0.30\u00a0°C too high."));
    QTest::keyClick(&sheet, Qt::Key_Return);
    ASSERT_EQ(kept.size(), 1U);
    EXPECT_EQ(kept[0], (Fact{.at = boilNow, .what = WaterCheck{{Temperature::celsius(99.9), Unit::degC}, "pan box"}}));
    EXPECT_FALSE(sheet.isVisible());
}

TEST_F(Water, AnOutlierIsQuestionedByNameAndByHowMuchAndMayBeKeptAllTheSame) {
    sheet.display(look(WaterVerdict::notBoiling, 88, -11.6), expected, {}, boilNow);
    EXPECT_EQ(text("waterHeadline"), QStringLiteral("The water does not boil: 11.60\u00a0°C too low."));
    sheet.display(look(WaterVerdict::tooShallow, 97.1, -2.5), expected, {}, boilNow);
    EXPECT_EQ(text("waterHeadline"),
              QStringLiteral("The probe reads 2.50\u00a0°C too low: not deep enough, or the water only simmers."));
    EXPECT_TRUE(text("waterWhat").endsWith(QStringLiteral("it counts when a second check says so too.")));
    EXPECT_EQ(sheet.findChild<Press*>(QStringLiteral("waterKeep"))->text(), QStringLiteral("Keep it all the same"));
    QTest::keyClick(&sheet, Qt::Key_Enter);
    EXPECT_TRUE(kept.empty()) << "Enter never keeps what the sheet doubts";
    QTest::keyClick(&sheet, Qt::Key_K);
    EXPECT_EQ(kept.size(), 1U);
}

TEST_F(Water, OverAFireASapThatBoilsIsNotTakenForWaterByEnter) {
    // 100.41 °C with nothing else known: water on a day of high pressure, or sap in the pan.
    const WaterLikely lit{.byHeight = {}, .byLastCheck = {}, .fireLit = true};
    sheet.display(look(WaterVerdict::givesBoiling, 100.41, 0), std::nullopt, lit, boilNow);
    EXPECT_EQ(text("waterHeadline"), QStringLiteral("100.41\u00a0°C: is this water, or the sap in the pan?"));
    EXPECT_TRUE(text("waterWhat").contains(QStringLiteral("every rise is counted from 100.41")));
    QTest::keyClick(&sheet, Qt::Key_Return);
    EXPECT_TRUE(kept.empty());
    EXPECT_EQ(sheet.findChild<Press*>(QStringLiteral("waterKeep"))->text(),
              QStringLiteral("It is water: keep 100.41\u00a0°C"));
    // As the last check said: it is water.
    WaterLikely asBefore = lit;
    asBefore.byLastCheck = Temperature::celsius(100.3);
    sheet.display(look(WaterVerdict::givesBoiling, 100.41, 0), std::nullopt, asBefore, boilNow);
    QTest::keyClick(&sheet, Qt::Key_Return);
    EXPECT_EQ(kept.size(), 1U);
}

// ISO 2533:1975, table 1: 97.773 kPa at 300 m; IAPWS-IF97 has water boil there at 99.0 °C.
TEST_F(Water, TheHeightAndTheLastCheckAreHeldAgainstIt) {
    const WaterLikely likely = [] {
        Picture picture;
        return likelyBoil(picture, Length::metre(300));
    }();
    ASSERT_TRUE(likely.byHeight);
    EXPECT_NEAR(likely.byHeight->celsius(), 99.0, 0.05);
    sheet.display(look(WaterVerdict::givesBoiling, 101.4, 0), std::nullopt, likely, boilNow);
    EXPECT_TRUE(text("waterWhat").contains(QStringLiteral("at your elevation about 99.0")));
    QTest::keyClick(&sheet, Qt::Key_Return);
    EXPECT_TRUE(kept.empty());
    sheet.display(look(WaterVerdict::givesBoiling, 99.6, 0), std::nullopt, likely, boilNow);
    QTest::keyClick(&sheet, Qt::Key_Return);
    EXPECT_EQ(kept.size(), 1U);
}

TEST_F(Water, WithoutABarometerItSaysThatTheCheckIsTheBoilingPoint) {
    sheet.display(look(WaterVerdict::givesBoiling, 98.72, 0), std::nullopt, {}, boilNow);
    EXPECT_EQ(text("waterHeadline"), QStringLiteral("Water boils at 98.72\u00a0°C on this probe."));
    EXPECT_TRUE(text("waterWhat").startsWith(QStringLiteral("There is no barometer")));
}

TEST_F(Water, SaysWhatToDoAboutMetalSplashesAndWaterThatNoPlaceBoilsSoCold) {
    sheet.display(look(WaterVerdict::tooHot, 103, 3.4), expected, {}, boilNow);
    EXPECT_EQ(
        text("waterHeadline"),
        QStringLiteral("The probe reads 3.40\u00a0°C too high: this is not plain water, or it touches the metal."));
    EXPECT_EQ(sheet.findChild<Press*>(QStringLiteral("waterKeep"))->text(), QStringLiteral("Keep it all the same"));
    // A reading that does not stand still is no check at all, however near it is.
    WaterLook splashes = look(WaterVerdict::restless, 99.6, 0);
    splashes.scatter = TemperatureDifference::kelvin(0.5);
    sheet.display(splashes, expected, {}, boilNow);
    EXPECT_EQ(text("waterHeadline"), QStringLiteral("The reading is not steady: it varies by 0.50\u00a0°C."));
    QTest::keyClick(&sheet, Qt::Key_Return);
    EXPECT_TRUE(kept.empty());
    // Without a barometer too.
    WaterLook cold = look(WaterVerdict::notBoiling, 88, 0);
    cold.off.reset();
    sheet.display(cold, std::nullopt, {}, boilNow);
    EXPECT_EQ(text("waterHeadline"), QStringLiteral("The water does not boil: nowhere does it boil so cold."));
    EXPECT_TRUE(text("waterWhat").endsWith(QStringLiteral("it counts when a second check says so too.")));
}

TEST_F(Water, KeysBeginAnewTypeAndLeave) {
    sheet.display(look(WaterVerdict::fits, 99.9, 0.3), expected, {}, boilNow + Duration{60});
    QTest::keyClick(&sheet, Qt::Key_B);
    EXPECT_EQ(sheet.since(), boilNow + Duration{60});
    QTest::keyClick(&sheet, Qt::Key_T);
    EXPECT_EQ(typed, 1);
    sheet.begin("pan box", boilNow, Units::us);
    QTest::keyClick(&sheet, Qt::Key_Escape);
    EXPECT_EQ(left, 1);
    EXPECT_FALSE(sheet.isVisible());
}

} // namespace
} // namespace panside
