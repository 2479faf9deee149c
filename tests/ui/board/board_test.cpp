#include "tests/ui/board/scenes.h"
#include "ui/board/across_view.h"
#include "ui/board/board.h"
#include "ui/board/card.h"
#include "ui/board/sentence_bar.h"
#include "ui/chart/rise_chart.h"
#include "ui/look/press.h"
#include "ui/words/alarm_words.h"
#include "ui/words/reading_words.h"

#include <QApplication>
#include <QKeyEvent>
#include <gtest/gtest.h>
#include <set>

namespace panside {
namespace {

QString chief(const CardView& view) {
    QString text;
    for (const Piece& piece : view.chief)
        text += (text.isEmpty() ? QString{} : QStringLiteral(" ")) + piece.text;
    return text;
}

TEST(DrawCard, SaysMinutesAsARange) {
    const CardView view = drawCard(scenes::calm(), Units::us);
    EXPECT_EQ(view.title, "TO THE DRAW");
    EXPECT_EQ(chief(view), "12 min");
    EXPECT_EQ(view.beside, QString::fromUtf8("9 to 16\u00a0min"));
    EXPECT_EQ(view.figure, QString::fromUtf8("rise 5.8 of 7.3\u00a0°F"));
    EXPECT_EQ(view.actions.front(), Action::drawOpen);
    EXPECT_EQ(view.tone, Tone::calm);
}

TEST(DrawCard, WhileDrawingTheSamePlaceCountsToTheClose) {
    const CardView view = drawCard(scenes::drawing(), Units::us);
    EXPECT_EQ(view.title, "DRAWING, CLOSE IN");
    EXPECT_EQ(chief(view), "1:20");
    EXPECT_EQ(view.actions.front(), Action::drawClose);
    EXPECT_EQ(rowOf(Action::drawClose).key, rowOf(Action::drawOpen).key);
}

TEST(DrawCard, WhileDrawingSaysNowForNoTimeLeftAndWhatToWatchForNoneKnown) {
    Picture picture = scenes::drawing();
    picture.closeEta = Range{Duration{0}, Duration{2}, Duration{12}};
    const CardView due = drawCard(picture, Units::us);
    EXPECT_EQ(due.title, "DRAWING, CLOSE IT");
    EXPECT_EQ(chief(due), "now");
    EXPECT_EQ(due.beside, "");
    picture.closeEta.reset();
    picture.why.push_back({Shown::closeEta, Reason::noGradient});
    const CardView unknown = drawCard(picture, Units::us);
    EXPECT_EQ(unknown.title, "DRAWING, WATCH THE RISE");
    EXPECT_EQ(unknown.chief, dash);
    EXPECT_EQ(unknown.reason, "too early to say");
}

TEST(DrawCard, StrikesTheNumberByTheWordOfItsDoubt) {
    const CardView view = drawCard(scenes::doubt(), Units::us);
    EXPECT_EQ(view.doubt, QString::fromUtf8("stuck for 40\u00a0s"));
    EXPECT_TRUE(view.figure.startsWith(QString::fromUtf8("rise – of")));
}

TEST(DrawCard, AMissingNumberIsADashWithItsReasonNeverAZero) {
    const CardView view = drawCard(scenes::blind(), Units::us);
    EXPECT_EQ(view.chief, dash);
    EXPECT_EQ(view.reason, QString::fromUtf8("pan probe silent for 25\u00a0s"));
    EXPECT_EQ(drawCard(scenes::fresh(), Units::us).reason, "fire not lit");
}

TEST(DrawCard, LeavesTheEndOpenWhereSomeFuturesNeverGetThere) {
    EXPECT_EQ(drawCard(scenes::handOnly(), Units::us).beside, QString::fromUtf8("6\u00a0min or more"));
}

TEST(DrawCard, SaysNowAboveTheTarget) {
    Picture picture = scenes::calm();
    picture.drawEta = Range{Duration{0}, Duration{0}, Duration{0}};
    EXPECT_EQ(chief(drawCard(picture, Units::us)), "now");
}

TEST(DrawCard, AsksForACheckOnlyWhenItIsWorthOne) {
    Picture picture = scenes::calm();
    const auto lines = [&](double now, double then) {
        picture.targetUncertainty = TemperatureDifference::kelvin(now);
        picture.targetUncertaintyAfterCheck = TemperatureDifference::kelvin(then);
        QString all;
        for (const QString& line : drawCard(picture, Units::metric).lines)
            all += line + QStringLiteral("\n");
        return all;
    };
    EXPECT_TRUE(lines(0.15, 0.075).contains(QStringLiteral("a check now would halve the ±")));
    EXPECT_TRUE(lines(0.3, 0.09).contains(QString::fromUtf8("a check now would make it ± 0.1\u00a0°C")));
    EXPECT_FALSE(lines(0.08, 0.04).contains(QStringLiteral("a check now"))); // sure enough for the syrup
    EXPECT_FALSE(lines(0.15, 0.14).contains(QStringLiteral("a check now"))); // it would teach nothing
}

TEST(FireCard, CountsDownAndSaysWhoseTurnItIs) {
    const CardView view = fireCard(scenes::calm(), Units::us);
    EXPECT_EQ(chief(view), "3:40");
    EXPECT_EQ(view.figure, "turn: Odile");
    EXPECT_EQ(view.actions.front(), Action::fired);
}

TEST(FireCard, OverdueIsAnotherTitleAndAnotherTone) {
    const CardView view = fireCard(scenes::seenAlarm(), Units::us);
    EXPECT_EQ(view.title, "FIRE NOW, OVERDUE BY");
    EXPECT_EQ(chief(view), "1:15");
    EXPECT_EQ(view.tone, Tone::medium);
}

TEST(FireCard, GrowsStrongerTheLongerItIsOverdueAndIsCalmAgainAfterwards) {
    Picture picture = scenes::seenAlarm();
    picture.fireInterval = Duration{480};
    const auto late = [&](double seconds) {
        picture.fireDue = Duration{-seconds};
        return fireCard(picture, Units::us);
    };
    EXPECT_EQ(late(60).insistence, 0);
    EXPECT_EQ(late(150).insistence, 1);
    EXPECT_EQ(late(150).title, "FIRE NOW, OVERDUE BY");
    EXPECT_EQ(late(300).insistence, 2);
    EXPECT_EQ(late(300).title, "THE FIRE GOES DOWN: FIRE NOW, LATE BY");
    EXPECT_EQ(late(-200).insistence, 0);
}

TEST(FireCard, OfSeveralFiresNamesTheOneThatIsCalledAndWhatComesThen) {
    Picture picture = scenes::calm();
    picture.fires = {{"finishing", *picture.fireDue, Duration{600}, picture.at},
                     {"", Duration{370}, Duration{480}, picture.at},
                     {"second rig", Duration{-5}, Duration{480}, picture.at}};
    const CardView view = fireCard(picture, Units::us);
    EXPECT_EQ(view.figure, "finishing, turn: Odile");
    EXPECT_EQ(view.lines.front(), "then evaporator in 6:10, second rig overdue too");
}

TEST(LastLoadCard, SaysHoursAsHours) {
    const CardView view = lastLoadCard(scenes::calm(), Units::us);
    EXPECT_EQ(chief(view), "1 h 45");
    EXPECT_EQ(view.beside, QString::fromUtf8("1\u00a0h\u00a035 to 1\u00a0h\u00a058"));
    EXPECT_EQ(lastLoadCard(scenes::handOnly(), Units::us).reason, "sap tank not read");
}

TEST(LastLoadCard, SaysHowLongAgoFiringWasStopped) {
    Picture picture = scenes::burningOut();
    picture.shutdownAt = picture.at - std::chrono::minutes{25};
    EXPECT_EQ(chief(lastLoadCard(picture, Units::us)), "25 min ago");
}

TEST(LastLoadCard, AfterTheShutdownWatchesThePansAndAsksForTheLastLook) {
    Picture picture = scenes::burningOut();
    picture.fuel.watchPans = Duration{32 * 60};
    picture.fuel.lastLook = Duration{50 * 60};
    const QString said = lastLoadCard(picture, Units::us).spoken();
    EXPECT_TRUE(said.contains(QString::fromUtf8("the arch is hot for 32\u00a0min yet: never a dry pan")))
        << said.toStdString();
    EXPECT_TRUE(said.contains(QString::fromUtf8("last look at roof, fire, pans in 50\u00a0min")));
    picture.fuel.lastLook = Duration{-1};
    EXPECT_TRUE(lastLoadCard(picture, Units::us).spoken().contains(QStringLiteral("take the last look now")));
}

TEST(FireCard, SaysForAWhileWhyTheCallWasMoved) {
    Picture picture = scenes::calm();
    picture.fireInterval = Duration{480};
    picture.callMoved = CallMoved{picture.at - std::chrono::minutes{3}, Duration{540}, Duration{480}, Duration{520}};
    EXPECT_TRUE(fireCard(picture, Units::us).spoken().contains(QStringLiteral("every 8:00: boil sags at 8:40")));
    picture.callMoved->at = picture.at - std::chrono::minutes{20};
    EXPECT_FALSE(fireCard(picture, Units::us).spoken().contains(QStringLiteral("sags")));
}

TEST(Sentence, IsCalmOnACalmBoil) {
    const SentenceView view = sentence(scenes::calm(), Units::metric);
    EXPECT_EQ(view.tone, Tone::calm);
    EXPECT_FALSE(view.flashing);
    EXPECT_TRUE(view.first.isEmpty());
}

TEST(Sentence, AsksAboutNiterWhereTheMarkHasCreptUp) {
    Picture picture = scenes::calm();
    picture.markCrept = TemperatureDifference::kelvin(0.4);
    EXPECT_EQ(sentence(picture, Units::metric).wrong, "The target has crept up: niter? Look at the pan.");
    EXPECT_EQ(sentence(picture, Units::metric).tone, Tone::calm);
    picture = scenes::scorching();
    picture.markCrept = TemperatureDifference::kelvin(0.4);
    EXPECT_EQ(sentence(picture, Units::metric).tone, Tone::high); // an alarm comes first
}

TEST(SituationTank, ATankThatIsNearlyFullIsSaidWhenNothingIsWrong) {
    Picture picture;
    picture.store.fullIn = Duration{25 * 60};
    EXPECT_TRUE(sentence(picture, Units::metric).wrong.startsWith("The feed tank is full in 25"));
    picture.store.fullIn = Duration{0};
    EXPECT_EQ(sentence(picture, Units::metric).wrong, "The feed tank is full: look that it does not run over.");
    picture.store.fullIn = Duration{5 * 3600};
    EXPECT_EQ(sentence(picture, Units::metric).wrong, "Nothing is lit. Cover the pans before the fire.");
    picture.alarms.push_back(
        {.alarm = Alarm::pan_low, .priority = Priority::high, .state = AlarmState::unseen, .since = {}});
    picture.store.fullIn = Duration{0};
    EXPECT_FALSE(sentence(picture, Units::metric).wrong.startsWith("The feed tank"));
    EXPECT_TRUE(sentence(picture, Units::metric).others.contains(QStringLiteral("The feed tank is full")));
}

TEST(Sentence, SaysWhatACheckCameToForSomeMinutes) {
    Picture picture = scenes::calm();
    picture.target = Temperature::celsius(104.3);
    picture.check = CheckPicture{.at = picture.at - std::chrono::seconds{60},
                                 .sugar = Brix::degrees(66.9),
                                 .error = Brix::degrees(0.2),
                                 .moved = TemperatureDifference::kelvin(0.12)};
    EXPECT_EQ(sentence(picture, Units::metric).wrong,
              QString::fromUtf8("66.9\u00a0°Brix: right. Open at 104.3\u00a0°C now, 0.1\u00a0°C higher."));
    picture.check->moved = TemperatureDifference::kelvin(-0.02);
    picture.check->weight = CheckWeight::light;
    EXPECT_EQ(sentence(picture, Units::metric).wrong,
              QString::fromUtf8("66.9\u00a0°Brix: light. Open at 104.3\u00a0°C, as before."));
    picture.check->fate = CheckFate::doubted;
    EXPECT_EQ(sentence(picture, Units::metric).wrong,
              QString::fromUtf8("66.9\u00a0°Brix? Far off: kept, the target stays. Check once more."));
    picture.check->at = picture.at - std::chrono::seconds{300};
    EXPECT_EQ(sentence(picture, Units::metric).wrong, sentence(scenes::calm(), Units::metric).wrong);
    // What is wrong comes first, and the check beside it.
    Picture wrong = scenes::scorching();
    wrong.check = CheckPicture{.at = wrong.at, .sugar = Brix::degrees(64), .weight = CheckWeight::underLegal};
    EXPECT_EQ(sentence(wrong, Units::metric).wrong, sentence(scenes::scorching(), Units::metric).wrong);
    EXPECT_TRUE(sentence(wrong, Units::metric).others.contains(QStringLiteral("too light to sell")));
}

TEST(Sentence, SaysWhatIsWrongAndWhatToDoFirst) {
    const SentenceView view = sentence(scenes::scorching(), Units::metric);
    EXPECT_EQ(view.wrong, QString::fromUtf8("The syrup pan scorches in 4\u00a0min"));
    EXPECT_EQ(view.first, "look how deep the pan is: low, close the draw; let sap in from the side, damp the fire");
    EXPECT_EQ(view.others, QString::fromUtf8("also: sap low · shelved: clock moved"));
    EXPECT_TRUE(view.flashing);
    EXPECT_EQ(view.tone, Tone::high);
}

TEST(Sentence, ShowsTheUnseenBeforeTheSeen) {
    Picture picture = scenes::scorching();
    picture.alarms[0].state = AlarmState::seen;
    picture.alarms[1].state = AlarmState::unseen;
    EXPECT_EQ(shownAlarm(picture)->alarm, Alarm::sap_low);
}

TEST(Sentence, SeenIsSteadyGoneUnseenAsksToBeSeen) {
    EXPECT_FALSE(sentence(scenes::seenAlarm(), Units::metric).flashing);
    const SentenceView gone = sentence(scenes::goneUnseen(), Units::metric);
    EXPECT_TRUE(gone.canBeSeen);
    EXPECT_EQ(gone.state, "gone, not yet seen");
    EXPECT_TRUE(gone.wrong.startsWith(QStringLiteral("Over now: ")))
        << "from two metres it must not read as if it stood";
    EXPECT_TRUE(gone.first.isEmpty());
}

TEST(AlarmWords, EveryAlarmSaysWhatIsWrongAndWhatToDoFirst) {
    std::set<QString> lines;
    for (std::size_t i = 0; i < alarmCount; ++i) {
        const AlarmPicture alarm{
            .alarm = static_cast<Alarm>(i), .priority = Priority::high, .state = AlarmState::unseen, .since = {}};
        EXPECT_FALSE(alarmFirst(alarm).isEmpty());
        EXPECT_FALSE(alarmName(alarm.alarm).isEmpty());
        lines.insert(alarmLine(alarm));
    }
    EXPECT_EQ(lines.size(), alarmCount);
    EXPECT_FALSE(lines.contains(QString{}));
}

TEST(ReadingWords, EveryReasonHasWords) {
    for (int i = 1; i <= static_cast<int>(Reason::notReached); ++i)
        EXPECT_FALSE(reasonWords(Why{Shown::riseC, static_cast<Reason>(i), 40}).isEmpty()) << i;
}

TEST(Actions, NoTwoShareAKeyButTheDraw) {
    std::set<int> keys;
    for (const ActionRow& row : allActions()) {
        if (row.action != Action::drawClose) {
            EXPECT_TRUE(keys.insert(row.key).second) << row.word;
        }
    }
    EXPECT_EQ(rowOf(Action::fired).key, Qt::Key_F);
}

class BoardAtWork : public testing::Test {
protected:
    BoardAtWork() {
        QObject::connect(&board, &Board::actionWanted, [this](Action action) { wanted.push_back(action); });
        board.wear({Measure{96}, Look::day});
        board.resize(1366, 768);
        board.display(scenes::calm());
        board.show();
        QApplication::processEvents();
    }
    void press(int key, Qt::KeyboardModifiers held = Qt::NoModifier) {
        QKeyEvent event{QEvent::KeyPress, key, held};
        QApplication::sendEvent(&board, &event);
    }
    Board board;
    std::vector<Action> wanted;
};

TEST_F(BoardAtWork, OneKeyIsOneAction) {
    press(Qt::Key_F);
    press(Qt::Key_D);
    board.display(scenes::drawing());
    press(Qt::Key_D);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(wanted, (std::vector{Action::fired, Action::drawOpen, Action::drawClose, Action::undo}));
}

TEST_F(BoardAtWork, WhatIsPressedByFingerIsTheSame) {
    board.findChild<Press*>("fireCardAction0")->click();
    board.findChild<Press*>("drawCardAction0")->click();
    board.display(scenes::scorching());
    board.findChild<Press*>("sentenceSeen")->click();
    EXPECT_EQ(wanted, (std::vector{Action::fired, Action::drawOpen, Action::alarmSeen}));
}

TEST_F(BoardAtWork, EveryTargetIsTwelveMillimetresHighAndNothingIsOutside) {
    for (const Picture& picture : {scenes::calm(), scenes::drawing(), scenes::scorching(), scenes::fresh()}) {
        board.display(picture);
        QApplication::processEvents();
        for (const Press* press : board.findChildren<Press*>()) {
            if (press->isHidden())
                continue;
            EXPECT_GE(press->height(), Measure{96}.px(mm::target)) << press->objectName().toStdString();
            EXPECT_GE(press->width(), Measure{96}.px(mm::target)) << press->objectName().toStdString();
            const QRect place{press->mapTo(&board, QPoint{0, 0}), press->size()};
            EXPECT_TRUE(board.rect().contains(place)) << press->objectName().toStdString();
        }
    }
}

TEST_F(BoardAtWork, ChiefDigitsKeepTheirTwentyMillimetresOnASmallScreen) {
    for (const QSize size : {QSize{1366, 768}, QSize{1280, 720}, QSize{1920, 1080}}) {
        board.resize(size);
        for (const char* name : {"drawCard", "fireCard", "lastLoadCard"})
            EXPECT_GE(board.findChild<Card*>(name)->chiefPlace().height(), Measure{96}.px(mm::chiefDigits)) << name;
    }
}

TEST_F(BoardAtWork, AnUnchangedCardIsNotDrawnAgain) {
    auto* card = board.findChild<Card*>("lastLoadCard");
    const int before = card->paintings();
    Picture later = scenes::calm();
    later.fireDue = Duration{219};
    board.display(later);
    QApplication::processEvents();
    EXPECT_EQ(card->paintings(), before);
}

TEST_F(BoardAtWork, TheSameWordsStayInTheirPlaceWhenAnAlarmComes) {
    const QRect before = board.findChild<Card*>("drawCard")->geometry();
    const QRect key = board.findChild<Press*>("keyW")->geometry();
    board.display(scenes::scorching());
    EXPECT_EQ(board.findChild<Card*>("drawCard")->geometry(), before);
    EXPECT_EQ(board.findChild<Press*>("keyW")->geometry(), key);
    EXPECT_FALSE(board.findChild<FirstBand*>("firstBand")->isHidden());
}

TEST_F(BoardAtWork, TheWholeFrameShowsAnAlarmNobodyHasSeen) {
    board.display(scenes::scorching());
    const QColor ink = inksOf(Look::day).high;
    const QImage image = board.grab().toImage();
    for (const QPoint corner : {QPoint{1, 1}, QPoint{1364, 1}, QPoint{1, 766}, QPoint{1364, 766}})
        EXPECT_EQ(image.pixelColor(corner), ink);
    board.display(scenes::calm());
    EXPECT_EQ(board.grab().toImage().pixelColor(1, 1), inksOf(Look::day).ground);
}

TEST_F(BoardAtWork, F11ShowsTheSentenceAndThreeNumbersOnly) {
    press(Qt::Key_F11);
    EXPECT_TRUE(board.acrossTheRoom());
    EXPECT_TRUE(board.findChild<AcrossView*>("acrossView")->isVisible());
    press(Qt::Key_F); // the keys still work
    press(Qt::Key_Escape);
    EXPECT_FALSE(board.acrossTheRoom());
    EXPECT_EQ(wanted[1], Action::fired);
}

TEST_F(BoardAtWork, EverythingHasANameForAScreenReader) {
    for (const Press* press : board.findChildren<Press*>()) {
        if (press->isHidden())
            continue;
        EXPECT_FALSE(press->objectName().isEmpty());
        EXPECT_FALSE(press->accessibleName().isEmpty()) << press->objectName().toStdString();
    }
    const auto* card = board.findChild<Card*>("drawCard");
    EXPECT_TRUE(card->accessibleDescription().contains("12 min"));
    EXPECT_TRUE(card->accessibleDescription().contains("9 to 16"));
}

} // namespace
} // namespace panside
