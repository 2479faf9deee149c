#include "ui/handover/handover_view.h"
#include "ui/page/keyed_page.h"

#include "core/boil/shift_log.h"

#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

std::vector<Fact> factsOf(std::initializer_list<const char*> rows) {
    std::vector<Fact> facts;
    for (const char* row : rows)
        facts.push_back(std::get<Fact>(factOfLine(row)));
    return facts;
}

const auto draws = factsOf({"2026-03-14T19:40:00Z,draw_open,,,", "2026-03-14T19:44:00Z,draw_close,2.5,gal,to=drum 3",
                            "2026-03-14T19:50:00Z,density_check,66.5,brix,", "2026-03-14T20:40:00Z,draw_open,,,",
                            "2026-03-14T20:44:00Z,draw_close,2,gal,to=pail", "2026-03-14T21:40:00Z,draw_open,,,",
                            "2026-03-14T21:44:00Z,draw_close,,,to=drum 3"});

TEST(Handover, CountsWhatWasDrawnIntoEachBarrel) {
    const auto barrels = barrelsOf(draws);
    ASSERT_EQ(barrels.size(), 2U);
    EXPECT_EQ(barrels[0].name, "drum 3"); // the last one drawn into
    EXPECT_EQ(barrels[0].draws, 2);
    EXPECT_EQ(barrels[0].measured, 1);
    EXPECT_NEAR(barrels[0].volume.gallon(), 2.5, 1e-9);
    ASSERT_TRUE(barrels[0].check);
    EXPECT_EQ(barrels[0].check->reading, 66.5);
    EXPECT_FALSE(barrels[1].check); // the check was made on the drum's syrup
}

// The hand at the valve says where to, the hand at the pail how much; or how much first, and then both.
TEST(Handover, PutsADrawThatWasToldTwiceIntoTheVesselThatEitherNamed) {
    for (const auto& [first, second] : {std::pair{"draw_close,,,to=drum 1", "draw_close,3,L,"},
                                        std::pair{"draw_close,3,L,", "draw_close,,,to=drum 1"},
                                        std::pair{"draw_close,3,L,", "draw_close,3,L,to=drum 1"}}) {
        const std::string shut = std::string{"2026-03-14T21:02:00Z,"} + first;
        const std::string shutAgain = std::string{"2026-03-14T21:02:06Z,"} + second;
        const auto barrels = barrelsOf(factsOf({"2026-03-14T21:00:00Z,draw_open,,,", shut.c_str(), shutAgain.c_str()}));
        ASSERT_EQ(barrels.size(), 1U) << second;
        EXPECT_EQ(barrels[0].name, "drum 1") << second;
        EXPECT_EQ(barrels[0].draws, 1) << second;
        EXPECT_EQ(barrels[0].measured, 1) << second;
        EXPECT_NEAR(barrels[0].volume.litre(), 3, 1e-9) << second;
    }
}

// Buddy sap boiled last goes into a drum of its own: nothing of it is told of another.
TEST(SituationLots, SyrupDrawnIntoADrumOfItsOwnStaysApart) {
    const auto barrels = barrelsOf(factsOf(
        {"2026-04-10T18:00:00Z,draw_close,20,L,to=drum 7", "2026-04-10T20:00:00Z,draw_close,15,L,to=drum 8 buddy",
         "2026-04-10T21:00:00Z,density_check,66.4,brix,", "2026-04-10T22:00:00Z,draw_close,10,L,to=drum 8 buddy"}));
    ASSERT_EQ(barrels.size(), 2U);
    EXPECT_EQ(barrels[0].name, "drum 8 buddy");
    EXPECT_NEAR(barrels[0].volume.litre(), 25, 1e-9);
    EXPECT_EQ(barrels[1].name, "drum 7");
    EXPECT_NEAR(barrels[1].volume.litre(), 20, 1e-9);
    EXPECT_FALSE(barrels[1].check);
}

// Two days old, come in at 58 degF: to be boiled first. The limit is the one of the extension's text (50 degF).
TEST(SituationSap, OldAndWarmSapIsSaidToTheNextCrew) {
    HandoverSource source;
    source.started = *instantIn("2026-04-10T18:00:00Z");
    source.picture.at = *instantIn("2026-04-10T22:00:00Z");
    source.picture.keepBack = Volume::litre(100);
    source.picture.store = {
        .oldest = Duration{30 * 3600}, .older = true, .warmest = Temperature::celsius(14.44), .fullIn = Duration{1500}};
    const QString words = handoverWords(source, Units::us);
    EXPECT_TRUE(words.contains(QStringLiteral("The feed tank is full in 25"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("came in 30"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("ago or earlier."))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("boil it first"))) << words.toStdString();
    source.picture.store = {.oldest = Duration{3600}, .warmest = Temperature::celsius(4), .fullIn = {}};
    EXPECT_FALSE(handoverWords(source, Units::us).contains(QStringLiteral("boil it first")));
}

TEST(Handover, TellsSideNotesTargetAndWhatToWatch) {
    HandoverSource source;
    source.started = *instantIn("2026-03-14T18:00:00Z");
    source.goesOn = true;
    source.before = factsOf({"2026-03-13T20:00:00Z,pan_swapped,,,by=Odile"});
    source.shift = draws;
    for (const Fact& fact : factsOf({"2026-03-14T22:00:00Z,note,,,float sticks;by=Rae"}))
        source.shift.push_back(fact);
    source.picture.at = *instantIn("2026-03-14T22:00:00Z");
    source.picture.drawing = true;
    source.picture.drawOpenedAt = *instantIn("2026-03-14T21:50:00Z");
    source.picture.target = Temperature::celsius(104);
    source.picture.targetUncertainty = TemperatureDifference::kelvin(0.1);
    source.picture.alarms.push_back(
        {.alarm = Alarm::pan_low, .priority = Priority::high, .state = AlarmState::unseen, .since = source.picture.at});
    const QString words = handoverWords(source, Units::us);
    for (const char* told : {"OPEN since 21:50", "by Odile", "draws since: 3", "219.2", "0.18", "float sticks",
                             "drum 3", "pail", "no hydrometer check yet"})
        EXPECT_TRUE(words.contains(QString::fromUtf8(told))) << told;
    EXPECT_FALSE(words.contains(QStringLiteral("No alarm is on")));
}

TEST(Handover, WithoutAShiftSaysSo) {
    EXPECT_TRUE(handoverWords({}, Units::metric).contains(QStringLiteral("No shift is going on")));
}

TEST(Handover, IsWrittenAsAPdf) {
    const QTemporaryDir folder;
    const QString place = folder.filePath(QStringLiteral("page.pdf"));
    EXPECT_TRUE(writePdf(handoverWords({}, Units::us), QStringLiteral("Hand-over"), place));
    QFile file{place};
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith("%PDF-1."));
    EXPECT_FALSE(writePdf({}, {}, folder.filePath(QStringLiteral("no/such/folder.pdf"))));
}

} // namespace
} // namespace panside
