#include "core/shift/take_up.h"

#include "core/journal/unforeseen.h"

namespace panside {

TakenUpWaiting takeUpWaiting(const std::filesystem::path& place, const JournalError& why) {
    Standing standing;
    Facts facts;
    std::optional<Instant> latest;
    troubleIn(place, [&] {
        const auto journal = Journal::open(place, Journal::Access::read);
        facts = journal.openFacts();
        standing = journal.standing();
        latest = journal.latest();
    });
    TakenUpWaiting taken{Session{keeperWaitingFor(place, std::move(standing), why)}, latest};
    taken.session.resume(std::move(facts));
    return taken;
}

} // namespace panside
