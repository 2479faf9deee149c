#include "tests/ui/pictures/made_house.h"

#include "core/boil/shift_log.h"
#include "core/journal/day_books.h"
#include "core/journal/log_import.h"
#include "core/rehearsal/rehearse.h"
#include "core/rehearsal/season.h"
#include "core/shift/keeper.h"
#include "ui/ledger/house.h"
#include "ui/review/review_screen.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <map>
#include <sstream>

namespace panside {
namespace {

using namespace std::chrono_literals;

void fillJournal(const std::string& place, MadeOf made, Instant now) {
    auto journal = Journal::open(place);
    const MadeSeason house = largeHouse(3);
    std::vector<std::string> nights;
    if (made != MadeOf::house)
        nights = {rehearsedLog(5h, 4), rehearsedLog(5h, 7)};
    if (made != MadeOf::nights)
        nights.insert(nights.end(), house.shifts.begin(), house.shifts.end());
    for (const std::string& night : nights) {
        std::istringstream log{night};
        if (const auto facts = readLog(night).facts; !facts.empty() && facts.front().at < now)
            importLog(journal, log);
    }
    auto book = readLog(house.dayBook).facts;
    std::erase_if(book, [&](const Fact& fact) { return fact.at >= now; });
    if (made != MadeOf::nights)
        importBook(journal, book);
}

// Made once for each moment: it takes seconds.
QString journalAt(MadeOf made, const char* now) {
    static const QTemporaryDir folder;
    const QString place =
        folder.filePath(QStringLiteral("%1_%2").arg(static_cast<int>(made)).arg(QString::fromLatin1(now).remove(u':')));
    if (!QFile::exists(place))
        fillJournal(place.toStdString(), made, *instantIn(now));
    return place;
}

// A clock that stands still.
ShiftClock stoppedAt(Instant now) {
    const auto us = std::chrono::duration_cast<std::chrono::microseconds>(now.time_since_epoch()).count();
    return ShiftClock{[us] { return ShiftClock::Ticks{us, us}; }};
}

} // namespace

MadeHouse::MadeHouse(MadeOf made, const char* now, const QSize& size, Look look, Units units) {
    const std::filesystem::path file{folder_.filePath(QStringLiteral("invented.journal")).toStdString()};
    QFile::copy(journalAt(made, now), QString::fromStdString(file.string()));
    session_ = std::make_unique<Session>(keeperIn(Journal::open(file)), stoppedAt(*instantIn(now)));
    if (made == MadeOf::all)
        session_->enter(Fact{session_->now() - 2min, Lit{}});
    watch_ = std::make_unique<ProbeWatch>([this] { return session_->now(); });
    Choices choices;
    choices.cautioned = true;
    choices.look = look;
    choices.units = units;
    console_ = std::make_unique<Console>(
        Console::Behind{.session = *session_,
                        .journal = file,
                        .probeFile = std::filesystem::path{folder_.filePath(QStringLiteral("p.toml")).toStdString()},
                        .probes = watch_.get(),
                        .notice = {},
                        .advance = {}},
        choices);
    console_->resize(size);
    console_->show();
}

void MadeHouse::openPastNight() {
    constexpr int patience = 30'000;
    console_->act(Action::review);
    auto* screen = console_->findChild<ReviewScreen*>();
    auto* told = screen->findChild<QLabel*>(QStringLiteral("said"));
    QApplication::processEvents();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    const QString before = told->text();
    if (!QTest::qWaitFor([&] { return told->text() != before; }, patience))
        qFatal("the story of a past night does not come");
    for (auto* page : console_->findChildren<QScrollArea*>()) // back to its chart
        page->verticalScrollBar()->setValue(0);
}

} // namespace panside
