#include "ui/review/score_words.h"

#include "core/boil/shift_log.h"
#include "ui/review/review_screen.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <gtest/gtest.h>

namespace panside {
namespace {

DrawScore score(const char* at, double ten, double two, double inside) {
    DrawScore score;
    score.at = *instantIn(at);
    score.tenBefore = Duration{ten};
    score.twoBefore = Duration{two};
    score.inside = inside;
    score.forecasts = 30;
    return score;
}
const std::vector<DrawScore> three{score("2026-03-14T22:00:00Z", 120, 30, 0.9),
                                   score("2026-03-14T22:20:00Z", -60, 0, 0.5),
                                   score("2026-03-14T22:40:00Z", 180, -12, 1.0)};

TEST(DrawScores, OneLineTellsTheShareInsideAndTheUsualError) {
    // Shares 0.9, 0.5 and 1 make 80 percent; of the errors 2, 1 and 3 min the middle one is 2, of 0.5, 0 and 0.2 it is
    // 0.2.
    EXPECT_EQ(scoreStory(three),
              QStringLiteral("3 draws predicted · inside the range 80 % of the wait (80 is the aim) · "
                             "off by 2.0 min ten minutes before, – five, 0.2 two"));
    EXPECT_TRUE(scoreStory({}).isEmpty());
    EXPECT_TRUE(scoreStory({three[0]}).startsWith(QStringLiteral("one draw predicted")));
}

TEST(DrawScores, EachDrawHasItsErrorsWithTheirSign) {
    const QString list = scoreList(three, WallClock{});
    EXPECT_TRUE(list.contains(QStringLiteral("+2.0 / – / +0.5 min, inside 90 %"))) << list.toStdString();
    EXPECT_TRUE(list.contains(QStringLiteral("−1.0 / – / 0.0 min, inside 50 %"))) << list.toStdString();
}

TEST(DrawScores, PLaysTheForecastsUnderTheLineAndTakesThemOffAgain) {
    ReviewScreen screen;
    int wanted = 0;
    QObject::connect(&screen, &ReviewScreen::forecastsWanted, &screen, [&] { ++wanted; });
    const auto pressP = [&] {
        QKeyEvent press{QEvent::KeyPress, Qt::Key_P, Qt::NoModifier};
        QApplication::sendEvent(&screen, &press);
    };
    pressP();
    EXPECT_EQ(wanted, 0); // nothing is open yet
    screen.showShift(three[0].at, Boil{}, QStringLiteral("a night"), Units::metric);
    screen.tellScores(three);
    screen.say(QStringLiteral("the night's story"));
    pressP();
    ASSERT_EQ(wanted, 1);
    screen.layForecasts({{three[0].at, TemperatureDifference::kelvin(3), TemperatureDifference::kelvin(4.2),
                          Range{Duration{500}, Duration{600}, Duration{700}}}});
    const auto* said = screen.findChild<QLabel*>(QStringLiteral("said"));
    EXPECT_EQ(said->text(), scoreStory(three) + u'\n' + scoreList(three, WallClock{}));
    pressP();
    EXPECT_EQ(wanted, 1);
    EXPECT_EQ(said->text(), QStringLiteral("the night's story"));
}

} // namespace
} // namespace panside
