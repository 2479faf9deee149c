#include "app/commands.h"
#include "app/display.h"
#include "app/end_signal.h"
#include "app/exit_status.h"
#include "app/terminal_board.h"
#include "core/boil/replay.h"
#include "core/files/places.h"
#include "core/journal/unforeseen.h"
#include "core/probe/probe_source.h"
#include "core/rehearsal/rehearse.h"
#include "core/shift/rehearsal_feed.h"
#include "core/shift/take_up.h"
#include "ui/console/console.h"
#include "ui/frame/program.h"
#include "ui/look/wall_clock.h"
#include "ui/words/fault_words.h"

#include <QApplication>
#include <QIcon>
#include <future>
#include <ostream>

namespace panside {
namespace {

using namespace std::chrono_literals;

constexpr std::uint64_t usualSeed = 4;
constexpr auto lookEvery = 5s; // at a journal that another console writes

int inTerminal(const ConsoleRequest& request, const std::string& why, std::ostream& out, std::ostream& err) {
    if (!request.rehearsal) {
        err << why << " Set DISPLAY to one that runs; `panside tend` does the same without any.\n";
        return status::machineFailed;
    }
    out << why << " This is a rehearsal in the terminal, three hours of a made-up boil.\n";
    const auto log = rehearsedLog(3h, request.seed.value_or(usualSeed));
    replay(log, {.every = 2min}, [&](const Picture& picture) { out << terminalLine(picture) << '\n'; });
    return status::done;
}

Choices choicesFor(const ConsoleRequest& request) {
    auto choices = Choices::load();
    if (request.night || request.day)
        choices.look = request.night ? Look::night : Look::day;
    if (!request.language.empty())
        choices.language = QString::fromStdString(request.language);
    if (!request.units.empty())
        choices.units = request.units == "us" ? Units::us : Units::metric;
    return choices;
}

// The shift of the journal, taken up again or, where another console writes, only shown.
struct ConsoleShift {
    std::filesystem::path place;
    std::optional<Session> session;
    std::optional<Journal> watched;
    std::optional<JournalError> trouble; // it could not be opened at the start
    std::optional<Instant> latest;       // the journal's last fact
    // The longest of a start, on another core while the window is made.
    std::shared_future<void> fold() {
        return std::async(std::launch::async, [this] { session->boil(); }).share();
    }
    bool hasNothing() const { return !latest && !watched && !trouble && session->settings().empty(); }
    static Instant wallClock() {
        return std::chrono::floor<std::chrono::microseconds>(std::chrono::system_clock::now());
    }
    QString notice() const {
        if (watched)
            return journalWords(*watched->readOnly());
        if (trouble && session->journalTrouble())
            return journalWords(*trouble);
        if (latest && wallClock() < *latest)
            return Console::tr("The clock says %1, before the last entry of the journal (%2). Is it right?")
                .arg(moment(wallClock()), moment(*latest));
        return {};
    }
    void show() { session->watch(watched->openFacts(), notice().toStdString()); }
    void takeUp(Journal journal) {
        auto facts = journal.openFacts();
        session->letGo();
        watched.reset();
        session->takeUp(keeperIn(std::move(journal)), std::move(facts));
    }
    // What the console that writes has kept since; or, once it has ended, its place is taken. True: it was.
    bool look() {
        auto journal = Journal::open(place);
        if (!journal.readOnly()) {
            takeUp(std::move(journal));
            return true;
        }
        watched.emplace(std::move(journal));
        show();
        return false;
    }

private:
    static QString moment(Instant at) { return WallClock{}.at(at).toString(QStringLiteral("yyyy-MM-dd HH:mm")); }
};
ConsoleShift openSound(const std::filesystem::path& place) {
    ConsoleShift kept;
    kept.place = place;
    auto journal = Journal::open(place);
    kept.latest = journal.latest();
    if (journal.readOnly()) {
        kept.session.emplace(keeperOfNothing());
        kept.watched.emplace(std::move(journal));
        kept.show();
    } else {
        auto facts = journal.openFacts();
        kept.session.emplace(keeperIn(std::move(journal)));
        kept.session->resume(std::move(facts));
    }
    return kept;
}
// The fire burns all the same: the console comes up whatever is wrong with the journal, holds the night in memory, and
// tries again by itself. What can be read of it is gone on from; on the keeping page a back-up can be put back, or what
// can be read be saved.
ConsoleShift openShiftIn(const std::filesystem::path& place) {
    try {
        return openSound(place);
    } catch (...) {
        ConsoleShift kept;
        kept.place = place;
        kept.trouble = thrownAt(place);
        auto taken = takeUpWaiting(place, *kept.trouble);
        kept.latest = taken.latest;
        kept.session.emplace(std::move(taken.session));
        return kept;
    }
}

// A house with a past, where a disk takes it; else the boil alone.
std::unique_ptr<RehearsalHouse> madeUpHouse(std::uint64_t seed) {
    try {
        return std::make_unique<RehearsalHouse>(seed);
    } catch (const std::exception&) {
        return nullptr;
    }
}

void wearIcon() { QApplication::setWindowIcon(QIcon::fromTheme(QStringLiteral("panside"))); }

int runRehearsal(const ConsoleRequest& request, std::future<std::unique_ptr<RehearsalFeed>> loading) {
    const auto feed = loading.get();
    const RehearsalHouse* house = feed->house();
    ProbeSource watch{[&feed] { return feed->session().now(); }}; // its readings are shown, and not boiled by
    Console console{{.session = feed->session(),
                     .journal = house ? house->journal() : std::filesystem::path{},
                     .probeFile = house ? house->folder() / "probe.toml" : std::filesystem::path{},
                     .probes = house ? &watch : nullptr,
                     .notice = {},
                     .advance = {},
                     .rehearsal = feed.get()},
                    choicesFor(request)};
    wearIcon();
    console.showMaximized();
    return QApplication::exec();
}

std::optional<ProbeFile> probeFor(const std::string& asked, const std::filesystem::path& place, std::ostream& err) {
    return asked.empty() && !std::filesystem::exists(place) ? ProbeFile{} : probeIn(place, err);
}

int runOnJournal(const ConsoleRequest& request, const std::filesystem::path& journal, std::future<ConsoleShift> loading,
                 std::ostream& err) {
    const std::filesystem::path probePlace =
        request.probe.empty() ? usualProbeFile() : std::filesystem::path{request.probe};
    const auto probe = probeFor(request.probe, probePlace, err);
    auto kept = loading.get();
    if (!probe)
        return status::refused;
    auto& session = *kept.session;
    ProbeSource watch{[&session] { return session.now(); }};
    std::function<void()> look;
    Console* shown = nullptr;
    if (kept.watched)
        look = [&, count = 0]() mutable {
            if (!kept.watched || ++count % lookEvery.count() != 0)
                return;
            const auto trouble = troubleIn(journal, [&] {
                if (kept.look()) {
                    watch.read(*probe);
                    shown->setNotice({});
                }
            });
            if (trouble)
                shown->say(journalWords(*trouble));
        };
    Console console{{.session = session,
                     .journal = journal,
                     .probeFile = probePlace,
                     .probes = &watch,
                     .notice = [&kept] { return kept.notice(); },
                     .advance = look,
                     .isNew = kept.hasNothing(),
                     .folding = kept.fold()},
                    choicesFor(request)};
    QObject::connect(&watch, &ProbeSource::fact, &console, [&](const Fact& fact) {
        session.read(fact);
        console.refreshSoon();
    });
    const auto begun = [&] {
        wearIcon();
        if (!kept.watched)
            watch.read(*probe);
        if (kept.trouble && kept.trouble->trouble() == JournalTrouble::damaged)
            console.act(Action::keeping);
    };
    QObject::connect(&console, &Console::begun, &console, begun);
    shown = &console;
    static_cast<Program*>(qApp)->failed = [&console](const QString& words) { console.say(words); };
    console.showMaximized();
    const int result = QApplication::exec();
    static_cast<Program*>(qApp)->failed = {};
    return session.flush() ? result : status::machineFailed;
}

} // namespace

int consoleCommand(const ConsoleRequest& request, std::ostream& out, std::ostream& err) {
    if (const auto why = displayTrouble(); !why.empty())
        return inTerminal(request, why, out, err);
    // The shift is read on another core while Qt sets itself up.
    const std::filesystem::path journal =
        request.journal.empty() ? usualJournal() : std::filesystem::path{request.journal};
    std::future<ConsoleShift> kept;
    std::future<std::unique_ptr<RehearsalFeed>> rehearsal;
    if (request.rehearsal)
        rehearsal = std::async(std::launch::async, [&] {
            const auto seed = request.seed.value_or(usualSeed);
            return std::make_unique<RehearsalFeed>(seed, request.speed, madeUpHouse(seed));
        });
    else
        kept = std::async(std::launch::async, [&] { return openShiftIn(journal); });
    int argc = 1;
    char name[] = "panside";
    char* argv[] = {name, nullptr};
    Program application{argc, argv};
    keepLabelsPlain(application);
    QApplication::setApplicationName(QStringLiteral("panside"));
    QGuiApplication::setDesktopFileName(QStringLiteral("panside")); // whose icon the desktop shows
    const EndSignal end;
    return request.rehearsal ? runRehearsal(request, std::move(rehearsal))
                             : runOnJournal(request, journal, std::move(kept), err);
}

} // namespace panside
