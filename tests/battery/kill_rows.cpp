// Rows in which what keeps the night is killed: while a probe is read at 10 Hz, and while an older form is brought up.
#include "core/shift/session.h"
#include "tests/battery/child.h"
#include "tests/battery/hour.h"
#include "tests/battery/older_form.h"
#include "tests/battery/rows.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdint>
#include <sys/mman.h>
#include <thread>

namespace battery {
namespace {

using namespace panside;
using namespace std::chrono_literals;
namespace fs = std::filesystem;

// What parent and child both see: it outlives the kill.
struct Shared {
    std::atomic<int> acknowledged, read;
    std::atomic<std::int64_t> lastReadUs; // by the shift's clock
};
class SharedPage {
public:
    SharedPage() : page_{::mmap(nullptr, sizeof(Shared), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0)} {
        new (page_) Shared{};
    }
    ~SharedPage() { ::munmap(page_, sizeof(Shared)); }
    SharedPage(const SharedPage&) = delete;
    SharedPage& operator=(const SharedPage&) = delete;
    Shared* operator->() const { return static_cast<Shared*>(page_); }

private:
    void* page_;
};

Session resumed(const fs::path& place) {
    Journal journal = Journal::open(place);
    const auto open = journal.openShift();
    auto facts = open ? journal.facts(open->id) : Facts{};
    Session session{keeperIn(std::move(journal))};
    session.resume(std::move(facts));
    return session;
}

// Ten readings a second, a note by hand now and then.
void tend(const fs::path& place, SharedPage& shared, int ready, std::uint64_t dice) {
    Session session = resumed(place);
    std::mt19937_64 random{dice};
    for (int i = 0;; ++i) {
        const Instant now = session.now();
        session.read(
            {now, Reading{Series::syrup_pan, 373.15 + i % 40 * 0.05, Unit::degC, "pan box " + std::to_string(i % 3)}});
        shared->lastReadUs = now.time_since_epoch().count();
        if (i == 0 || random() % 9 == 0) {
            const auto answer =
                session.enter(Fact{session.now(), Note{"hand " + std::to_string(shared->acknowledged)}});
            if (const auto* entered = std::get_if<Session::Entered>(&answer); entered && entered->kept)
                ++shared->acknowledged;
            say(ready, 'k');
        }
        session.tick();
        std::this_thread::sleep_for(100ms);
    }
}

std::string keptOf(const fs::path& place, const SharedPage& shared, ShiftId& shift, bool brief) {
    const Journal journal = Journal::open(place);
    if (const auto health = fullCheck(journal); !health.sound())
        return "not sound: " + english(health.findings.front());
    const auto open = journal.openShift();
    if (!open || (shift != ShiftId{} && open->id != shift))
        return "the open shift was not taken up";
    shift = open->id;
    int notes = 0;
    Instant last{};
    for (const auto& entry : journal.facts(open->id)) {
        notes += std::holds_alternative<Note>(entry.fact.what);
        if (std::holds_alternative<Reading>(entry.fact.what))
            last = std::max(last, entry.fact.at);
    }
    if (notes < shared->acknowledged || notes > shared->acknowledged + 1)
        return std::to_string(shared->acknowledged) + " entries acknowledged, " + std::to_string(notes) + " there";
    const double lost = static_cast<double>(shared->lastReadUs - last.time_since_epoch().count()) / 1e6;
    return !brief && lost > 1 ? "the last " + std::to_string(lost) + " s of readings are lost" : "";
}

} // namespace

std::string killedAtTenHertz(const Case& c) {
    const fs::path place = c.folder / "j";
    SharedPage shared;
    ShiftId shift{};
    for (int round = 0; round < 2; ++round) {
        const std::uint64_t dice = c.random();
        Child child{[&](int ready) { tend(place, shared, ready, dice); }};
        if (!child.first())
            return "the child did not begin";
        std::this_thread::sleep_for(std::chrono::milliseconds{c.upTo(2500)});
        child.kill();
        if (auto wrong = keptOf(place, shared, shift, c.brief); !wrong.empty())
            return wrong;
        shared->acknowledged = [&] { // what was kept and not acknowledged any more counts as kept
            int notes = 0;
            for (const auto& entry : Journal::open(place, Journal::Access::read).facts(shift))
                notes += std::holds_alternative<Note>(entry.fact.what);
            return notes;
        }();
    }
    return {};
}

// Killed in the midst of the step from an older form to this one, once or more often; in the end it is there whole.
std::string killedInMigration(const Case& c) {
    static const OlderJournal older;
    const fs::path place = c.folder / "j";
    older.writeTo(place);
    for (int round = 0; round < 4; ++round) {
        Child child{[&](int ready) {
            say(ready, 'b');
            const Journal journal = Journal::open(place);
            say(ready, 'e');
        }};
        if (!child.first())
            return "the child did not begin";
        ::usleep(static_cast<useconds_t>(c.upTo(older.takesUs())));
        child.kill();
        if (const Journal read = Journal::open(place, Journal::Access::read); rowsOf(read) != older.rows())
            return "after a kill other rows are read";
    }
    const Journal journal = Journal::open(place);
    if (const auto health = fullCheck(journal); !health.sound())
        return "not sound: " + english(health.findings.front());
    return rowsOf(journal) == older.rows() ? "" : "other rows than before";
}

} // namespace battery
