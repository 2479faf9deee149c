#pragma once
// The console on a small made-up house's ledger, driven by real keys and touches.
#include "core/journal/day_books.h"
#include "core/probe/probe_source.h"
#include "core/shift/keeper.h"
#include "tests/ui/ledger/house_of.h"
#include "ui/console/console.h"
#include "ui/console/screens.h"
#include "ui/ledger/book_sheet.h"
#include "ui/ledger/house.h"

#include <QApplication>
#include <QLabel>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {

struct LedgerConsole : testing::Test {
    QTemporaryDir folder;
    std::filesystem::path place;
    std::unique_ptr<Session> session;
    std::unique_ptr<ProbeSource> watch;
    std::unique_ptr<Console> console;

    LedgerConsole() {
        qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());
        qputenv("XDG_DATA_HOME", folder.path().toUtf8());
        place = folder.filePath(QStringLiteral("own.journal")).toStdString();
        auto journal = Journal::open(place);
        importBook(journal, houseRows());
        session = std::make_unique<Session>(keeperIn(std::move(journal)));
        watch = std::make_unique<ProbeSource>([this] { return session->now(); });
        Choices choices;
        choices.cautioned = true;
        choices.units = Units::us;
        console = std::make_unique<Console>(
            Console::Behind{.session = *session,
                            .journal = place,
                            .probeFile = std::filesystem::path{folder.filePath(QStringLiteral("p.toml")).toStdString()},
                            .probes = watch.get(),
                            .notice = {},
                            .advance = {}},
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

} // namespace panside
