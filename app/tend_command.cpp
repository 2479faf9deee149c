#include "app/commands.h"
#include "app/end_signal.h"
#include "app/exit_status.h"
#include "app/tend_look.h"
#include "app/tending.h"
#include "app/why_lines.h"
#include "core/boil/shift_log.h"
#include "core/boil/vocabulary.h"
#include "core/files/places.h"
#include "core/shift/take_up.h"

#include <QCoreApplication>
#include <algorithm>
#include <csignal>
#include <ostream>

namespace panside {
namespace {

// What was given on the command line stands for what the shift lacks.
void give(Session& session, const std::vector<Set>& settings, std::ostream& err) {
    const auto inForce = session.settings();
    for (const auto& setting : settings) {
        const bool there = std::ranges::any_of(inForce, [&](const Set& set) { return set.key == setting.key; });
        if (!session.openShift())
            session.carry(setting);
        else if (there)
            err << rowOf(setting.key).name << ": the shift has it set already; --set is left aside.\n";
        else
            session.enter(Fact{session.now(), setting});
    }
}

void doubtClock(const std::optional<Instant>& latest, std::ostream& err) {
    if (const auto now = ShiftClock{}.now(); latest && now < *latest)
        err << "The clock says " << textOf(now) << ", before the last fact of the journal (" << textOf(*latest)
            << "). Is it right?\n";
}

// A disk that is full, or refuses, ends no boil: it is told, and tried again.
Session sessionOn(const std::filesystem::path& place, std::ostream& err) {
    try {
        auto journal = journalToWrite(place);
        doubtClock(journal.latest(), err);
        auto facts = journal.openFacts();
        Session session{keeperIn(std::move(journal))};
        session.resume(std::move(facts));
        return session;
    } catch (const JournalError& trouble) {
        if (trouble.trouble() != JournalTrouble::diskFull && trouble.trouble() != JournalTrouble::cannotWrite)
            throw;
        err << trouble.what() << '\n';
        auto taken = takeUpWaiting(place, trouble);
        doubtClock(taken.latest, err);
        return std::move(taken.session);
    }
}

} // namespace

int tendCommand(const TendRequest& request, std::ostream& out, std::ostream& err) {
    std::optional<ProbeFile> probe;
    if (!request.probe.empty() && !(probe = probeIn(request.probe, err)))
        return status::refused;
    std::optional<LookChoices> serve;
    if (!request.serve.empty()) {
        auto place = servedAt(request.serve);
        if (const auto* wrong = std::get_if<std::string>(&place)) {
            err << *wrong << '\n';
            return status::wrongUsage;
        }
        serve = std::get<LookChoices>(place);
    }
    int argc = 1;
    char name[] = "panside";
    char* argv[] = {name, nullptr};
    QCoreApplication loop{argc, argv};
    const EndSignal end;
    std::signal(SIGPIPE, SIG_IGN); // a reader that went away is seen when writing

    const auto place = request.journal.empty() ? usualJournal() : std::filesystem::path{request.journal};
    Session session = sessionOn(place, err);
    give(session, request.settings, err);
    std::optional<TendLook> look;
    if (serve && !look.emplace(*serve).open(err))
        return status::machineFailed;
    Tending tending{session, std::move(probe), out, err};
    House house{session, place};
    tending.hear(house);
    WhyLines why{err};
    tending.tell([&](const Picture& picture) {
        if (look)
            look->tell(picture, session.boil());
        if (request.why)
            why.say(picture);
    });
    tending.start();
    QCoreApplication::exec();
    if (!session.flush()) {
        err << session.trouble() << "\nThe last facts could not be kept.\n";
        return status::machineFailed;
    }
    return tending.exitStatus();
}

} // namespace panside
