// Rows about the disk under the journal.
#include "core/journal/journal_writer.h"
#include "tests/battery/faulty_disk.h"
#include "tests/battery/hour.h"
#include "tests/battery/rows.h"
#include "tests/core/journal/hand_journal.h"

#include <algorithm>
#include <atomic>
#include <unistd.h>

namespace battery {
namespace {

using namespace panside;
using namespace std::chrono_literals;
namespace fs = std::filesystem;
using Fault = FaultyDisk::Fault;

constexpr auto patience = 20s; // only waited for where something does not hold
constexpr JournalWriter::Pace quick{.gather = 0ms, .again = 1ms};

bool comes(const std::function<bool()>& holds) {
    const auto until = std::chrono::steady_clock::now() + patience;
    while (!holds()) {
        if (std::chrono::steady_clock::now() > until)
            return false;
        std::this_thread::sleep_for(1ms);
    }
    return true;
}

// Keeps the hour through a writer, write by write; what does not come to the disk is waited for.
std::string keptThrough(JournalWriter& writer, const std::vector<std::vector<Fact>>& writes,
                        const std::function<void(std::size_t)>& before) {
    for (std::size_t i = 0; i < writes.size(); ++i) {
        before(i);
        for (const Fact& fact : writes[i])
            writer.keep(fact);
        if (!writer.flush(patience))
            return "write " + std::to_string(i) + " never came to the disk";
    }
    return {};
}

} // namespace

int callsOfAnHour() {
    std::string name = (fs::temp_directory_path() / "panside-battery-XXXXXX").string();
    const fs::path folder = ::mkdtemp(name.data());
    FaultyDisk& disk = FaultyDisk::installed();
    disk.well();
    {
        JournalWriter writer{Journal::open(folder / "j"), {}, quick};
        keptThrough(writer, scriptedHour(), [](std::size_t) {});
    }
    const int calls = disk.calls();
    fs::remove_all(folder);
    return calls;
}

// One call fails, in each of four ways: the boil goes on in memory, is tried again, and all of it is kept once.
std::string faultyCall(const Case& c) {
    const auto writes = scriptedHour();
    const auto rows = rowsOf(writes);
    FaultyDisk& disk = FaultyDisk::installed();
    for (const Fault fault : {Fault::error, Fault::shortWrite, Fault::full, Fault::lostSync}) {
        const fs::path place = c.folder / ("fault-" + std::to_string(static_cast<int>(fault)));
        disk.well();
        {
            std::optional<HandJournal> journal{Journal::open(place)};
            JournalWriter writer{std::move(*journal), {}, quick};
            disk.failAt(fault, c.number);
            if (auto wrong = keptThrough(writer, writes, [](std::size_t) {}); !wrong.empty())
                return wrong;
        }
        disk.well();
        if (auto wrong = holds(place, rows, rows.size()); !wrong.empty())
            return wrong + " (fault " + std::to_string(static_cast<int>(fault)) + ")";
    }
    return {};
}

// The power goes at any call. What was acknowledged is there, nothing is torn, and the journal goes on.
std::string powerCut(const Case& c) {
    const auto writes = scriptedHour();
    const auto rows = rowsOf(writes);
    FaultyDisk& disk = FaultyDisk::installed();
    const fs::path before = c.folder / "before", after = c.folder / "after";
    fs::create_directory(before);
    fs::create_directory(after);
    std::size_t acknowledged = 0;
    disk.well();
    static const int calls = callsOfAnHour();
    try {
        HandJournal journal = Journal::open(before / "j");
        disk.dieAt(1 + c.upTo(calls));
        Scribe scribe{journal.standing()};
        for (const auto& facts : writes) {
            std::vector<Change> changes;
            for (const Fact& fact : facts)
                scribe.keep(fact, changes);
            journal.commit(changes);
            acknowledged += facts.size();
        }
    } catch (const JournalError&) {
        // The power is gone.
    }
    disk.leaveAfterPowerCut(before, after, c.random);
    disk.well();
    if (auto wrong = holds(after / "j", rows, acknowledged); !wrong.empty())
        return wrong;
    HandJournal journal = Journal::open(after / "j");
    const auto open = journal.openShift();
    const auto kept = journal.append(factFrom("2025-03-14T20:00:00Z,fired,,,"));
    return open && kept.shift != open->id ? "the open shift was not taken up" : "";
}

// The disk is full from any call on, and is freed.
std::string diskFull(const Case& c) {
    const auto writes = scriptedHour();
    const auto rows = rowsOf(writes);
    FaultyDisk& disk = FaultyDisk::installed();
    disk.well();
    std::atomic<bool> told = false;
    const std::size_t from = static_cast<std::size_t>(c.upTo(40)), to = from + 1 + static_cast<std::size_t>(c.upTo(15));
    {
        JournalWriter writer{Journal::open(c.folder / "j"),
                             {.kept = {},
                              .trouble =
                                  [&](const JournalError& error) {
                                      told = told || error.trouble() == JournalTrouble::diskFull ||
                                             error.trouble() == JournalTrouble::cannotWrite;
                                  },
                              .well = {}},
                             quick};
        for (std::size_t i = 0; i < writes.size(); ++i) {
            if (i == from)
                disk.failFrom(Fault::full, 1);
            if (i == to)
                disk.well();
            for (const Fact& fact : writes[i])
                writer.keep(fact);
            if ((i < from || i >= to) && !writer.flush(patience))
                return "not kept though there is room";
            if (i == from && !comes([&] { return told.load(); }))
                return "a full disk was not told";
            if (i == from && writer.flush(0ms))
                return "kept though there is no room";
        }
    }
    return holds(c.folder / "j", rows, rows.size());
}

// File and folder may no longer be written by this user, and may again. Where the battery runs as root, whom no right
// stops, the layer below the journal says what the system would say.
std::string readOnly(const Case& c) {
    const auto writes = scriptedHour();
    const auto rows = rowsOf(writes);
    FaultyDisk& disk = FaultyDisk::installed();
    disk.well();
    const fs::path folder = c.folder / "here";
    const bool root = ::geteuid() == 0;
    std::atomic<bool> told = false;
    const auto from = static_cast<std::size_t>(1 + c.upTo(40)), to = from + 1 + static_cast<std::size_t>(c.upTo(15));
    {
        JournalWriter writer{Journal::open(folder / "j"),
                             {.kept = {}, .trouble = [&](const JournalError&) { told = true; }, .well = {}},
                             quick};
        for (std::size_t i = 0; i < writes.size(); ++i) {
            if (i == from) {
                fs::permissions(folder / "j", fs::perms::owner_read);
                fs::permissions(folder, fs::perms::owner_read | fs::perms::owner_exec);
                if (root)
                    disk.failFrom(Fault::error, 1);
            }
            if (i == to) {
                fs::permissions(folder, fs::perms::owner_all);
                fs::permissions(folder / "j", fs::perms::owner_read | fs::perms::owner_write);
                disk.well();
            }
            for (const Fact& fact : writes[i])
                writer.keep(fact);
            if ((i < from || i >= to) && !writer.flush(patience))
                return "not kept though it may be written";
            if (i == from && root && !comes([&] { return told.load(); }))
                return "it was not told";
            if (i == from && root && writer.flush(0ms))
                return "kept though nothing can be written";
        }
    }
    return holds(folder / "j", rows, rows.size());
}

// The journal's folder goes and comes back, or a loop of links lies in its place meanwhile.
std::string folderGone(const Case& c) {
    const auto writes = scriptedHour();
    const auto rows = rowsOf(writes);
    FaultyDisk::installed().well();
    const fs::path folder = c.folder / "here", away = c.folder / "away";
    const auto from = static_cast<std::size_t>(1 + c.upTo(40)), to = from + 1 + static_cast<std::size_t>(c.upTo(15));
    {
        JournalWriter writer{Journal::open(folder / "j"), {}, quick};
        for (std::size_t i = 0; i < writes.size(); ++i) {
            if (i == from) {
                fs::rename(folder, away);
                if (c.number % 2 == 0)
                    fs::create_symlink(folder, folder);
            }
            if (i == to) {
                fs::remove(folder);
                fs::rename(away, folder);
            }
            for (const Fact& fact : writes[i])
                writer.keep(fact);
            if ((i < from || i >= to) && !writer.flush(patience))
                return "not kept though the folder is there";
        }
    }
    return holds(folder / "j", rows, rows.size());
}

// A stick is pulled at any moment of a back-up: those made before are as they were.
std::string stickPulled(const Case& c) {
    FaultyDisk::installed().well();
    HandJournal journal = Journal::open(c.folder / "j");
    for (const auto& facts : scriptedHour())
        for (const Fact& fact : facts)
            if (!std::holds_alternative<Reading>(fact.what))
                journal.append(fact);
    const fs::path stick = c.folder / "stick", pulled = c.folder / "pulled";
    const Instant now = *instantIn("2025-03-20T12:00:00Z");
    const auto before = backUp(journal, stick, now);
    int steps = 0;
    backUp(journal, stick, now + 1h, [&](int, int) { return ++steps > 0; });
    int step = 0;
    const int when = 1 + c.upTo(std::max(1, steps));
    try {
        backUp(journal, stick, now + 2h, [&](int, int) {
            if (++step == when)
                fs::rename(stick, pulled);
            return true;
        });
        if (!fs::exists(stick))
            return "a back-up on a stick that is gone was said to be made";
    } catch (const JournalError&) {
        // It says so.
    }
    if (fs::exists(pulled))
        fs::rename(pulled, stick);
    const auto there = backupsIn(stick);
    if (there.size() < 2 || !before)
        return "a back-up made before is gone";
    for (const Backup& backup : there)
        if (!fullCheck(Journal::open(backup.place, Journal::Access::read)).sound())
            return "a back-up is not sound";
    return {};
}

} // namespace battery
