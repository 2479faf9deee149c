// The ledger's pages in the window as a whole, on a journal of its own, by real keys and touches.
#include "core/boil/shift_log.h"
#include "core/journal/day_books.h"
#include "core/probe/probe_watch.h"
#include "core/shift/keeper.h"
#include "tests/ui/ledger/house_of.h"
#include "ui/console/console.h"
#include "ui/console/screens.h"
#include "ui/frame/foot.h"
#include "ui/frame/frame_view.h"
#include "ui/ledger/book_sheet.h"
#include "ui/ledger/house.h"
#include "ui/ledger/list_page.h"
#include "ui/look/press.h"
#include "ui/look/typed_line.h"
#include "ui/trace/trace_screen.h"
#include "ui/vessels/vessels_screen.h"

#include <QApplication>
#include <QLabel>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {
namespace {

struct LedgerConsole : testing::Test {
    QTemporaryDir folder;
    std::filesystem::path place;
    std::unique_ptr<Session> session;
    std::unique_ptr<ProbeWatch> watch;
    std::unique_ptr<Console> console;

    LedgerConsole() {
        qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());
        qputenv("XDG_DATA_HOME", folder.path().toUtf8());
        place = folder.filePath(QStringLiteral("own.journal")).toStdString();
        auto journal = Journal::open(place);
        importBook(journal, houseRows());
        session = std::make_unique<Session>(keeperIn(std::move(journal)));
        watch = std::make_unique<ProbeWatch>([this] { return session->now(); });
        Choices choices;
        choices.cautioned = true;
        choices.units = Units::us;
        console = std::make_unique<Console>(
            Console::Behind{.session = *session,
                            .journal = place,
                            .probeFile = std::filesystem::path{folder.filePath(QStringLiteral("p.toml")).toStdString()},
                            .probes = watch.get(),
                            .notice = {},
                            .advance = {},
                            .entered = {},
                            .isOver = {},
                            .again = {}},
            choices);
        console->resize(1366, 768);
        console->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(console.get()));
    }
    ~LedgerConsole() override {
        console.reset();
        QCoreApplication::removePostedEvents(nullptr);
        QLocale::setDefault(QLocale::c());
    }
    void key(int code) {
        QTest::keyClick(console->windowHandle(), static_cast<Qt::Key>(code));
        QApplication::processEvents();
        console->house().wait();
        QApplication::processEvents();
    }
    void type(const QString& text) {
        for (const QChar letter : text)
            QTest::keyClick(console->windowHandle(), letter.toLatin1());
        QApplication::processEvents();
    }
    std::size_t rows() const { return bookFacts(Journal::open(place, Journal::Access::read)).size(); }
    QString wants() const { return console->findChild<QLabel*>(QStringLiteral("wants"))->text(); }
    BookSheet& sheet() const { return *console->findChild<BookSheet*>(); }
    QStringList tabs() const {
        QStringList words;
        for (const FrameTab& tab : tabsOf(Place::syrup, true, console.get()))
            words << tab.word;
        return words;
    }
};

TEST_F(LedgerConsole, OneKeyFromTheBoardShowsWhatTheVesselsWant) {
    key(Qt::Key_V);
    EXPECT_EQ(console->frame().page(), console->findChild<VesselsScreen*>());
    EXPECT_TRUE(wants().startsWith(QStringLiteral("pail 3"))) << wants().toStdString();
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
