#pragma once
// The console on a journal of its own, driven by real keys and touches.
#include "core/journal/journal.h"
#include "core/probe/probe_source.h"
#include "core/shift/keeper.h"
#include "ui/console/console.h"
#include "ui/entry/entry_sheet.h"

#include <QApplication>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

namespace panside {

inline Choices plainChoices() {
    Choices choices;
    choices.cautioned = true;
    return choices;
}

// Of somebody who has never seen the console.
inline Choices newcomersChoices() {
    Choices choices;
    choices.units = Units::us;
    return choices;
}

struct ConsoleAtWork : testing::Test {
    QTemporaryDir folder;
    std::int64_t passedUs = 0; // how far the test has put its clock on
    std::unique_ptr<Session> session;
    std::unique_ptr<ProbeSource> watch;
    std::unique_ptr<Console> console;

    ConsoleAtWork() : ConsoleAtWork{false, plainChoices()} {}
    // `isNew`: the first questions come.
    ConsoleAtWork(bool isNew, const Choices& choices) {
        qputenv("XDG_CONFIG_HOME", folder.path().toUtf8());
        qputenv("XDG_DATA_HOME", folder.path().toUtf8());
        const auto place = std::filesystem::path{folder.filePath(QStringLiteral("own.journal")).toStdString()};
        session =
            std::make_unique<Session>(keeperIn(Journal::open(place)), ShiftClock{[this] {
                                          const auto ticks = ShiftClock::systemTicks();
                                          return ShiftClock::Ticks{ticks.wallUs + passedUs, ticks.bootUs + passedUs};
                                      }});
        watch = std::make_unique<ProbeSource>([this] { return session->now(); });
        console = std::make_unique<Console>(
            Console::Behind{.session = *session,
                            .journal = place,
                            .probeFile = std::filesystem::path{folder.filePath(QStringLiteral("p.toml")).toStdString()},
                            .probes = watch.get(),
                            .notice = {},
                            .advance = {},
                            .isNew = isNew},
            choices);
        console->resize(1366, 768);
        console->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(console.get()));
    }
    ~ConsoleAtWork() override {
        console.reset();
        QCoreApplication::removePostedEvents(nullptr);
        QLocale::setDefault(QLocale::c());
    }
    // As the keyboard does it: to the window, which knows who has the focus.
    void key(int code, Qt::KeyboardModifiers held = Qt::NoModifier) {
        QTest::keyClick(console->windowHandle(), static_cast<Qt::Key>(code), held);
        QApplication::processEvents();
    }
    void pass(Duration time) {
        passedUs += std::chrono::round<std::chrono::microseconds>(time).count();
        session->tick();
        console->refreshSoon();
        QTest::qWait(60);
    }
    void say(What what) {
        session->enter(Fact{session->now(), std::move(what)});
        console->refreshSoon();
        QTest::qWait(60);
    }
    template <class Kind>
    int count() const {
        int found = 0;
        for (const auto& entry : session->boil().facts())
            found += std::holds_alternative<Kind>(entry.fact.what);
        return found;
    }
    template <class Found>
    Found* find(const char* name) {
        return console->findChild<Found*>(QString::fromLatin1(name));
    }
    EntrySheet& sheet() { return *find<EntrySheet>("entrySheet"); }
};

} // namespace panside
