// The window as a whole, on a journal of its own, by real keys and touches.
#include "tests/ui/console/at_work.h"

#include "core/boil/shift_log.h"
#include "core/shift/rehearsal_feed.h"
#include "core/shift/rehearsal_house.h"
#include "ui/board/board.h"
#include "ui/board/card.h"
#include "ui/chart/rise_chart.h"
#include "ui/console/screens.h"
#include "ui/entry/water_sheet.h"
#include "ui/frame/foot.h"
#include "ui/frame/frame_view.h"
#include "ui/frame/key_map.h"
#include "ui/frame/sentence_bar.h"
#include "ui/keys/places.h"
#include "ui/ledger/house.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/page/keyed_page.h"

#include <QDir>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>

namespace panside {
namespace {

TEST_F(ConsoleAtWork, AfterEveryKeyALoadIsStillKept) {
    say(Lit{});
    std::vector<int> keys{Qt::Key_Escape, Qt::Key_Tab,  Qt::Key_Space, Qt::Key_Return, Qt::Key_Up,      Qt::Key_Down,
                          Qt::Key_Left,   Qt::Key_Home, Qt::Key_Plus,  Qt::Key_Minus,  Qt::Key_Question};
    for (int code = Qt::Key_F1; code <= Qt::Key_F12; ++code)
        keys.push_back(code);
    for (int code = Qt::Key_0; code <= Qt::Key_9; ++code)
        keys.push_back(code);
    for (int code = Qt::Key_A; code <= Qt::Key_Z; ++code)
        keys.push_back(code);
    for (const int code : keys) {
        key(Qt::Key_Escape);
        key(Qt::Key_F3);
        key(code);
        if (sheet().isVisible() || find<WaterSheet>("waterSheet")->isVisible())
            key(Qt::Key_Escape);
        const int before = count<Fired>();
        key(Qt::Key_F);
        key(Qt::Key_Return);
        EXPECT_EQ(count<Fired>(), before + 1) << "after " << QKeySequence{code}.toString().toStdString();
        if (sheet().isVisible())
            key(Qt::Key_Escape);
        if (!session->openShift()) // X ended it
            say(Lit{});
    }
}

// A console at a start: its shift is folded elsewhere, and whoever needs it waits. Here it is folded in that moment.
struct ConsoleAtAStart : ConsoleAtWork {
    bool folded = false;
    Console starting{{.session = *session,
                      .journal = {},
                      .probeFile = {},
                      .probes = {},
                      .notice = {},
                      .advance = {},
                      .folding = std::async(std::launch::deferred, [this] { folded = true; }).share()},
                     plainChoices()};
    ConsoleAtAStart() { say(Lit{}); }
    const QString& said() { return starting.frame().bar().view().wrong; }
};

TEST_F(ConsoleAtAStart, ShowsItsWindowBeforeTheNightIsRead) {
    EXPECT_FALSE(folded);
    EXPECT_TRUE(said().contains(QStringLiteral("being read"))) << said().toStdString();
    for (const Card* card : starting.board().cards().cards()) {
        EXPECT_EQ(card->view().chief, dash);
        EXPECT_TRUE(card->view().keys.empty());
    }
    EXPECT_TRUE(starting.board().chart().isHidden());
    bool begun = false;
    QObject::connect(&starting, &Console::begun, [&] { begun = true; });
    starting.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return begun; }));
    EXPECT_TRUE(folded);
    EXPECT_FALSE(said().contains(QStringLiteral("being read")));
    EXPECT_TRUE(starting.picture().litAt);
    EXPECT_TRUE(starting.board().chart().isVisible());
}

// The load's key lights the fire where none burns: whether one does, the night says.
TEST_F(ConsoleAtAStart, AKeyThatIsPressedBeforeMeansWhatTheNightSays) {
    QTest::keyClick(&starting.board(), Qt::Key_F);
    EXPECT_TRUE(folded);
    const auto* opened = starting.findChild<EntrySheet*>(QStringLiteral("entrySheet"));
    ASSERT_FALSE(opened->isHidden());
    EXPECT_EQ(opened->form().action, Action::fired);
}

// Nobody can have read an alarm that was not on the screen, nor meant to take back what was not.
TEST_F(ConsoleAtAStart, AKeyThatAnswersWhatIsShownDoesNothingBeforeItIsShown) {
    const auto facts = session->boil().facts().size();
    for (const Qt::Key key : {Qt::Key_A, Qt::Key_F12, Qt::Key_U})
        QTest::keyClick(&starting.board(), key);
    EXPECT_EQ(session->boil().facts().size(), facts);
    starting.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&starting));
    ASSERT_TRUE(QTest::qWaitFor([&] {
        QTest::keyClick(&starting.board(), Qt::Key_U);
        return session->boil().facts().size() < facts;
    }));
}

// A hand that stays on the key has opened the draw once, and not closed it again.
TEST_F(ConsoleAtWork, AKeyThatIsHeldDownCountsOnce) {
    say(Lit{});
    key(Qt::Key_D);
    key(Qt::Key_Return);
    ASSERT_EQ(count<DrawOpened>(), 1);
    for (int i = 0; i < 5; ++i) {
        QKeyEvent again{QEvent::KeyPress, Qt::Key_D, Qt::NoModifier, QStringLiteral("d"), true};
        QCoreApplication::sendEvent(QApplication::focusWidget(), &again);
    }
    EXPECT_FALSE(sheet().isVisible());
    EXPECT_EQ(count<DrawOpened>(), 1);
    key(Qt::Key_D);
    EXPECT_TRUE(sheet().isVisible()) << "pressed anew it closes";
}

TEST_F(ConsoleAtWork, DayAndNightLeaveTheFocusWhereThePersonIs) {
    say(Lit{});
    key(Qt::Key_F7);
    EXPECT_FALSE(qobject_cast<TypedLine*>(console->focusWidget())) << "a digit would be typed";
    QTest::keyClick(console->focusWidget(), Qt::Key_Tab);
    auto* field = qobject_cast<TypedLine*>(console->focusWidget());
    ASSERT_TRUE(field) << "Tab goes to the first field";
    const QString name = field->objectName();
    key(Qt::Key_F9);
    ASSERT_TRUE(console->focusWidget());
    EXPECT_TRUE(console->focusWidget()->isVisible());
    EXPECT_EQ(console->focusWidget()->objectName(), name);
}

// A finger on another card while a sheet is open: the keys go to the sheet that is seen.
TEST_F(ConsoleAtWork, ASheetThatTakesAnothersPlaceHasTheFocus) {
    say(Lit{});
    key(Qt::Key_F);
    ASSERT_TRUE(sheet().isVisible());
    QTest::mouseClick(find<QWidget>("drawCardAction0"), Qt::LeftButton);
    ASSERT_TRUE(sheet().isVisible());
    ASSERT_TRUE(QApplication::focusWidget());
    EXPECT_TRUE(sheet().isAncestorOf(QApplication::focusWidget()));
    key(Qt::Key_Return);
    EXPECT_EQ(count<DrawOpened>(), 1);
    EXPECT_EQ(count<Fired>(), 0);
}

TEST_F(ConsoleAtWork, ASheetKeepsFocusAndFiguresAsItChangesItsDress) {
    say(Lit{});
    key(Qt::Key_C);
    key(Qt::Key_6);
    key(Qt::Key_F9);
    key(Qt::Key_7);
    EXPECT_EQ(sheet().findChild<TypedLine*>(QStringLiteral("reading"))->text(), "67");
}

QString shownTab(const Console& console) {
    for (const auto* tab : console.findChildren<QAbstractButton*>())
        if (tab->objectName().startsWith(QLatin1String("tab")) && tab->isVisible() && tab->isChecked())
            return tab->text();
    return {};
}

// As the manual says it: F2, then 3. The page of a place that opens first may have a field that takes digits.
TEST_F(ConsoleAtWork, EachPlaceAndEachScreenIsReachedByKeysAlone) {
    for (const ScreenRow& row : allScreens()) {
        if (row.shown && !row.shown(*console))
            continue;
        const auto place = std::find_if(railPlaces().begin(), railPlaces().end(),
                                        [&](const PlaceRow& one) { return one.place == row.place; });
        key(place->key);
        key(Qt::Key_0 + row.digit);
        EXPECT_EQ(shownTab(*console), wordOf(row));
    }
    key(Qt::Key_F2);
    key(Qt::Key_1);
    ASSERT_TRUE(qobject_cast<TypedLine*>(console->focusWidget()));
    key(Qt::Key_1);
    key(Qt::Key_3);
    EXPECT_EQ(qobject_cast<TypedLine*>(console->focusWidget())->text(), "13") << "two digits on they are typed";
}

TEST_F(ConsoleAtWork, EachPlaceAndEachScreenIsReachedByClicksAlone) {
    for (const ScreenRow& row : allScreens()) {
        if (row.shown && !row.shown(*console)) // this house has no use for it
            continue;
        QTest::mouseClick(find<QWidget>("placeF1"), Qt::LeftButton);
        const auto name = QStringLiteral("map_%1_%2").arg(keyOf(row.place)).arg(row.digit);
        auto* way = console->findChild<Press*>(name);
        ASSERT_TRUE(way) << row.word;
        QTest::mouseClick(way, Qt::LeftButton);
        EXPECT_EQ(shownTab(*console), wordOf(row));
    }
    QTest::mouseClick(find<QWidget>("toBoard"), Qt::LeftButton);
    EXPECT_EQ(console->frame().page(), &console->board());
}

// A start waits for no screen that nobody looks at; once made it stays, with what is typed in it.
TEST_F(ConsoleAtWork, AScreenIsMadeWhenItIsFirstOpened) {
    const auto tank = [this] { return find<QWidget>("tankScreen"); };
    EXPECT_EQ(tank(), nullptr);
    key(Qt::Key_F2);
    QWidget* made = tank();
    ASSERT_NE(made, nullptr);
    EXPECT_TRUE(made->isVisible());
    EXPECT_FALSE(made->accessibleName().isEmpty());
    key(Qt::Key_F3);
    key(Qt::Key_F2);
    EXPECT_EQ(tank(), made);
}

// The date of the night stands there already: what is typed on the paper log is its first row.
TEST_F(ConsoleAtWork, ThePaperLogIsTypedIntoAtOnce) {
    key(Qt::Key_F5);
    key(Qt::Key_4);
    EXPECT_EQ(QApplication::focusWidget(), find<QTableWidget>("rows"));
}

TEST_F(ConsoleAtWork, OneKeyGoesToAPlaceOneDigitToAScreenAndEscapeBack) {
    for (const bool inField : {false, true}) { // the digit alone, as the manual says it, and from within a field
        key(Qt::Key_F7);
        key(Qt::Key_1, Qt::ControlModifier);
        key(inField ? Qt::Key_Tab : Qt::Key_F7);
        key(Qt::Key_5, inField ? Qt::ControlModifier : Qt::NoModifier);
        EXPECT_TRUE(console->frame().page()->inherits("panside::KeyedPage")) << inField;
    }
    EXPECT_TRUE(console->findChild<QAbstractButton*>(QStringLiteral("placeF7"))->isChecked());
    key(Qt::Key_Escape);
    EXPECT_EQ(console->frame().page(), &console->board());
    key(Qt::Key_F1);
    EXPECT_EQ(console->frame().page(), find<KeyMap>("keyMap"));
    key(Qt::Key_2);
    EXPECT_NE(console->frame().page(), find<KeyMap>("keyMap"));
    key(Qt::Key_F3);
    EXPECT_EQ(console->frame().page(), &console->board());
}

// Once a chosen port had rebuilt its page, the bar's key had the focus, and neither K nor Escape did anything.
TEST_F(ConsoleAtWork, AKeyOfTheBarThatHasTheFocusKeepsNothingFromThePage) {
    console->act(Action::sound);
    find<QWidget>("toBoard")->setFocus();
    const int before = console->choices().sound.volume;
    key(Qt::Key_Minus);
    EXPECT_LT(console->choices().sound.volume, before);
    find<QWidget>("toBoard")->setFocus();
    key(Qt::Key_Escape);
    EXPECT_EQ(console->frame().page(), &console->board());
}

// An alarm by the clock alone: lit long ago and never fed.
void litLongAgo(Session& session) {
    session.enter(Fact{session.now() - std::chrono::minutes{40}, Lit{}});
    session.enter(Fact{session.now() - std::chrono::minutes{30}, Fired{}});
}

TEST_F(ConsoleAtWork, AAloneSaysSeenAndItCanBeTakenBackAtOnce) {
    litLongAgo(*session);
    console->refreshSoon();
    ASSERT_TRUE(QTest::qWaitFor([&] { return console->frame().bar().view().canBeSeen; }, 5000));
    key(Qt::Key_A);
    EXPECT_FALSE(sheet().isVisible());
    EXPECT_EQ(count<AlarmSeen>(), 1);
    EXPECT_FALSE(console->frame().bar().view().flashing);
    EXPECT_TRUE(find<Press>("footUndo")->text().startsWith(QStringLiteral("Undo: alarm seen")));
    key(Qt::Key_A); // nothing is left to be seen: it says so and opens nothing
    EXPECT_EQ(count<AlarmSeen>(), 1);
    EXPECT_FALSE(sheet().isVisible());
    EXPECT_FALSE(console->frame().foot().said().isEmpty());
    key(Qt::Key_U);
    EXPECT_EQ(count<AlarmSeen>(), 0);
    EXPECT_TRUE(console->frame().bar().view().flashing);
}

TEST_F(ConsoleAtWork, ASheetMakesWayForAnAlarmAndKeepsWhatWasTyped) {
    say(Lit{});
    key(Qt::Key_C);
    ASSERT_TRUE(sheet().isVisible());
    EXPECT_FALSE(sheet().geometry().intersects(console->frame().bar().geometry()));
    EXPECT_FALSE(sheet().geometry().intersects(console->board().cards().geometry()));
    key(Qt::Key_6);
    key(Qt::Key_7);
    session->enter(Fact{session->now() - std::chrono::minutes{30}, Fired{}});
    console->refreshSoon();
    EXPECT_TRUE(QTest::qWaitFor([&] { return console->frame().bar().view().alarm.has_value(); }, 5000));
    EXPECT_FALSE(sheet().isVisible());
    EXPECT_TRUE(console->frame().foot().said().contains(QStringLiteral("C opens it again")));
    key(Qt::Key_A);
    key(Qt::Key_C);
    ASSERT_TRUE(sheet().isVisible());
    EXPECT_EQ(sheet().findChild<TypedLine*>(QStringLiteral("reading"))->text(), "67");
}

TEST_F(ConsoleAtWork, TheEndOfAShiftIsAskedAboutWhileTheDrawIsOpenOrTheFireLit) {
    say(Lit{});
    say(DrawOpened{});
    key(Qt::Key_X);
    ASSERT_TRUE(sheet().isVisible());
    key(Qt::Key_Return);
    key(Qt::Key_Return);
    EXPECT_TRUE(session->openShift()) << "Enter answers no question";
    EXPECT_TRUE(sheet().findChild<QLabel*>(QStringLiteral("problem"))->text().startsWith("The draw is open"));
    key(Qt::Key_Y);
    EXPECT_FALSE(session->openShift());
}

TEST_F(ConsoleAtWork, AFigureInTheWrongUnitIsAskedAboutAndNeverKeptUnmarked) {
    console->choose([] {
        auto choices = plainChoices();
        choices.units = Units::metric;
        return choices;
    }());
    say(Lit{});
    key(Qt::Key_R);
    for (const int digit : {Qt::Key_2, Qt::Key_1, Qt::Key_7})
        key(digit);
    key(Qt::Key_Return);
    key(Qt::Key_Return);
    EXPECT_EQ(count<Reading>(), 0);
    EXPECT_TRUE(sheet().findChild<QWidget*>(QStringLiteral("answerYes"))->isHidden()) << "217 °C cannot be";
    EXPECT_EQ(sheet().findChild<Press*>(QStringLiteral("answerOther"))->text(), QString::fromUtf8("It is 217\u00a0°F"));
    key(Qt::Key_Z);
    ASSERT_EQ(count<Reading>(), 1);
    EXPECT_EQ(std::get<Reading>(session->boil().facts().back().fact.what).unit, Unit::degF);
}

TEST_F(ConsoleAtWork, TheLanguageIsChangedAllAtOnce) {
    say(Lit{});
    auto choices = plainChoices();
    choices.language = QStringLiteral("fr");
    console->choose(choices);
    // The program's own translation is not in the tests' resources; what matters is that every key asks for its word.
    for (const char* name : {"fireCardAction0", "drawCardAction0", "lastLoadCardAction0", "keyR", "footLook"})
        EXPECT_FALSE(find<Press>(name)->text().isEmpty()) << name;
}

// Where the keys go is seen, also as a page says itself anew and rests on none of its fields.
TEST_F(ConsoleAtWork, AnotherLanguageLeavesTheFocusWhereItIsSeen) {
    say(Lit{});
    for (const Place place : placesWithScreens(true))
        for (const auto& tab : tabsOf(place, true))
            for (const int next : {int{Qt::Key_unknown}, int{Qt::Key_Tab}, rowOf(place).key}) {
                key(rowOf(place).key);
                key(Qt::Key_0 + tab.digit);
                if (next != Qt::Key_unknown)
                    key(next);
                QEvent changed{QEvent::LanguageChange};
                QCoreApplication::sendEvent(console.get(), &changed);
                const QWidget* focus = QApplication::focusWidget();
                ASSERT_TRUE(focus);
                EXPECT_TRUE(focus->isVisible())
                    << tab.word.toStdString() << ' ' << focus->objectName().toStdString() << ' ' << next;
                QApplication::processEvents();
            }
}

// The words offered in a field stand in a window of their own, which takes the keys.
TEST_F(ConsoleAtWork, APageThatIsLeftTakesItsOfferedWordsWithIt) {
    say(Lit{});
    key(Qt::Key_F5);
    key(Qt::Key_4);
    auto* table = find<QTableWidget>("rows");
    ASSERT_TRUE(table && table->isVisible());
    table->setCurrentCell(0, 1);
    table->setFocus();
    key(Qt::Key_F);
    ASSERT_TRUE(QApplication::activePopupWidget()) << "a word is offered";
    key(Qt::Key_F3);
    EXPECT_FALSE(QApplication::activePopupWidget());
    ASSERT_TRUE(QApplication::focusWidget());
    EXPECT_TRUE(QApplication::focusWidget()->isVisible());
    EXPECT_EQ(table->item(0, 1)->text(), QStringLiteral("f"));
    key(Qt::Key_F);
    EXPECT_TRUE(sheet().isVisible()) << "the board's key";
}

// Qt opens a cell some time after it was asked to; by then the hand may be on another page.
TEST_F(ConsoleAtWork, ACellThatIsOpenedLateTakesNoKeysOfAnotherPage) {
    say(Lit{});
    key(Qt::Key_F5);
    key(Qt::Key_4);
    auto* table = find<QTableWidget>("rows");
    ASSERT_TRUE(table && table->isVisible());
    key(Qt::Key_F3);
    table->edit(table->model()->index(0, 0));
    QApplication::processEvents();
    EXPECT_TRUE(table->viewport()->findChildren<QLineEdit*>().isEmpty());
    ASSERT_TRUE(QApplication::focusWidget());
    EXPECT_TRUE(QApplication::focusWidget()->isVisible());
}

struct ConsoleInRehearsal : testing::Test {
    ~ConsoleInRehearsal() override { QLocale::setDefault(QLocale::c()); } // a console speaks a language of its own
};

TEST_F(ConsoleInRehearsal, EndsWithItsShiftSaysSoAndOffersAnother) {
    RehearsalFeed feed{4, 20000}; // an evening in a second and a half
    Console console{
        {.session = feed.session(), .journal = {}, .probeFile = {}, .notice = {}, .advance = {}, .rehearsal = &feed},
        plainChoices()};
    console.resize(1366, 768);
    console.show();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&console));
    EXPECT_FALSE(feed.session().lastEntered()) << "the made-up crew's entries are not the person's to take back";
    EXPECT_EQ(console.frame().page(), &console.board());
    KeyedPage* page = nullptr;
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            page = console.findChild<KeyedPage*>(QStringLiteral("rehearsal"));
            return page && console.frame().page() == page;
        },
        30000));
    EXPECT_TRUE(page->words().contains(QStringLiteral("The rehearsal is over")));
    const auto seed = feed.seed();
    QTest::keyClick(console.windowHandle(), Qt::Key_N);
    QApplication::processEvents();
    EXPECT_EQ(feed.seed(), seed + 1);
    EXPECT_EQ(console.frame().page(), &console.board());
}

// A newcomer learns all of it on a made-up house: each screen opens, on nights and a book that nobody keeps.
TEST_F(ConsoleInRehearsal, IsAWholeSugarhouseAndKeepsNothing) {
    std::filesystem::path left;
    {
        RehearsalFeed feed{4, 1, std::make_unique<RehearsalHouse>(4)};
        left = feed.house()->folder();
        ProbeSource watch{[&] { return feed.session().now(); }};
        Choices choices = plainChoices();
        choices.backupFolder = QStringLiteral("/their/own");
        Console console{{.session = feed.session(),
                         .journal = feed.house()->journal(),
                         .probeFile = feed.house()->folder() / "probe.toml",
                         .probes = &watch,
                         .notice = {},
                         .advance = {},
                         .rehearsal = &feed},
                        choices};
        console.resize(1366, 768);
        console.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&console));
        for (const ScreenRow& row : allScreens()) {
            console.act(row.screen);
            EXPECT_FALSE(console.frame().foot().said().contains(QStringLiteral("nothing behind this key"))) << row.word;
        }
        console.house().wait();
        ASSERT_TRUE(console.house().ledger());
        EXPECT_GT(console.house().ledger()->ledger().vessels().size(), 3u);
        EXPECT_GT(Journal::open(feed.house()->journal(), Journal::Access::read).shifts().size(), 3u);
        EXPECT_NE(console.choices().backupFolder, "/their/own") << "made-up nights do not go among their own";
        // The crew's part is taken, and another evening begins on the house as it was.
        console.act(Action::rehearsal);
        QTest::keyClick(console.windowHandle(), Qt::Key_T);
        EXPECT_TRUE(feed.isCrewAway());
        QTest::keyClick(console.windowHandle(), Qt::Key_L);
        QApplication::processEvents();
        EXPECT_TRUE(feed.isLesson());
        EXPECT_FALSE(feed.isCrewAway());
        EXPECT_FALSE(feed.session().journalTrouble());
        EXPECT_TRUE(feed.session().openShift());
    }
    EXPECT_FALSE(std::filesystem::exists(left));
}

} // namespace
} // namespace panside
