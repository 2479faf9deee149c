#include "core/boil/calls.h"
#include "tests/ui/board/framed.h"
#include "tests/ui/board/scenes.h"
#include "ui/board/board.h"
#include "ui/board/card.h"
#include "ui/chart/rise_chart.h"
#include "ui/look/press.h"
#include "ui/words/alarm_words.h"
#include "ui/words/reading_words.h"

#include <QApplication>
#include <QKeyEvent>
#include <algorithm>
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
    EXPECT_EQ(view.under, QString::fromUtf8("rise 5.8 of 7.3\u00a0°F"));
    EXPECT_EQ(view.figure, QString::fromUtf8("216.8, open at 218.2\u00a0°F")); // 210.7 + 5.8 + 0.3, and + 7.25
    EXPECT_EQ(view.keys.front().action, Action::drawOpen);
    EXPECT_EQ(view.tone, Tone::calm);
}

TEST(DrawCard, WhileDrawingTheSamePlaceCountsToTheClose) {
    const CardView view = drawCard(scenes::drawing(), Units::us);
    EXPECT_EQ(view.title, "DRAWING, CLOSE IN");
    EXPECT_EQ(chief(view), "under 2 min");
    EXPECT_EQ(view.keys.front().action, Action::drawClose);
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
    EXPECT_TRUE(view.under.startsWith(QString::fromUtf8("rise – of")));
    EXPECT_TRUE(view.figure.startsWith(QStringLiteral("open at"))) << "what is not believed is not shown as read";
}

TEST(DrawCard, AMissingNumberIsADashWithItsReasonNeverAZero) {
    const CardView view = drawCard(scenes::blind(), Units::us);
    EXPECT_EQ(view.chief, dash);
    EXPECT_EQ(view.order, "by eye and hydrometer") << "the probe's alarm stands";
    EXPECT_EQ(view.under, QString::fromUtf8("pan probe silent for 25\u00a0s"));
    EXPECT_EQ(drawCard(scenes::fresh(), Units::us).reason, "fire not lit");
}

TEST(DrawCard, LeavesTheEndOpenWhereSomeFuturesNeverGetThere) {
    EXPECT_EQ(drawCard(scenes::handOnly(), Units::us).beside, QString::fromUtf8("6\u00a0min or more"));
}

TEST(DrawCard, SaysNowAboveTheTarget) {
    Picture picture = scenes::calm();
    picture.drawEta = Range{Duration{0}, Duration{0}, Duration{0}};
    picture.drawDue = true;
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
    EXPECT_EQ(chief(view), "3 min");
    EXPECT_EQ(view.figure, "turn: Odile");
    EXPECT_EQ(view.keys.front().action, Action::fired);
}

TEST(FireCard, LateIsTheCallWithHowLateBesideItAndNoCountThatGoesOn) {
    Picture picture = scenes::calm();
    picture.fireDue = Duration{0};
    EXPECT_EQ(chief(fireCard(picture, Units::us)), "now");
    EXPECT_TRUE(fireCard(picture, Units::us).due);
    EXPECT_EQ(fireCard(picture, Units::us).beside, "");
    picture.fireDue = Duration{-75};
    EXPECT_EQ(chief(fireCard(picture, Units::us)), "now");
    EXPECT_EQ(fireCard(picture, Units::us).beside, "late by a minute");
    picture.fireDue = Duration{-330};
    EXPECT_EQ(fireCard(picture, Units::us).beside, QString::fromUtf8("late by 6\u00a0min"));
}

TEST(FireCard, GrowsStrongerTheLongerItIsOverdueAndIsCalmAgainAfterwards) {
    Picture picture = scenes::calm();
    picture.fireInterval = Duration{480};
    const auto late = [&](double seconds) {
        picture.fireDue = Duration{-seconds};
        return fireCard(picture, Units::us);
    };
    EXPECT_EQ(late(60).insistence, 0);
    EXPECT_EQ(late(60).tone, Tone::calm) << "a call is no alarm";
    EXPECT_EQ(late(150).insistence, 1);
    EXPECT_EQ(late(150).tone, Tone::medium);
    EXPECT_EQ(late(300).insistence, 2);
    EXPECT_EQ(late(300).title, "THE FIRE GOES DOWN: FIRE NOW");
    EXPECT_EQ(late(-200).insistence, 0);
}

TEST(FireCard, OfSeveralFiresNamesTheOneThatIsCalledAndWhatComesThen) {
    Picture picture = scenes::calm();
    picture.fires = {{"finishing", *picture.fireDue, Duration{600}, picture.at},
                     {"", Duration{370}, Duration{480}, picture.at},
                     {"second rig", Duration{-5}, Duration{480}, picture.at}};
    const CardView view = fireCard(picture, Units::us);
    EXPECT_EQ(view.figure, "finishing, turn: Odile");
    EXPECT_EQ(view.lines.front(), QString::fromUtf8("then evaporator in 6\u00a0min, second rig overdue too"));
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
    EXPECT_TRUE(said.contains(QString::fromUtf8("the arch stays hot 32\u00a0min more: never a dry pan")))
        << said.toStdString();
    EXPECT_TRUE(said.contains(QString::fromUtf8("last look at roof, fire, pans in 50\u00a0min")));
    picture.fuel.lastLook = Duration{-1};
    EXPECT_TRUE(lastLoadCard(picture, Units::us).spoken().contains(QStringLiteral("take the last look now")));
}

TEST(FireCard, SaysForAWhileWhyTheCallWasMoved) {
    Picture picture = scenes::calm();
    picture.fireInterval = Duration{480};
    picture.callMoved = CallMoved{picture.at - std::chrono::minutes{3}, Duration{540}, Duration{480}, Duration{520}};
    EXPECT_TRUE(fireCard(picture, Units::us)
                    .spoken()
                    .contains(QString::fromUtf8("every 8\u00a0min: boil sags after 9\u00a0min")));
    picture.callMoved->at = picture.at - std::chrono::minutes{20};
    EXPECT_FALSE(fireCard(picture, Units::us).spoken().contains(QStringLiteral("sags")));
}

TEST(Sentence, IsCalmOnACalmBoil) {
    const SentenceView view = sentence(scenes::calm(), Units::metric);
    EXPECT_EQ(view.tone, Tone::calm);
    EXPECT_FALSE(view.flashing);
    EXPECT_TRUE(view.steps.isEmpty());
    EXPECT_EQ(view.next, QString::fromUtf8("next: fire in 3\u00a0min (Odile), draw in 12\u00a0min"));
}

TEST(Sentence, SaysACallAsACallAndNotThatNothingIsWrong) {
    Picture picture = scenes::calm();
    picture.drawEta = Range{Duration{0}, Duration{0}, Duration{0}};
    picture.drawDue = true;
    const SentenceView draw = sentence(picture, Units::metric);
    EXPECT_EQ(draw.state, SentenceView::State::due);
    EXPECT_EQ(draw.wrong, "Draw now");
    EXPECT_EQ(draw.first(), "open the draw, check the density");
    EXPECT_EQ(draw.tone, Tone::calm) << "a call is no alarm";
    EXPECT_FALSE(draw.flashing);
    EXPECT_EQ(drawCard(picture, Units::metric).keys.front().shape, KeyShape::due);
    picture.fireDue = Duration{0};
    EXPECT_EQ(sentence(picture, Units::metric).wrong, "Draw now, then fire");
    EXPECT_EQ(fireCard(picture, Units::metric).keys.front().shape, KeyShape::plain) << "one due key a screen";
    picture.drawEta = scenes::calm().drawEta;
    picture.drawDue = false;
    EXPECT_EQ(sentence(picture, Units::metric).wrong, "Fire now: Odile");
    EXPECT_EQ(fireCard(picture, Units::metric).keys.front().shape, KeyShape::due);
}

TEST(Sentence, WhatIsOverIsQuietAndNeverStandsBeforeACall) {
    Picture picture = scenes::goneUnseen();
    picture.alarms[0].over = picture.at - std::chrono::seconds{30};
    EXPECT_EQ(sentence(picture, Units::metric).state, SentenceView::State::over);
    EXPECT_EQ(sentence(picture, Units::metric).tone, Tone::calm);
    EXPECT_FALSE(sentence(picture, Units::metric).flashing);
    picture.drawEta = Range{Duration{0}, Duration{0}, Duration{0}};
    picture.drawDue = true;
    EXPECT_EQ(sentence(picture, Units::metric).wrong, "Draw now");
    // By itself after ten minutes; at once where a deed was the answer.
    picture = scenes::goneUnseen();
    picture.alarms[0].over = picture.at - std::chrono::minutes{11};
    EXPECT_EQ(sentence(picture, Units::metric).state, SentenceView::State::calm);
    picture.alarms[0].alarm = Alarm::fire_overdue;
    picture.alarms[0].over = picture.at;
    picture.alarms[0].since = *picture.lastFired - std::chrono::seconds{40};
    EXPECT_EQ(sentence(picture, Units::metric).state, SentenceView::State::calm);
}

TEST(Sentence, AnAlarmThatWasSeenLeavesTheWordToThePan) {
    Picture picture = scenes::seenAlarm();
    picture.drawEta = Range{Duration{0}, Duration{0}, Duration{0}};
    picture.drawDue = true;
    EXPECT_EQ(sentence(picture, Units::metric).state, SentenceView::State::due);
    EXPECT_TRUE(sentence(picture, Units::metric).others.contains(QStringLiteral("firing overdue")));
    picture.alarms[0].state = AlarmState::unseen;
    EXPECT_EQ(sentence(picture, Units::metric).state, SentenceView::State::alarm);
}

// Whatever an alarm's first action is, no card calls for the contrary and no key is offered as the thing to do.
TEST(Calls, NothingOnTheBoardContradictsTheFirstActionOfAnAlarm) {
    const std::pair<Alarm, std::vector<Call>> forbidden[] = {{Alarm::scorch_risk, {Call::draw, Call::fire}},
                                                             {Alarm::pan_low, {Call::draw, Call::fire}},
                                                             {Alarm::stack_hot, {Call::fire}},
                                                             {Alarm::sap_low, {Call::fire}},
                                                             {Alarm::draw_overdue, {Call::fire}},
                                                             {Alarm::probe_silent, {Call::draw}},
                                                             {Alarm::probe_stuck, {Call::draw}},
                                                             {Alarm::reading_implausible, {Call::draw}}};
    for (const auto& [alarm, calls] : forbidden)
        for (const AlarmState state : {AlarmState::unseen, AlarmState::seen}) {
            Picture picture = scenes::calm();
            picture.drawEta = Range{Duration{0}, Duration{0}, Duration{0}};
            picture.drawDue = true;
            picture.fireDue = Duration{0};
            picture.alarms = {{.alarm = alarm, .priority = Priority::high, .state = state, .since = picture.at}};
            if (priorityOf(alarm) != Priority::high && alarm != Alarm::sap_low && alarm != Alarm::draw_overdue)
                picture.alarms[0].series = Series::syrup_pan;
            if (picture.alarms[0].series)
                picture.readings[static_cast<std::size_t>(Series::syrup_pan)]->trust = Trust::gone;
            for (const Call call : {Call::draw, Call::fire}) {
                const bool isForbidden = std::count(calls.begin(), calls.end(), call) > 0;
                const CardView card = call == Call::draw ? drawCard(picture, Units::us) : fireCard(picture, Units::us);
                EXPECT_EQ(isDue(picture, call), !isForbidden) << nameOf(alarm);
                EXPECT_EQ(card.order.isEmpty(), !isForbidden) << nameOf(alarm);
                EXPECT_EQ(chief(card) == "now", !isForbidden) << nameOf(alarm);
                if (isForbidden) {
                    EXPECT_NE(card.keys.front().shape, KeyShape::due) << nameOf(alarm);
                }
            }
            EXPECT_FALSE(sentence(picture, Units::us).wrong.contains(QStringLiteral("now"))) << nameOf(alarm);
            picture.alarms[0].state = AlarmState::shelved; // somebody has judged it
            EXPECT_TRUE(isDue(picture, Call::draw)) << nameOf(alarm);
        }
}

TEST(Calls, WhileThePanScorchesAnOpenDrawIsToBeClosedAndAShutOneKeptShut) {
    Picture picture = scenes::scorching();
    EXPECT_TRUE(sentence(picture, Units::us).steps.value(0).endsWith(QStringLiteral("keep the draw shut")));
    EXPECT_EQ(drawCard(picture, Units::us).order, "keep shut");
    EXPECT_EQ(drawCard(picture, Units::us).keys.front().said(), "The draw was opened");
    EXPECT_EQ(fireCard(picture, Units::us).order, "do not fire");
    picture.fuel.tank = Volume::gallon(158);
    EXPECT_EQ(chief(lastLoadCard(picture, Units::us)), "158 gal");
    picture.drawing = true;
    EXPECT_TRUE(sentence(picture, Units::us).steps.value(0).endsWith(QStringLiteral("close the draw")));
    EXPECT_EQ(drawCard(picture, Units::us).order, "close now");
    EXPECT_EQ(drawCard(picture, Units::us).keys.front().shape, KeyShape::due);
}

TEST(FallingClock, NeverRisesBeforeALoadWentInAndNeverCallsBeforeTheEngineDoes) {
    FallingClock clock;
    Picture picture = scenes::calm();
    picture.fires = {{"", Duration{0}, Duration{480}, picture.at}};
    const auto shown = [&](double at, double due) {
        Picture told = picture;
        told.at = picture.at + std::chrono::round<std::chrono::microseconds>(Duration{at});
        told.fireDue = Duration{due};
        clock.steady(told);
        EXPECT_EQ(told.fires.front().due, *told.fireDue);
        return told.fireDue->count();
    };
    EXPECT_EQ(shown(0, 200), 200);
    EXPECT_EQ(shown(10, 195), 190) << "it fell by ten";
    EXPECT_EQ(shown(20, 100), 100) << "it may fall faster";
    EXPECT_EQ(shown(30, 130), 90);
    EXPECT_EQ(shown(150, 60), 1) << "not called yet";
    EXPECT_EQ(shown(220, -5), -5);
    picture.lastFired = picture.at + std::chrono::seconds{230};
    EXPECT_EQ(shown(231, 479), 479);
}

TEST(DrawCard, ALiveProbeWithoutAReferenceStillShowsWhatItReads) {
    Picture picture = scenes::calm();
    picture.waterBoils.reset();
    picture.syrupPan.reset();
    picture.target.reset();
    picture.rise.reset();
    EXPECT_EQ(drawCard(picture, Units::us).figure, QString::fromUtf8("pan 216.8\u00a0°F"));
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
    EXPECT_EQ(sentence(picture, Units::metric).wrong, "Nothing is lit. Flood the pans before you light.");
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
    EXPECT_EQ(view.first(), "look how deep the pan is; if it is low, keep the draw shut, let sap in from the side, "
                            "damp the fire");
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

TEST(Sentence, SeenIsSteadyAndWhatIsOverSaysSo) {
    EXPECT_FALSE(sentence(scenes::seenAlarm(), Units::metric).flashing);
    const SentenceView gone = sentence(scenes::goneUnseen(), Units::metric);
    EXPECT_TRUE(gone.canBeSeen);
    EXPECT_EQ(gone.wrong, "Over, nothing to do: probe stuck: stack");
    EXPECT_TRUE(gone.steps.isEmpty());
}

TEST(AlarmWords, EveryAlarmSaysWhatIsWrongAndWhatToDoFirst) {
    std::set<QString> lines;
    for (std::size_t i = 0; i < alarmCount; ++i) {
        const AlarmPicture alarm{
            .alarm = static_cast<Alarm>(i), .priority = Priority::high, .state = AlarmState::unseen, .since = {}};
        EXPECT_FALSE(alarmFirst(alarm, true).isEmpty());
        EXPECT_LE(alarmSteps(alarm, false).size(), 3);
        EXPECT_FALSE(alarmName(alarm.alarm).isEmpty());
        lines.insert(alarmLine(alarm));
    }
    EXPECT_EQ(lines.size(), alarmCount);
    EXPECT_FALSE(lines.contains(QString{}));
}

TEST(ReadingWords, EveryReasonHasWords) {
    for (int i = 1; i <= static_cast<int>(Reason::overfull); ++i)
        EXPECT_FALSE(reasonWords(Why{Shown::riseC, static_cast<Reason>(i), 40}).isEmpty()) << i;
}

TEST(Actions, NoTwoShareAKeyButTheDraw) {
    std::set<int> keys;
    for (const ActionRow& row : allActions()) {
        if (row.action != Action::drawClose) {
            EXPECT_TRUE(keys.insert(row.key).second) << row.word;
        }
    }
    for (const PlaceRow& row : railPlaces())
        EXPECT_TRUE(keys.insert(row.key).second) << row.word;
    EXPECT_EQ(rowOf(Action::fired).key, Qt::Key_F);
}

class BoardAtWork : public testing::Test {
protected:
    BoardAtWork() {
        const auto note = [this](Action action) { wanted.push_back(action); };
        QObject::connect(framed.board, &Board::actionWanted, note);
        QObject::connect(&framed.frame, &FrameView::actionWanted, note);
        framed.show(scenes::calm());
        framed.frame.show();
        QApplication::processEvents();
    }
    void press(int key, Qt::KeyboardModifiers held = Qt::NoModifier) {
        QKeyEvent event{QEvent::KeyPress, key, held};
        QApplication::sendEvent(framed.board, &event);
    }
    template <class Found>
    Found* find(const char* name) {
        return framed.frame.findChild<Found*>(QString::fromLatin1(name));
    }
    Framed framed;
    std::vector<Action> wanted;
};

TEST_F(BoardAtWork, OneKeyIsOneAction) {
    press(Qt::Key_F);
    press(Qt::Key_D);
    framed.show(scenes::drawing());
    press(Qt::Key_D);
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(wanted, (std::vector{Action::fired, Action::drawOpen, Action::drawClose, Action::undo}));
}

TEST_F(BoardAtWork, WhatIsPressedByFingerIsTheSame) {
    find<Press>("fireCardAction0")->click();
    find<Press>("drawCardAction0")->click();
    find<Press>("keyR")->click();
    framed.show(scenes::scorching());
    find<Press>("sentenceSeen")->click();
    EXPECT_EQ(wanted, (std::vector{Action::fired, Action::drawOpen, Action::handReading, Action::alarmSeen}));
}

TEST_F(BoardAtWork, ChiefDigitsAndThePansTemperatureHaveTheirPlaceAtEverySize) {
    for (const QSize size :
         {QSize{1024, 600}, QSize{1366, 768}, QSize{1280, 720}, QSize{1920, 1080}, QSize{2560, 1440}}) {
        framed.frame.resize(size);
        framed.wear({});
        for (const char* name : {"drawCard", "fireCard", "lastLoadCard"})
            EXPECT_GE(find<Card>(name)->chiefPlace().height(), Measure{96}.px(mm::chiefDigits) - 2)
                << name << " at " << size.width();
        EXPECT_GE(find<Card>("drawCard")->figurePlace().height(), Measure{96}.px(mm::words)) << size.width();
    }
}

TEST_F(BoardAtWork, AnUnchangedCardIsNotDrawnAgain) {
    auto* card = find<Card>("lastLoadCard");
    const int before = card->paintings();
    Picture later = scenes::calm();
    later.fireDue = Duration{119};
    framed.show(later);
    QApplication::processEvents();
    EXPECT_EQ(card->paintings(), before);
}

TEST_F(BoardAtWork, EverythingHasANameForAScreenReader) {
    for (const auto* press : framed.frame.findChildren<QAbstractButton*>()) {
        if (press->isHidden())
            continue;
        EXPECT_FALSE(press->objectName().isEmpty());
        EXPECT_FALSE(press->accessibleName().isEmpty()) << press->objectName().toStdString();
    }
    const auto* card = find<Card>("drawCard");
    EXPECT_TRUE(card->accessibleDescription().contains("12 min"));
    EXPECT_TRUE(card->accessibleDescription().contains("9 to 16"));
}

} // namespace
} // namespace panside
