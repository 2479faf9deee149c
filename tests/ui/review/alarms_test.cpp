// The alarms of a shift in its review: the words, the table by keys, the lanes on the chart.
#include "core/boil/shift_log.h"
#include "tests/ui/frame/in_front.h"
#include "ui/review/alarms_pane.h"
#include "ui/review/review_screen.h"
#include "ui/words/alarm_words.h"

#include <QApplication>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant dusk = instantIn("2026-03-14T18:00:00Z").value();

AlarmSpan span(Alarm alarm, double began, std::optional<double> ended, std::optional<double> seen = {}) {
    AlarmSpan span{alarm, {}, priorityOf(alarm), dusk + Duration{began}};
    if (ended)
        span.ended = dusk + Duration{*ended};
    if (seen)
        span.seen = dusk + Duration{*seen};
    return span;
}

AlarmHistory threeHours() {
    AlarmHistory history{dusk, dusk + Duration{3 * 3600}, {}};
    history.spans = {span(Alarm::fire_overdue, 600, 900, 660),
                     span(Alarm::pan_low, 1200, 1210),
                     span(Alarm::pan_low, 1230, 1240),
                     span(Alarm::pan_low, 1250, 1260),
                     span(Alarm::fire_overdue, 2000, 2120, 2060),
                     span(Alarm::probe_silent, 7000, {})};
    history.spans[0].seenBy = "Maud";
    history.spans[5].series = Series::stack;
    history.spans[5].shelved = {{dusk + Duration{7060}, dusk + Duration{7660}, "Ansel"}};
    return history;
}

QString hour(double after) { return WallClock{}.hourAndMinute(dusk + Duration{after}); }

// Spans keep number and unit together; a test writes them as they are read.
QString plain(QString words) { return words.replace(QChar{0x00a0}, QChar{u' '}); }

TEST(AlarmLines, SayEachAlarmInWords) {
    const auto lines = alarmLines(alarmReview(threeHours()), WallClock{});
    ASSERT_EQ(lines.size(), 3U);
    const auto row = [&](std::size_t i) { return plain(lines[i].cells.join(QStringLiteral(" | "))).toStdString(); };
    EXPECT_EQ(row(0), "1  syrup pan low | urgent | 3 | 30 s | 10 s | by nobody | comes and goes");
    EXPECT_EQ(row(1),
              "2  probe silent: stack | soon | 1 | 63 min | 63 min | by nobody | lasted too long · to the end · "
              "shelved");
    EXPECT_EQ(row(2), "3  firing overdue | soon | 2 | 7 min | 5 min | 60 s | ");
    EXPECT_EQ(plain(lines[0].story).toStdString(),
              "syrup pan low: 3 times, longest 10 s · came and went 3 times, three or more in a minute, from " +
                  hour(1200).toStdString());
    EXPECT_EQ(plain(lines[1].story).toStdString(),
              "probe silent: stack: once, longest 63 min · lasted longer than 30 min: once");
}

TEST(AlarmLines, SayHowMuchItWasInOneLine) {
    EXPECT_EQ(alarmsStory(alarmReview(threeHours()), WallClock{}).toStdString(),
              "6 alarms · 3 urgent · 2.0 an hour · most in ten minutes: 3, from " + hour(1200).toStdString());
    AlarmHistory flood{dusk, dusk + Duration{3600}, {}};
    for (int i = 0; i < 11; ++i)
        flood.spans.push_back(span(Alarm::sap_low, 50 * i, 50 * i + 40));
    EXPECT_EQ(alarmsStory(alarmReview(flood), WallClock{}).toStdString(),
              "11 alarms · 11.0 an hour, more than one person can answer · most in ten minutes: 11, from " +
                  hour(0).toStdString() + " (a flood)");
    EXPECT_EQ(alarmsStory(alarmReview({dusk, dusk + Duration{3600}, {}}), WallClock{}).toStdString(),
              "There was no alarm in this shift.");
}

TEST(AlarmLines, SayEachTimeThatItStood) {
    const auto history = threeHours();
    EXPECT_EQ(plain(alarmSpan(history.spans[0], history.until, WallClock{})).toStdString(),
              (hour(600) + " to " + hour(900) + ", 5 min · seen after 60 s by Maud").toStdString());
    EXPECT_EQ(plain(alarmSpan(history.spans[5], history.until, WallClock{})).toStdString(),
              (hour(7000) + " to the end, 63 min · not seen by anybody · shelved " + hour(7060) + " to " + hour(7660) +
               " by Ansel")
                  .toStdString());
}

class AlarmsInReview : public testing::Test {
protected:
    AlarmsInReview() {
        Boil boil;
        boil.add(1, {dusk, Lit{}});
        for (int t = 0; t <= 3 * 3600; t += 30)
            boil.add(t + 10, {dusk + Duration{t * 1.0}, Reading{Series::stack, 673, Unit::degC, {}}});
        screen.wear({Measure{96}, Look::day});
        screen.resize(1366, 768);
        EXPECT_TRUE(inFront(screen));
        screen.display({{.shift = dusk, .cells = {QStringLiteral("a night")}, .open = false}}, Units::us);
        screen.showShift(dusk, boil.fold(), QStringLiteral("a night"), Units::us);
        table = screen.findChild<QTableWidget*>(QStringLiteral("alarmList"));
        said = screen.findChild<QLabel*>(QStringLiteral("said"));
        story = screen.findChild<QLabel*>(QStringLiteral("alarmsStory"));
    }
    void press(int key, Qt::KeyboardModifiers held = Qt::NoModifier) {
        QWidget* at = QApplication::focusWidget();
        QTest::keyClick(at ? at : &screen, static_cast<Qt::Key>(key), held);
    }
    ReviewScreen screen;
    QTableWidget* table;
    QLabel *said, *story;
};

// A night is read by the height of its curve: the nights stand beside it, not under it.
TEST_F(AlarmsInReview, TheChartOfANightHasTheHeightOfThePage) {
    for (const QSize& page : {QSize{1240, 485}, QSize{1740, 680}}) {
        screen.resize(page);
        QApplication::processEvents();
        const auto* nights = screen.findChild<QWidget*>(QStringLiteral("shiftsBox"));
        ASSERT_TRUE(nights && nights->isVisible());
        EXPECT_GE(screen.chart().height(), page.height() * 6 / 10) << page.height();
        EXPECT_LE(nights->geometry().right(), screen.chart().geometry().left());
        EXPECT_EQ(nights->geometry().top(), screen.chart().geometry().top());
    }
    screen.turn(Action::nightAlarms);
    EXPECT_FALSE(screen.findChild<QWidget*>(QStringLiteral("shiftsBox"))->isVisible());
}

// Four lines of it would take the height from the alarms and the entries.
TEST_F(AlarmsInReview, TheStoryOfTheNightStandsUnderTheNightsAlone) {
    screen.tellNight(QStringLiteral("It was a night."));
    EXPECT_EQ(said->text(), QStringLiteral("It was a night."));
    screen.setFocus();
    screen.turn(Action::nightAlarms);
    EXPECT_NE(said->text(), QStringLiteral("It was a night."));
    screen.tellNight(QStringLiteral("It was another."));
    EXPECT_NE(said->text(), QStringLiteral("It was another."));
    press(Qt::Key_Escape);
    EXPECT_EQ(said->text(), QStringLiteral("It was another."));
}

TEST_F(AlarmsInReview, ANightThatIsOpenIsToldAnewInAnotherLanguage) {
    std::vector<ShiftId> wanted;
    QObject::connect(&screen, &ReviewScreen::openWanted, [&](ShiftId shift) { wanted.push_back(shift); });
    QEvent language{QEvent::LanguageChange};
    QApplication::sendEvent(&screen, &language);
    EXPECT_EQ(wanted, std::vector<ShiftId>{dusk});
}

// The water in it is far from boiling: its own temperature says more than a rise of minus a hundred and forty.
TEST_F(AlarmsInReview, AColdPanIsNotCountedFromBoilingWater) {
    Boil boil;
    boil.add(1, {dusk, Lit{}});
    boil.add(2, {dusk, Reading{Series::pressure, 98400, Unit::kPa, {}}});
    for (int t = 0; t <= 600; t += 10)
        boil.add(t + 10, {dusk + Duration{t * 1.0}, Reading{Series::syrup_pan, 293.15, Unit::degC, {}}});
    screen.showShift(dusk, boil.fold(), QStringLiteral("a night"), Units::us);
    screen.chart().pointAt(dusk + Duration{300});
    const QString words = screen.chart().pointedWords();
    EXPECT_TRUE(words.contains(QStringLiteral("pan 68\u00a0°F"))) << words.toStdString();
    EXPECT_FALSE(words.contains(QStringLiteral("rise"))) << words.toStdString();
}

TEST_F(AlarmsInReview, OpenAndSayTheyComeUntilTheyAreThere) {
    screen.setFocus();
    screen.turn(Action::nightAlarms);
    ASSERT_TRUE(table->isVisible());
    EXPECT_EQ(story->text(), QStringLiteral("Working out the alarms …"));
    screen.tellAlarms(alarmReview(threeHours()));
    EXPECT_EQ(table->rowCount(), 3);
    EXPECT_TRUE(story->text().startsWith(QStringLiteral("6 alarms")));
    press(Qt::Key_Escape);
    EXPECT_FALSE(table->isVisible());
    EXPECT_TRUE(screen.isVisible());
}

TEST_F(AlarmsInReview, EnterGoesFromOneTimeToTheNextAndPointsAtItOnTheChart) {
    screen.tellAlarms(alarmReview(threeHours()));
    screen.setFocus();
    screen.turn(Action::nightAlarms);
    press(Qt::Key_Down);
    press(Qt::Key_Down);
    EXPECT_TRUE(said->text().startsWith(QStringLiteral("firing overdue: 2 times")));
    press(Qt::Key_Return);
    EXPECT_TRUE(said->text().startsWith(QStringLiteral("firing overdue, 1 of 2: ") + hour(600)));
    EXPECT_TRUE(screen.chart().pointedWords().contains(QStringLiteral("alarm: firing overdue, ") + hour(600)));
    press(Qt::Key_Return);
    EXPECT_TRUE(said->text().startsWith(QStringLiteral("firing overdue, 2 of 2: ") + hour(2000)));
    press(Qt::Key_Return);
    EXPECT_TRUE(said->text().startsWith(QStringLiteral("firing overdue, 1 of 2: ")));
}

// In French the story of a night was wider than the screen, and the keys at its right edge could not be reached.
TEST_F(AlarmsInReview, WhereSeveralStandPointingNamesEach) {
    AlarmHistory history{dusk, dusk + Duration{3 * 3600}, {span(Alarm::stack_hot, 1800, 9000)}};
    history.spans.push_back(span(Alarm::sap_low, 3000, 8000));
    screen.tellAlarms(alarmReview(history));
    screen.chart().pointAt(dusk + Duration{5000});
    EXPECT_TRUE(screen.chart().pointedWords().endsWith(QStringLiteral("alarms: stack hot, sap low")));
    screen.chart().pointAt(dusk + Duration{8700});
    EXPECT_TRUE(screen.chart().pointedWords().contains(QStringLiteral("alarm: stack hot, ") + hour(1800)));
    screen.chart().pointAt(dusk + Duration{900});
    EXPECT_FALSE(screen.chart().pointedWords().contains(QStringLiteral("alarm")));
}

TEST_F(AlarmsInReview, ALongStoryDoesNotMakeTheScreenWiderThanItIs) {
    Boil boil;
    boil.add(1, {dusk, Lit{}});
    screen.showShift(dusk, boil.fold(), QStringLiteral("dans la fourchette ").repeated(20), Units::us);
    EXPECT_LE(screen.minimumSizeHint().width(), 1366);
}

TEST_F(AlarmsInReview, AnotherShiftTakesThemAway) {
    screen.tellAlarms(alarmReview(threeHours()));
    Boil other;
    other.add(1, {dusk + Duration{86400}, Lit{}});
    screen.showShift(dusk + Duration{86400}, other.fold(), QStringLiteral("another"), Units::us);
    EXPECT_EQ(table->rowCount(), 0);
    screen.chart().pointAt(dusk + Duration{7100});
    EXPECT_FALSE(screen.chart().pointedWords().contains(QStringLiteral("alarm")));
}

TEST_F(AlarmsInReview, LettersAreAsLargeAsTheWidthBears) {
    screen.tellAlarms(alarmReview(threeHours()));
    screen.setFocus();
    screen.turn(Action::nightAlarms);
    const Dress dress{Measure{96}, Look::day};
    EXPECT_LE(table->horizontalHeader()->length(), table->viewport()->width());
    EXPECT_GE(table->font().pixelSize(), dress.letters(mm::words).pixelSize());
    EXPECT_GE(table->rowHeight(0), dress.px(mm::target));
    const int small = table->font().pixelSize();
    screen.resize(1920, 1080);
    QApplication::processEvents();
    EXPECT_GT(table->font().pixelSize(), small);
}

// Where a lane is, something is drawn; and an answered time looks other than one that nobody answered.
TEST_F(AlarmsInReview, LanesAreDrawnAndAnAnswerShows) {
    const QImage without = screen.chart().grab().toImage();
    AlarmHistory history{dusk, dusk + Duration{3 * 3600}, {span(Alarm::stack_hot, 1800, 9000)}};
    screen.tellAlarms(alarmReview(history));
    const QImage unseen = screen.chart().grab().toImage();
    history.spans[0].seen = dusk + Duration{1900};
    screen.tellAlarms(alarmReview(history));
    const QImage seen = screen.chart().grab().toImage();
    EXPECT_NE(without, unseen);
    EXPECT_NE(unseen, seen);
    history.spans[0].seen.reset();
    history.spans[0].shelved = {{dusk + Duration{1800}, dusk + Duration{9000}, {}}};
    screen.tellAlarms(alarmReview(history));
    const QImage shelved = screen.chart().grab().toImage();
    EXPECT_NE(unseen, shelved);
    EXPECT_NE(seen, shelved);
}

} // namespace
} // namespace panside
