// Rows in which processes are killed, and files are spoilt by other hands: each case in a process of its own.
#include "core/journal/log_import.h"
#include "core/journal/salvage.h"
#include "core/journal/shift_summary.h"
#include "tests/battery/child.h"
#include "tests/battery/faulty_disk.h"
#include "tests/battery/hour.h"
#include "tests/battery/rows.h"
#include "tests/core/journal/derived.h"
#include "tests/core/journal/hand_journal.h"

#include <algorithm>
#include <fstream>
#include <set>
#include <sstream>
#include <thread>
#include <unistd.h>

namespace battery {
namespace {

using namespace panside;
using namespace std::chrono_literals;
namespace fs = std::filesystem;

std::string logOfDay(int day) {
    std::string log = "time,what,value,unit,detail\n";
    const Instant begin = *instantIn("2024-03-01T18:00:00Z") + std::chrono::days{day};
    for (int i = 0; i < 4000; ++i)
        log += textOf(begin + std::chrono::seconds{i}) + ",stack,30" + std::to_string(i % 10) + ",degC,\n";
    return log;
}

// What goes on beside the keeping: a back-up, an import, a recount.
void besides(Journal journal, const fs::path& folder, int which, int number) {
    if (which == 0) {
        backUp(journal, folder / "stick", *instantIn("2025-03-20T12:00:00Z"));
    } else if (which == 1) {
        std::istringstream log{logOfDay(number % 300)};
        importLog(journal, log);
    } else {
        dropDerived(journal);
        summaries(journal);
    }
}

// Importing takes no fact away, and what was kept here is all there.
std::string keptHere(const fs::path& place, std::size_t acknowledged) {
    const Journal journal = Journal::open(place);
    if (const auto health = fullCheck(journal); !health.sound())
        return "not sound: " + english(health.findings.front());
    const auto open = journal.openShift();
    const auto there = open ? journal.facts(open->id).size() : 0;
    if (there < acknowledged || there > acknowledged + 1)
        return std::to_string(acknowledged) + " acknowledged, " + std::to_string(there) + " there";
    for (const auto& shift : journal.shifts())
        if (shift.imported && journal.facts(shift.id).size() != 4000)
            return "an import is there in part";
    return {};
}

void writeBytes(const fs::path& place, const std::string& bytes) { std::ofstream{place, std::ios::binary} << bytes; }

struct Spoilable {
    std::string bytes;
    std::set<std::string> rows;
    std::vector<std::string> exported;
};

std::vector<std::string> exportsOf(const Journal& journal) {
    std::vector<std::string> all;
    for (const auto& shift : journal.shifts()) {
        all.emplace_back();
        exportLog(journal, shift.id, [&](std::string_view piece) { all.back() += piece; });
    }
    return all;
}

// Made once: three nights begun here, with withdrawals and settings carried, and one imported.
const Spoilable& spoilable() {
    static const Spoilable one = [] {
        std::string name = (fs::temp_directory_path() / "panside-battery-XXXXXX").string();
        const fs::path folder = ::mkdtemp(name.data());
        Spoilable made;
        {
            HandJournal journal = Journal::open(folder / "j");
            std::istringstream log{logOfDay(1)};
            importLog(journal, log);
            for (int night = 0; night < 3; ++night) {
                for (const auto& facts : scriptedHour()) {
                    std::vector<Change> changes;
                    Scribe scribe{journal.standing()};
                    for (Fact fact : facts) {
                        fact.at += std::chrono::days{night};
                        scribe.keep(std::move(fact), changes);
                    }
                    journal.commit(changes);
                }
                for (const auto& row :
                     rowsOf(journal)) // what is withdrawn is true where nobody is proven to have done it
                    made.rows.insert(row);
                journal.withdrawFrom(journal.shifts().back().id, 3, *instantIn("2025-03-20T12:00:00Z"), "Odile");
                journal.carry(factFrom("2025-03-20T12:00:00Z,set,66.9,brix,key=target_density"));
            }
            made.exported = exportsOf(journal);
            for (const auto& row : rowsOf(journal))
                made.rows.insert(row);
            backUp(journal, folder / "stick", *instantIn("2025-03-20T12:00:00Z"));
        }
        std::ifstream file{backupsIn(folder / "stick").front().place, std::ios::binary};
        std::stringstream bytes;
        bytes << file.rdbuf();
        made.bytes = bytes.str();
        fs::remove_all(folder);
        return made;
    }();
    return one;
}

// In the child: whatever was spoilt is refused, named, or makes no difference; a salvage holds nothing untrue.
void lookAtSpoilt(const fs::path& place, const Spoilable& before) {
    bool named = false;
    try {
        const Journal journal = Journal::open(place, Journal::Access::read);
        named = !fullCheck(journal).sound();
        if (!named && exportsOf(journal) != before.exported)
            throw std::runtime_error{"something else is read, and the check says sound"};
    } catch (const JournalError&) {
        named = true;
    }
    const fs::path saved = place.string() + ".saved";
    try {
        salvage(place, saved);
    } catch (const JournalError&) {
        return; // nothing of it can be read
    }
    const Journal copy = Journal::open(saved, Journal::Access::read);
    if (const auto health = fullCheck(copy); !health.sound())
        throw std::runtime_error{"the salvage is not sound: " + english(health.findings.front())};
    for (const auto& row : rowsOf(copy))
        if (!before.rows.contains(row))
            throw std::runtime_error{"the salvage holds what nobody wrote: " + row};
}

} // namespace

std::string killed(const Case& c) {
    const fs::path place = c.folder / "j";
    std::size_t acknowledged = 0;
    for (int round = 0; round < 3; ++round) {
        const int which = c.upTo(4), delay = c.upTo(30000);
        Child child{[&](int ready) {
            HandJournal journal = Journal::open(place);
            std::thread beside;
            if (which < 3)
                beside = std::thread{[&, own = std::make_shared<Journal>(journal.beside())]() mutable {
                    try {
                        besides(std::move(*own), c.folder, which, c.number);
                    } catch (const JournalError&) {
                        return;
                    }
                }};
            for (int i = 0;; ++i) {
                try {
                    journal.append(factFrom("2025-03-14T18:00:00Z,note,,,round " + std::to_string(i)));
                } catch (const JournalError& error) {
                    if (error.trouble() != JournalTrouble::locked)
                        throw;
                    continue;
                }
                say(ready, 'k');
            }
        }};
        if (!child.first())
            return "the child did not begin";
        ::usleep(static_cast<useconds_t>(delay));
        child.kill();
        acknowledged += 1 + child.rest().size();
        if (auto wrong = keptHere(place, acknowledged); !wrong.empty())
            return wrong;
        const Journal journal = Journal::open(place, Journal::Access::read);
        acknowledged = journal.facts(journal.openShift()->id).size();
    }
    return {};
}

std::string spoiltBytes(const Case& c) {
    const Spoilable& before = spoilable();
    std::string bytes = before.bytes;
    if (c.number % 5 == 0) { // a page wiped
        const std::size_t page = c.random() % (bytes.size() / 4096);
        std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>(page * 4096), 4096, c.number % 2 ? '\0' : '\xEE');
    } else if (c.number % 17 == 0) {
        bytes.resize(c.random() % bytes.size());
    } else {
        for (int i = 0; i <= c.upTo(8); ++i)
            bytes[c.random() % bytes.size()] ^= static_cast<char>(1 << c.upTo(8));
    }
    const fs::path place = c.folder / "j";
    writeBytes(place, bytes);
    Child child{[&](int) { lookAtSpoilt(place, before); }};
    const std::string said = child.rest();
    const int status = child.wait();
    if (WIFSIGNALED(status))
        return "ended by signal " + std::to_string(WTERMSIG(status));
    return said;
}

// Two consoles on one journal, the one and the other killed: one writes, the other says who does; nothing is lost.
std::string twoConsoles(const Case& c) {
    const fs::path place = c.folder / "j";
    { HandJournal{Journal::open(place)}.append(factFrom("2025-03-14T18:00:00Z,lit,,,")); }
    const auto writes = [&](int ready) {
        HandJournal journal = Journal::open(place);
        if (journal.readOnly()) {
            say(ready, journal.readOnly()->trouble() == JournalTrouble::heldByOther ? 'h' : '?');
            ::pause();
        }
        for (int i = 0;; ++i) {
            journal.append(factFrom("2025-03-14T18:01:00Z,note,,,n" + std::to_string(i)));
            say(ready, 'w');
        }
    };
    std::size_t acknowledged = 1;
    for (int round = 0; round < 3; ++round) {
        Child writer{writes};
        if (!writer.first())
            return "no writer";
        Child reader{writes};
        const bool readerFirst = c.upTo(2) == 0;
        if (!reader.first())
            return "no reader";
        ::usleep(static_cast<useconds_t>(c.upTo(10000)));
        std::string read;
        if (readerFirst) {
            reader.kill();
            read = reader.rest();
        }
        writer.kill();
        acknowledged += 1 + writer.rest().size();
        if (!readerFirst) {
            reader.kill();
            read = reader.rest();
        }
        if (!read.empty())
            return "the second wrote as well";
        if (auto wrong = keptHere(place, acknowledged); !wrong.empty())
            return wrong;
        const Journal journal = Journal::open(place, Journal::Access::read);
        acknowledged = journal.facts(journal.openShift()->id).size();
    }
    return {};
}

} // namespace battery
