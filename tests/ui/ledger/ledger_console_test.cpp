// The ledger's pages in the window as a whole, on a journal of its own, by real keys and touches.
#include "core/boil/shift_log.h"
#include "tests/ui/ledger/ledger_console.h"
#include "tests/ui/pictures/made_house.h"
#include "ui/files/file_pick.h"
#include "ui/frame/foot.h"
#include "ui/frame/frame_view.h"
#include "ui/ledger/ledger_table.h"
#include "ui/ledger/list_page.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/page/page.h"
#include "ui/trace/trace_screen.h"
#include "ui/vessels/vessels_screen.h"
#include "ui/words/alarm_words.h"

#include <QFile>
#include <QTimer>

namespace panside {
namespace {

TEST_F(LedgerConsole, OneKeyFromTheBoardShowsWhatTheVesselsWant) {
    key(Qt::Key_V);
    EXPECT_EQ(console->frame().page(), console->findChild<VesselsScreen*>());
    EXPECT_TRUE(wants().startsWith(QStringLiteral("pail 3"))) << wants().toStdString();
}

// A season takes seconds to read, and a torn journal is never read: what is to be written can be all the same.
TEST_F(LedgerConsole, WritesIntoTheBookOfAHouseThatCannotBeRead) {
    QFile torn{folder.filePath(QStringLiteral("torn.journal"))};
    ASSERT_TRUE(torn.open(QIODevice::WriteOnly) && torn.write("no journal") > 0);
    torn.close();
    Session alone{keeperOfNothing()};
    Choices choices;
    choices.cautioned = true;
    Console unread{{.session = alone,
                    .journal = torn.fileName().toStdString(),
                    .probeFile = {},
                    .probes = watch.get(),
                    .notice = {},
                    .advance = {}},
                   choices};
    unread.act(Action::vessels);
    unread.house().wait();
    ASSERT_EQ(unread.house().ledger(), nullptr);
    for (const Deed deed : {Deed::graded, Deed::moved, Deed::sold, Deed::lost}) {
        emit unread.findChild<VesselsScreen*>()->deedWanted(deed, {});
        const auto* opened = unread.findChild<BookSheet*>();
        EXPECT_FALSE(opened->isHidden());
        EXPECT_EQ(opened->form().deed, deed);
    }
}

// The house learns of a draw a moment later; whoever presses at once sees that pail all the same.
TEST_F(LedgerConsole, ThePailJustDrawnIntoIsShownToWhoeverPressesAtOnce) {
    key(Qt::Key_V);
    key(Qt::Key_Escape);
    key(Qt::Key_D);
    key(Qt::Key_Return);
    key(Qt::Key_D);
    key(Qt::Key_2);
    key(Qt::Key_Tab);
    type(QStringLiteral("pail 4"));
    QTest::keyClick(console->windowHandle(), Qt::Key_Return);
    QTest::keyClick(console->windowHandle(), Qt::Key_V);
    console->house().wait();
    QApplication::processEvents();
    EXPECT_TRUE(wants().startsWith(QStringLiteral("pail 4"))) << wants().toStdString();
}

TEST_F(LedgerConsole, AMoveIsEnteredByKeysSeenAtOnceAndTakenBack) {
    key(Qt::Key_V);
    const std::size_t before = rows();
    key(Qt::Key_M);
    ASSERT_TRUE(sheet().isVisible());
    EXPECT_EQ(sheet().form().answer(Key::from), QStringLiteral("pail 3"));
    type(QStringLiteral("pail 4"));
    key(Qt::Key_Return);
    EXPECT_FALSE(sheet().isVisible());
    EXPECT_EQ(rows(), before + 1);
    EXPECT_EQ(wants(), QStringLiteral("pail 3 is empty."));
    EXPECT_TRUE(console->frame().foot().said().contains(QStringLiteral("moved")))
        << console->frame().foot().said().toStdString();
    key(Qt::Key_U);
    EXPECT_EQ(rows(), before);
}

// A round of two stops: what is read is typed, all else stands already. Ten seconds an entry are eight keys (a key and
// a half a second, gloves on: our judgement).
TEST_F(LedgerConsole, AGatheringGoesByRouteStopByStopInEightKeysAnEntry) {
    {
        auto journal = session->journalBeside();
        importBook(*journal,
                   {rowIn("2026-03-03T14:00:00Z,vessel,600,gal,name=shed;kind=hold"), // there is room for all of it
                    rowIn("2026-03-03T15:00:00Z,gathered,40,gal,to=shed;from=yard;taps=60;by=Ansel"),
                    rowIn("2026-03-03T15:20:00Z,gathered,55,gal,to=shed;from=brook;taps=80;brix=2.1;by=Ansel")});
    }
    console->act(Action::tanks);
    console->house().wait();
    QApplication::processEvents();
    const std::size_t before = rows();
    int keys = 0;
    const auto counted = [&](int code) {
        ++keys;
        key(code);
    };
    counted(Qt::Key_R);
    ASSERT_TRUE(sheet().isVisible());
    EXPECT_EQ(sheet().form().answer(Key::from), QStringLiteral("yard"));
    EXPECT_EQ(sheet().form().answer(Key::taps), QStringLiteral("60"));
    for (const int code : {Qt::Key_3, Qt::Key_8, Qt::Key_Tab, Qt::Key_2, Qt::Key_Period, Qt::Key_2, Qt::Key_Return})
        counted(code);
    EXPECT_LE(keys, 8);
    EXPECT_EQ(rows(), before + 1) << sheet().findChild<QLabel*>(QStringLiteral("problem"))->text().toStdString();
    ASSERT_TRUE(sheet().isVisible()) << "the next stop";
    EXPECT_EQ(sheet().form().answer(Key::from), QStringLiteral("brook"));
    keys = 0;
    for (const int code : {Qt::Key_4, Qt::Key_1, Qt::Key_Return})
        counted(code);
    EXPECT_EQ(keys, 3);
    EXPECT_EQ(rows(), before + 2);
    key(Qt::Key_4);
    key(Qt::Key_Escape);
    EXPECT_FALSE(sheet().isVisible()) << "north bush is left out";
    EXPECT_EQ(rows(), before + 2);
    const auto facts = bookFacts(Journal::open(place, Journal::Access::read));
    const auto& last = std::get<DayRow>(facts.back().fact.what);
    EXPECT_EQ(last.text(Key::to), "shed");
    EXPECT_EQ(last.text(Key::taps), "80");
}

// A tank nearly full by the book calls on the board too.
TEST_F(LedgerConsole, ATankThatIsNearlyFullCallsOnTheBoard) {
    console->house().ask();
    console->house().wait();
    session->carry(Set{Setting::overflow_rim, Volume::gallon(50).si(), Unit::gal});
    session->carry(Set{Setting::overflow_calls, 0, Unit::none, "Ruth"});
    session->enter(std::get<Fact>(factOf({}, "gathered", "80", "gal", "to=hold;brix=2", session->now())));
    console->house().ask();
    console->house().wait();
    QApplication::processEvents();
    const auto alarms = session->picture().alarms;
    ASSERT_EQ(alarms.size(), 1u);
    EXPECT_EQ(alarms[0].alarm, Alarm::tank_overflow);
    EXPECT_TRUE(alarmLine(alarms[0]).startsWith(QStringLiteral("hold")));
    EXPECT_TRUE(alarmLine(alarms[0]).endsWith(QStringLiteral("Call Ruth")));
}

TEST_F(LedgerConsole, HomeAndEndGoToTheEndsOfAList) {
    key(Qt::Key_V);
    const QString first = wants();
    key(Qt::Key_End);
    EXPECT_NE(wants(), first);
    key(Qt::Key_Home);
    EXPECT_EQ(wants(), first);
}

TEST_F(LedgerConsole, WhatTheLedgerFindsOddIsAskedOnce) {
    key(Qt::Key_V);
    const std::size_t before = rows();
    key(Qt::Key_M);
    type(QStringLiteral("drum 7"));
    key(Qt::Key_Tab);
    type(QStringLiteral("9"));
    key(Qt::Key_Return);
    EXPECT_TRUE(sheet().isVisible());
    EXPECT_EQ(rows(), before);
    EXPECT_TRUE(
        sheet().findChild<QLabel*>(QStringLiteral("problem"))->text().contains(QStringLiteral("more come out")));
    key(Qt::Key_Return);
    EXPECT_EQ(rows(), before + 1);
}

TEST_F(LedgerConsole, SeesNoWordOfAFilterWhereThereIsNone) {
    key(Qt::Key_V);
    EXPECT_FALSE(tabs().contains(QStringLiteral("Filter")));
    session->enter(Fact{session->now(), Set{Setting::filter_limit, Pressure::kilopascal(140).pascal(), Unit::kPa}});
    EXPECT_TRUE(tabs().contains(QStringLiteral("Filter")));
}

TEST_F(LedgerConsole, APackComesWithItsCodeAndALotIsTraced) {
    key(Qt::Key_F4);
    key(Qt::Key_3);
    auto* pack = console->findChild<ListPage*>(QStringLiteral("pack"));
    ASSERT_EQ(console->frame().page(), pack);
    pack->choose(0);
    key(Qt::Key_P);
    ASSERT_TRUE(sheet().isVisible());
    const QString code = sheet().form().answer(Key::lot);
    EXPECT_FALSE(code.isEmpty());
    type(QStringLiteral("4"));
    key(Qt::Key_Tab);
    type(QStringLiteral("1pt"));
    key(Qt::Key_Return);
    if (sheet().isVisible()) // the pail is heavier than the place allows, and that is asked
        key(Qt::Key_Return);
    EXPECT_FALSE(sheet().isVisible());
    key(Qt::Key_5);
    auto* trace = console->findChild<TraceScreen*>();
    ASSERT_EQ(console->frame().page(), trace);
    EXPECT_TRUE(trace->headline().startsWith(code)) << trace->headline().toStdString();
}

// A tired hand with gloves: what the keystroke-level model gives the slowest typist for a key (Card, Moran and Newell
// 1980, from memory), and for making up a mind before each field.
constexpr double glovedKey = 1.2, oneThought = 1.35; // seconds

TEST_F(LedgerConsole, AGloveEntersAPackInHalfAMinute) {
    int presses = 0, thoughts = 0;
    const auto press = [&](QWidget* at) {
        ASSERT_TRUE(at && at->isVisible());
        ++presses;
        QTest::mouseClick(at, Qt::LeftButton, {}, at->rect().center());
        QApplication::processEvents();
        console->house().wait();
        QApplication::processEvents();
    };
    const auto named = [&](const char* name) { return console->findChild<QWidget*>(QString::fromLatin1(name)); };
    const auto digits = [&](const char* number) {
        ++thoughts;
        for (const char* digit = number; *digit; ++digit)
            press(sheet().findChild<QWidget*>(QStringLiteral("pad_") + QLatin1Char(*digit)));
    };
    const auto next = [&] { press(sheet().findChild<QWidget*>(QStringLiteral("pad_next"))); };
    const auto offered = [&](const QString& word) {
        ++thoughts;
        for (QWidget* one : sheet().findChildren<Press*>())
            if (one->isVisible() && one->property("word").toString() == word)
                return press(one);
        FAIL() << word.toStdString() << " is not offered";
    };
    { // the pail touched last is as the place wants it: nothing is odd
        auto journal = session->journalBeside();
        importBook(*journal, {rowIn("2026-03-02T11:30:00Z,bought,4.5,gal,what=syrup;vessel=pail 4;brix=66.9")});
    }
    const std::size_t before = rows();
    press(named("placeF4"));
    press(named("tab1"));
    auto* pack = console->findChild<ListPage*>(QStringLiteral("pack"));
    ASSERT_EQ(console->frame().page(), pack);
    press(pack->findChild<QWidget*>(QStringLiteral("pack"))); // the key; what was touched last is chosen
    ASSERT_TRUE(sheet().isVisible());
    digits("24");
    next();
    offered(QStringLiteral("1pt"));
    next();
    offered(QStringLiteral("glass"));
    next();
    digits("186");
    next();
    digits("183");
    press(sheet().findChild<QWidget*>(QStringLiteral("keep")));
    if (sheet().isVisible()) { // what is odd is asked: one more look and one more press
        ++thoughts;
        press(sheet().findChild<QWidget*>(QStringLiteral("keep")));
    }
    EXPECT_FALSE(sheet().isVisible()) << sheet().findChild<QLabel*>(QStringLiteral("problem"))->text().toStdString();
    ASSERT_EQ(rows(), before + 1);
    ASSERT_FALSE(console->house().ledger()->ledger().lots().empty());
    const auto& lot = console->house().ledger()->ledger().lots().back();
    EXPECT_EQ(lot.sizes[0].made, 24);
    EXPECT_NEAR(lot.coolest.value().fahrenheit(), 183, 1e-6);
    EXPECT_LE(presses * glovedKey + thoughts * oneThought, 30) << presses << " presses, " << thoughts << " thoughts";
}

// A scanner types what the label says and presses Enter: the page that was opened takes it, with no key before.
TEST_F(LedgerConsole, AScannedCodeIsTracedOnceThePageIsOpen) {
    for (const char* lot : {"26061-1", "26061-2"})
        session->enter(rowIn("2026-03-02T12:00:00Z,packed,4,,lot=" + std::string{lot} + ";from=pail 3;size=1pt"));
    session->flush();
    key(Qt::Key_F4);
    key(Qt::Key_5);
    auto* trace = console->findChild<TraceScreen*>();
    ASSERT_EQ(console->frame().page(), trace);
    ASSERT_TRUE(trace->headline().startsWith(QStringLiteral("26061-2"))) << trace->headline().toStdString();
    ASSERT_TRUE(QApplication::focusWidget());
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("asked"));
    for (const char* scanned : {"26061-1", "26061-2", "26061-1"}) { // one after another
        QTest::keyClicks(QApplication::focusWidget(), QString::fromLatin1(scanned));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        EXPECT_EQ(console->frame().page(), trace);
        EXPECT_TRUE(trace->headline().startsWith(QString::fromLatin1(scanned))) << trace->headline().toStdString();
    }
}

TEST_F(LedgerConsole, AMockRecallIsPrintedInTenSeconds) {
    Fact packed = rowIn("2026-03-02T12:00:00Z,packed,9,,lot=26061-1;from=pail 3;size=1pt;brix=66.9");
    session->enter(packed);
    session->enter(rowIn("2026-03-02T13:00:00Z,shipped,4,,lot=26061-1;size=1pt;to=Corner Shop"));
    session->flush();
    const QByteArray home = qgetenv("HOME");
    qputenv("HOME", folder.path().toUtf8());
    int presses = 0;
    const auto count = [&](int code) {
        ++presses;
        key(code);
    };
    count(Qt::Key_F4);
    count(Qt::Key_5);
    auto* trace = console->findChild<TraceScreen*>();
    EXPECT_TRUE(trace->headline().startsWith(QStringLiteral("26061-1"))) << trace->headline().toStdString();
    QTimer::singleShot(0, qApp, [&] { // where it goes is asked; its name stands there already
        FilePick* pick = nullptr;
        EXPECT_TRUE(QTest::qWaitFor([&] { return (pick = console->findChild<FilePick*>()) && pick->isVisible(); }));
        if (!pick)
            return;
        for (const char* name : {"pickRoot_0", "pickTake"}) { // in one's own folder, under the name that stands there
            ++presses;
            QTest::mouseClick(pick->findChild<Press*>(QString::fromLatin1(name)), Qt::LeftButton);
        }
        EXPECT_FALSE(pick->isVisible()) << pick->findChild<QLabel*>(QStringLiteral("said"))->text().toStdString();
        if (pick->isVisible())
            pick->reject(); // the test ends, whatever it found
    });
    ++presses;
    QWidget* print = trace->findChild<QWidget*>(QStringLiteral("recall"));
    ASSERT_TRUE(print && print->isVisible());
    QTest::mouseClick(print, Qt::LeftButton);
    EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("recall.pdf"))));
    // One thought: the lot that is asked about.
    EXPECT_LE(presses * glovedKey + oneThought, 10) << presses << " presses";
    qputenv("HOME", home);
}

TEST_F(LedgerConsole, WhatIsTakenBackBehindAPackedLotIsSaidWithItsBuyers) {
    key(Qt::Key_V);
    session->enter(rowIn("2026-03-02T12:00:00Z,packed,9,,lot=26061-1;from=pail 3;size=1pt;brix=66.9"));
    session->enter(rowIn("2026-03-02T13:00:00Z,shipped,4,,lot=26061-1;size=1pt;to=Corner Shop"));
    session->enter(rowIn("2026-03-02T11:30:00Z,bought,0.4,gal,what=syrup;vessel=pail 3;brix=60;from=Odile"));
    key(Qt::Key_1); // the page reads the books again
    console->house().ask();
    console->house().wait();
    QApplication::processEvents();
    key(Qt::Key_U);
    auto* page = dynamic_cast<Page*>(console->frame().page());
    ASSERT_TRUE(page);
    for (const char* word : {"26061-1", "9 × 1pt", "Corner Shop (4)", "percent of its sugar", "density by the book"})
        EXPECT_TRUE(page->words().contains(QString::fromUtf8(word))) << word << page->words().toStdString();
}

// With all that a run says the page keeps its keys in sight: a glove has no wheel.
TEST(FilterPage, KeepsItsKeysInSightWhileARunGoesOn) {
    for (const QSize size : {QSize{1024, 600}, QSize{1366, 768}, QSize{1920, 1080}}) {
        MadeHouse house{MadeOf::turns, afterTheSeason, size, Look::day, Units::us};
        Console& console = house.console();
        console.act(Action::filter);
        console.house().wait();
        QTest::qWait(50);
        auto* end = console.frame().page()->findChild<Press*>(QStringLiteral("end"));
        ASSERT_TRUE(end);
        EXPECT_EQ(end->visibleRegion().boundingRect().size(), end->size()) << size.width();
        for (const auto* row : console.frame().page()->findChildren<LedgerTable*>())
            if (row->isVisible()) {
                EXPECT_GE(row->visibleRegion().boundingRect().height(), Measure{}.px(18)) << size.width();
            }
    }
    QLocale::setDefault(QLocale::c());
}

TEST_F(LedgerConsole, EveryPageIsWholeInTheThreeSizes) {
    for (const QSize size : {QSize{1024, 600}, QSize{1366, 768}, QSize{1920, 1080}}) {
        console->resize(size);
        for (const Action screen : {Action::vessels, Action::pack, Action::lots, Action::trace, Action::book}) {
            console->act(screen);
            console->house().wait();
            QApplication::processEvents();
            const QWidget* page = console->frame().page();
            for (const Press* one : page->findChildren<Press*>()) {
                if (!one->isVisible())
                    continue;
                EXPECT_GE(one->height(), 45) << page->objectName().toStdString() << one->text().toStdString();
                EXPECT_TRUE(one->isWhole())
                    << page->objectName().toStdString() << ' ' << one->text().toStdString() << size.width();
                EXPECT_TRUE(page->rect().contains(QRect{one->mapTo(page, QPoint{}), one->size()}))
                    << page->objectName().toStdString() << one->text().toStdString() << size.width();
            }
        }
    }
}

} // namespace
} // namespace panside
