#include "tests/ui/pictures/made_house.h"

#include "core/boil/shift_log.h"
#include "core/journal/day_books.h"
#include "core/journal/log_import.h"
#include "core/rehearsal/rehearsal.h"
#include "core/rehearsal/rehearse.h"
#include "core/rehearsal/season.h"
#include "core/shift/keeper.h"
#include "ui/ledger/house.h"
#include "ui/review/review_screen.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QLocale>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <algorithm>
#include <map>
#include <sstream>

namespace panside {
namespace {

using namespace std::chrono_literals;

// What happens to every house in some year.
constexpr const char* turnRows = R"(time,what,value,unit,detail
2027-03-15T10:00:00Z,lost,400,L,from=house tank;why=sour
2027-03-24T08:30:00Z,gathered,300,L,to=south tank;from=late run;brix=1.6;clear=ropy;temp=9degC
2027-03-25T09:00:00Z,graded,30,percent,vessel=drum 8;off=buddy
2027-03-25T09:30:00Z,moved,10,L,from=drum 8;to=drum 7
2027-03-27T12:00:00Z,lost,18,L,from=pail 2;why=spilled
2027-03-28T17:00:00Z,pans_emptied,60,L,to=pail 2;chased=water
2027-03-30T12:00:00Z,lost,2,L,from=drum 5;why=given
2027-04-01T08:00:00Z,dipped,95,L,in=drum 4
2027-04-02T08:00:00Z,moved,,,from=drum 5;to=drum 6
2027-08-11T09:00:00Z,moved,30,L,from=drum 3;to=canner
2027-08-11T09:30:00Z,dipped,31,L,in=canner;brix=65.6
2027-08-11T11:00:00Z,packed,20,,lot=27-223-A;from=canner;size=0.5L;of=glass;filler=84degC;capped=80degC;brix=65.7
2027-08-12T11:00:00Z,shipped,25,,lot=27-223-A;size=0.5L;to=the fair
2027-09-01T19:00:00Z,press_on,,,from=drum 6;to=filter tank;aid=DE 12;papers=new;temp=86degC
2027-09-01T19:20:00Z,press_off,60,L,heel=4L;result=clear
2027-09-01T20:00:00Z,press_on,,,from=drum 6;to=filter tank;aid=DE 13;papers=new;temp=86degC
)";

// The gauge of the run that goes on.
void turnThePress(Session& session) {
    const Instant begun = *instantIn("2027-09-01T20:00:00Z");
    session.enter(Fact{begun - 5min, Set{Setting::filter_limit, 300e3, Unit::kPa}});
    session.enter(Fact{begun - 5min, Lit{}});
    for (int i = 1; i <= 9; ++i)
        session.enter(Fact{begun + i * 3min,
                           Reading{Series::filter_pressure, 20e3 + 18e3 * i + 600.0 * i * i, Unit::kPa, "hand"}});
}

void fillJournal(const std::string& place, MadeOf made, Instant now) {
    auto journal = Journal::open(place);
    const MadeSeason house = largeHouse(3);
    std::vector<std::string> nights;
    if (made == MadeOf::nights || made == MadeOf::all)
        nights = {rehearsedLog(5h, 4), rehearsedLog(5h, 7)};
    if (made != MadeOf::nights)
        nights.insert(nights.end(), house.shifts.begin(), house.shifts.end());
    for (const std::string& night : nights) {
        std::istringstream log{night};
        if (const auto facts = readLog(night).facts; !facts.empty() && facts.front().at < now)
            importLog(journal, log);
    }
    auto book = readLog(house.dayBook).facts;
    if (made == MadeOf::turns) {
        const auto turns = readLog(turnRows).facts;
        book.insert(book.end(), turns.begin(), turns.end());
        std::stable_sort(book.begin(), book.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    }
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

// An evening's boil under way; made once for each moment.
std::vector<Fact> eveningUpTo(Instant now) {
    static std::map<Instant, std::vector<Fact>> made;
    auto& facts = made[now];
    if (facts.empty())
        facts = rehearsalUnderWay(RehearsalOptions{}, 4, now).past;
    return facts;
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
        session_->follow(eveningUpTo(session_->now()));
    if (made == MadeOf::turns)
        turnThePress(*session_);
    watch_ = std::make_unique<ProbeSource>([this] { return session_->now(); });
    Choices choices;
    choices.cautioned = true;
    choices.look = look;
    choices.units = units;
    choices.language = QLocale{}.language() == QLocale::French ? QStringLiteral("fr") : QStringLiteral("en");
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
