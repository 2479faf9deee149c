#include "ui/sound/sound_screen.h"

#include "ui/look/press.h"

#include <QLabel>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

struct Sound : testing::Test {
    SoundScreen screen;
    std::vector<SoundChoices> chosen;
    std::vector<Priority> heard;

    Sound() {
        QObject::connect(&screen, &SoundScreen::chosen, [this](const SoundChoices& now) { chosen.push_back(now); });
        QObject::connect(&screen, &SoundScreen::testWanted, [this](Priority which) { heard.push_back(which); });
        screen.display({.volume = 40}, true, true);
        screen.resize(1366, 768);
        screen.show();
    }
    QString text(const char* name) { return screen.findChild<QLabel*>(QLatin1String(name))->text(); }
};

TEST_F(Sound, KeysMakeItLouderAndSofterButNeverSilent) {
    QTest::keyClick(&screen, Qt::Key_Plus);
    EXPECT_EQ(text("volume"), QStringLiteral("50 %"));
    for (int i = 0; i < 12; ++i)
        QTest::keyClick(&screen, Qt::Key_Minus);
    EXPECT_EQ(chosen.back().volume, SoundChoices::softest);
    for (int i = 0; i < 12; ++i)
        QTest::mouseClick(screen.findChild<Press*>(QStringLiteral("louder")), Qt::LeftButton);
    EXPECT_EQ(chosen.back().volume, 100);
}

TEST_F(Sound, EachPriorityIsHeardByItsKey) {
    for (const auto key : {Qt::Key_H, Qt::Key_M, Qt::Key_L})
        QTest::keyClick(&screen, key);
    EXPECT_EQ(heard, (std::vector{Priority::high, Priority::medium, Priority::low}));
    QTest::mouseClick(screen.findChild<Press*>(QStringLiteral("hear_2")), Qt::LeftButton);
    EXPECT_EQ(heard.back(), Priority::medium);
}

TEST_F(Sound, WithoutAVoiceOrALoudspeakerItSaysSoAndCannotBeChosen) {
    screen.display({}, false, false);
    EXPECT_TRUE(text("device").startsWith(QStringLiteral("There is no loudspeaker here")));
    QTest::keyClick(&screen, Qt::Key_W);
    EXPECT_TRUE(chosen.empty());
    screen.display({}, true, true);
    QTest::keyClick(&screen, Qt::Key_W);
    ASSERT_EQ(chosen.size(), 1U);
    EXPECT_TRUE(chosen[0].spoken);
}

TEST_F(Sound, TheFrameOfAnAlarmCanBeMadeToStandStill) {
    QTest::keyClick(&screen, Qt::Key_B);
    ASSERT_EQ(chosen.size(), 1U);
    EXPECT_TRUE(chosen[0].still);
    QTest::mouseClick(screen.findChild<Press*>(QStringLiteral("still")), Qt::LeftButton);
    EXPECT_FALSE(chosen[1].still);
}

} // namespace
} // namespace panside
