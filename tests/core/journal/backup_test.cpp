#include "core/journal/backup.h"

#include "core/journal/salvage.h"
#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include <SQLiteCpp/Database.h>

#include <algorithm>
#include <sys/wait.h>
#include <unistd.h>

namespace panside {
namespace {

namespace fs = std::filesystem;
using Backups = JournalPlace;

const Instant noon = *instantIn("2025-03-20T12:00:00Z");

std::string logOf(const std::string& day, int seconds) {
    std::string log = "time,what,value,unit,detail\n" + day + "T18:00:00Z,lit,,,\n";
    const Instant begin = *instantIn(day + "T18:00:00Z");
    for (int i = 0; i < seconds; ++i) {
        log += textOf(begin + std::chrono::seconds{i}) + ",syrup_pan," + std::to_string(100 + (i * 37) % 11) + "." +
               std::to_string(i % 10) + ",degC,\n";
        if (i % 400 == 1)
            log += textOf(begin + std::chrono::seconds{i}) +
                   ",note,,,a note of some length so that facts fill pages too\n";
    }
    return log;
}

TEST_F(Backups, HoldWhatTheJournalHoldsWhileItIsInUse) {
    HandJournal journal = Journal::open(place());
    imported(journal, shortLog);
    const auto open = journal.append(factFrom("2025-03-20T09:00:00Z,lit,,,"));
    const auto backup = backUp(journal, folder_ / "stick" / "panside", noon, [&](int done, int all) {
        EXPECT_LE(done, all);
        return true;
    });
    ASSERT_TRUE(backup);
    EXPECT_EQ(backup->place.filename(), "panside-20250320T120000Z-1.journal");
    journal.append(factFrom("2025-03-20T09:07:00Z,fired,,,")); // after it
    const Journal copy = Journal::open(backup->place, Journal::Access::read);
    EXPECT_EQ(exported(copy, copy.shifts()[0].id), shortLog);
    EXPECT_EQ(rowsOf(copy, open.shift).size(), 1U + open.opening.size());
    EXPECT_TRUE(fullCheck(copy).sound());
    EXPECT_EQ(std::distance(fs::directory_iterator{backup->place.parent_path()}, {}), 1); // nothing else is left there
}

TEST_F(Backups, AreNotThereWhenStopped) {
    HandJournal journal = Journal::open(place());
    imported(journal, shortLog);
    EXPECT_FALSE(backUp(journal, folder_ / "stick", noon, [](int, int) { return false; }));
    EXPECT_TRUE(fs::is_empty(folder_ / "stick"));
}

// The stick is pulled out at any moment of a back-up: the one made before is there and whole, the new one is not there.
TEST_F(Backups, SurviveAStickThatIsPulledOutInTheMiddle) {
    HandJournal journal = Journal::open(place());
    imported(journal, shortLog);
    const fs::path stick = folder_ / "stick", pulled = folder_ / "pulled";
    const auto before = backUp(journal, stick, noon);
    ASSERT_TRUE(before);
    imported(journal, logOf("2025-03-15", 20));
    for (int moment = 1; moment <= 2; ++moment) { // while it is written, while it is read back
        int told = 0;
        try {
            backUp(journal, stick, noon + std::chrono::hours{moment}, [&](int, int) {
                if (++told == moment)
                    fs::rename(stick, pulled);
                return true;
            });
            FAIL() << "moment " << moment;
        } catch (const JournalError& error) {
            EXPECT_EQ(error.trouble(), JournalTrouble::gone);
        }
        fs::rename(pulled, stick);
        const auto there = backupsIn(stick);
        ASSERT_EQ(there.size(), 1U);
        EXPECT_TRUE(fullCheck(Journal::open(there[0].place, Journal::Access::read)).sound());
    }
    ASSERT_TRUE(backUp(journal, stick, noon + std::chrono::hours{3}));
    EXPECT_EQ(std::distance(fs::directory_iterator{stick}, {}), 2); // and what was half written is swept away
}

// A journal that is hurt is not copied over the good back-ups as if it were sound.
TEST_F(Backups, AreNotMadeOfADamagedJournal) {
    {
        HandJournal journal = Journal::open(place());
        imported(journal, logOf("2025-03-15", 2000));
    }
    {
        SQLite::Database db{place().string(), SQLite::OPEN_READWRITE};
        db.exec("UPDATE block SET data = CAST(substr(data, 1, length(data) - 1) || x'05' AS BLOB)");
    }
    const Journal journal = Journal::open(place());
    try {
        backUp(journal, folder_ / "stick", noon);
        FAIL();
    } catch (const JournalError& error) {
        EXPECT_EQ(error.trouble(), JournalTrouble::damaged);
    }
    EXPECT_TRUE(fs::is_empty(folder_ / "stick"));
}

TEST_F(Backups, SayWhenTheFolderCannotBeMade) {
    HandJournal journal = Journal::open(place());
    std::ofstream{folder_ / "file"} << "x";
    try {
        backUp(journal, folder_ / "file" / "stick", noon);
        FAIL();
    } catch (const JournalError& error) {
        EXPECT_EQ(error.trouble(), JournalTrouble::noFolder);
    }
}

// The rule as it is told: the ten last made, the last of each of the last sixty days, the last of each year for good.
TEST_F(Backups, ArePrunedByTheRule) {
    const auto make = [&](const std::string& stamp) {
        std::ofstream{folder_ / ("panside-" + stamp + ".journal")} << "x";
    };
    for (int hour = 10; hour < 22; ++hour)
        make("20250320T" + std::to_string(hour) + "0000Z"); // twelve of one day
    make("20250318T080000Z");
    make("20250318T230000Z");             // the last of its day
    for (int day = 10; day < 28; ++day) { // with those two, fifty-six days
        make("202502" + std::to_string(day) + "T120000Z");
        make("202501" + std::to_string(day) + "T120000Z");
        make("202411" + std::to_string(day) + "T120000Z");
    }
    make("20241008T120000Z");
    make("20241007T120000Z");
    make("20241006T120000Z");
    make("20241005T120000Z"); // the sixtieth
    make("20240412T120000Z"); // before the sixty last
    make("20231212T120000Z"); // the last of its year
    std::ofstream{folder_ / "panside-notes.journal"} << "mine";
    const auto removed = pruneBackups(folder_);
    std::vector<std::string> names;
    for (const auto& backup : removed)
        names.push_back(textOf(backup.at));
    EXPECT_EQ(names, (std::vector<std::string>{"2025-03-20T11:00:00Z", "2025-03-20T10:00:00Z", "2025-03-18T08:00:00Z",
                                               "2024-04-12T12:00:00Z"}));
    EXPECT_TRUE(fs::exists(folder_ / "panside-notes.journal"));
}

// One that is made under a clock of 2099, or of 1970, takes the place of one.
TEST_F(Backups, ThatAWrongClockMadePruneNoOthers) {
    HandJournal journal = Journal::open(place());
    imported(journal, shortLog);
    const fs::path stick = folder_ / "stick";
    for (int day = 0; day < 40; ++day)
        ASSERT_TRUE(backUp(journal, stick, noon + std::chrono::days{day}));
    for (const char* wrong : {"2099-01-01T00:00:00Z", "1970-01-01T00:05:00Z", "1970-01-01T00:05:00Z"})
        ASSERT_TRUE(backUp(journal, stick, *instantIn(wrong)));
    EXPECT_TRUE(pruneBackups(stick).empty());
    const auto there = backupsIn(stick);
    ASSERT_EQ(there.size(), 43U) << "two at the same moment are two";
    EXPECT_EQ(textOf(there[0].at), "1970-01-01T00:05:00Z");
    EXPECT_EQ(textOf(there[3].at), textOf(noon + std::chrono::days{39}));
}

// The journal, what lies beside it, and its back-ups are their user's alone; no link that lies there is written
// through.
TEST_F(Backups, AndTheJournalAreReadableByTheirUserAlone) {
    const auto rights = [](const fs::path& file) { return fs::status(file).permissions() & fs::perms::mask; };
    const auto alone = fs::perms::owner_read | fs::perms::owner_write;
    const fs::path stick = folder_ / "stick", theirs = folder_ / "theirs";
    std::ofstream{theirs} << "theirs";
    fs::create_directory(stick);
    fs::create_symlink(theirs, stick / "panside-20250320T120000Z-1.journal.part");
    fs::create_symlink(theirs, stick / "panside-20250320T120000Z-1.journal");
    {
        HandJournal journal = Journal::open(place());
        journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
        for (const char* ending : {"", "-wal", "-shm", ".lock"})
            EXPECT_EQ(rights(place().string() + ending), alone) << ending;
        fs::permissions(place(), fs::perms::others_read, fs::perm_options::add);
        const auto backup = backUp(journal, stick, noon);
        ASSERT_TRUE(backup);
        EXPECT_EQ(rights(backup->place), alone);
    }
    { Journal::open(place()); }
    EXPECT_EQ(rights(place()), alone) << "one that an earlier program made is put right";
    fs::remove(place().string() + ".lock");
    fs::create_symlink(theirs, place().string() + ".lock");
    EXPECT_TRUE(Journal::open(place()).readOnly());
    EXPECT_EQ(fileText(theirs), "theirs");
}

// Whatever is in the WAL file alone when another journal is put in its place is in the one that is kept.
TEST_F(Backups, PutBackKeepTheLastMinutesOfWhatTheyReplace) {
    std::optional<Backup> backup;
    fs::path kept;
    {
        HandJournal journal = Journal::open(place());
        imported(journal, shortLog);
        backup = backUp(journal, folder_ / "stick", noon);
    }
    if (::fork() == 0) { // ended without closing: what came last lies in the WAL file
        HandJournal journal = Journal::open(place());
        journal.append(factFrom("2025-03-20T18:00:00Z,lit,,,"));
        ::_exit(0);
    }
    ::wait(nullptr);
    ASSERT_GT(fs::file_size(place().string() + "-wal"), 0U);
    kept = restore(backup->place, place(), noon);
    EXPECT_EQ(Journal::open(kept, Journal::Access::read).shifts().size(), 2U);
    EXPECT_EQ(Journal::open(place()).shifts().size(), 1U);
    EXPECT_NE(restore(backup->place, place(), noon), kept) << "at the same moment by the clock";
    EXPECT_EQ(Journal::open(kept, Journal::Access::read).shifts().size(), 2U);
}

TEST_F(Backups, ShowWhatTheyWouldReplaceAndKeepWhatTheyReplace) {
    std::optional<Backup> backup;
    ShiftId changed{};
    {
        HandJournal journal = Journal::open(place());
        imported(journal, shortLog);
        changed = imported(journal, logOf("2025-03-15", 20)).shift;
        backup = backUp(journal, folder_ / "stick", noon);
        journal.appendTo(changed, factFrom("2025-03-15T18:30:00Z,note,,,later"));
        imported(journal, logOf("2025-03-16", 20));
    }
    const auto preview = previewRestore(backup->place, place());
    EXPECT_EQ(preview.same, 1U);
    ASSERT_EQ(preview.changed.size(), 1U);
    EXPECT_EQ(preview.changed[0].id, changed);
    ASSERT_EQ(preview.lost.size(), 1U);
    EXPECT_EQ(preview.lost[0].name(), "2025-03-16T18:00:00Z");
    EXPECT_TRUE(preview.gained.empty());

    const auto kept = restore(backup->place, place(), noon);
    EXPECT_EQ(Journal::open(place(), Journal::Access::read).shifts().size(), 2U);
    EXPECT_EQ(Journal::open(kept, Journal::Access::read).shifts().size(), 3U);
    EXPECT_EQ(previewRestore(backup->place, place()).same, 2U);
}

TEST_F(Backups, AreNotRestoredUnderARunningConsole) {
    HandJournal journal = Journal::open(place());
    imported(journal, shortLog);
    const auto backup = backUp(journal, folder_ / "stick", noon);
    try {
        restore(backup->place, place(), noon);
        FAIL();
    } catch (const JournalError& error) {
        EXPECT_EQ(error.trouble(), JournalTrouble::heldByOther);
    }
    EXPECT_EQ(journal.shifts().size(), 1U);
}

class Damaged : public JournalPlace {
protected:
    // Three shifts, and the pages on which the readings and facts of the middle one lie.
    void SetUp() override {
        HandJournal journal = Journal::open(place());
        for (const char* day : {"2025-03-14", "2025-03-15", "2025-03-16"})
            imported(journal, logOf(day, 40000));
        before_ = exported(journal, journal.shifts()[0].id);
    }
    // Writes nonsense over a page that holds this text.
    void spoil(const std::string& bytes) {
        std::string file = fileText(place());
        const auto found = file.find(bytes);
        ASSERT_NE(found, std::string::npos);
        const auto page = found / 4096 * 4096;
        std::fill(file.begin() + static_cast<std::ptrdiff_t>(page),
                  file.begin() + static_cast<std::ptrdiff_t>(page) + 4096, '\xEE');
        std::ofstream{place(), std::ios::binary} << file;
    }
    std::string before_;
};

TEST_F(Damaged, ASoundOneIsSound) {
    const Journal journal = Journal::open(place());
    EXPECT_TRUE(quickCheck(journal).sound());
    EXPECT_TRUE(fullCheck(journal).sound());
    const auto saved = salvage(place(), folder_ / "saved");
    EXPECT_EQ(saved.whole.size(), 3U);
    EXPECT_TRUE(saved.partly.empty());
    EXPECT_FALSE(saved.listLost);
    const Journal copy = Journal::open(folder_ / "saved", Journal::Access::read);
    EXPECT_TRUE(exported(copy, copy.shifts()[0].id) == before_);
}

TEST_F(Damaged, ABrokenPageIsFoundAndTheRestSaved) {
    spoil("2025-03-15T18:06:41Z,note");
    {
        const Journal journal = Journal::open(place(), Journal::Access::read);
        EXPECT_FALSE(quickCheck(journal).sound());
        EXPECT_FALSE(fullCheck(journal).sound());
    }
    const auto saved = salvage(place(), folder_ / "saved");
    EXPECT_TRUE(saved.listLost); // a page could not be read, and it says so
    const Journal copy = Journal::open(folder_ / "saved", Journal::Access::read);
    ASSERT_EQ(copy.shifts().size(), 3U);
    EXPECT_TRUE(exported(copy, copy.shifts()[0].id) == before_ || !saved.partly.empty());
    for (const auto& shift : copy.shifts()) { // the readings lie on other pages
        std::size_t readings = 0;
        copy.visit(shift.id, [&](FactId, const Fact& fact) {
            readings += std::holds_alternative<Reading>(fact.what);
            return true;
        });
        EXPECT_EQ(readings, 40000U);
    }
    EXPECT_FALSE(saved.partly.empty());
    EXPECT_GT(saved.facts, 100);
    EXPECT_TRUE(fullCheck(copy).sound());
}

TEST_F(Damaged, AChangedReadingIsLostNotReadAsIfItWereTrue) {
    {
        SQLite::Database db{place().string(), SQLite::OPEN_READWRITE};
        db.exec(
            "UPDATE block SET data = CAST(substr(data, 1, length(data) - 1) || x'05' AS BLOB) WHERE first = (SELECT "
            "max(first) FROM block) AND shift = (SELECT min(shift) FROM block)");
    }
    const Journal journal = Journal::open(place());
    EXPECT_TRUE(quickCheck(journal).sound()); // to SQLite nothing is amiss
    EXPECT_EQ(fullCheck(journal).findings, std::vector{readingsOf("2025-03-14T18:00:00Z")});
    const auto saved = salvage(place(), folder_ / "saved");
    EXPECT_EQ(saved.whole.size(), 2U);
    ASSERT_EQ(saved.partly.size(), 1U);
    EXPECT_EQ(textOf(saved.partly[0].shift), "2025-03-14T18:00:00Z");
    EXPECT_GT(saved.partly[0].readings, 0);
    EXPECT_EQ(saved.readings + saved.partly[0].readings, 120000);
    EXPECT_EQ(saved.partly[0].unreached, 0);
}

TEST_F(Damaged, AChangedFactIsLostOnceAndLeavesNoHoleBesides) {
    SQLite::Database{place().string(), SQLite::OPEN_READWRITE}.exec(
        "UPDATE fact SET row = row || 'x' WHERE shift = (SELECT min(shift) FROM fact) AND id = (SELECT id FROM fact "
        "WHERE shift = (SELECT min(shift) FROM fact) ORDER BY id LIMIT 1 OFFSET 5)");
    const auto saved = salvage(place(), folder_ / "saved");
    ASSERT_EQ(saved.partly.size(), 1U);
    EXPECT_EQ(saved.partly[0].facts, 1);
    EXPECT_EQ(saved.partly[0].unreached, 0);
    EXPECT_EQ(saved.readings, 120000);
}

TEST_F(Damaged, ASalvageOverwritesNothing) {
    std::ofstream{folder_ / "saved"} << "mine";
    EXPECT_THROW(salvage(place(), folder_ / "saved"), JournalError);
    EXPECT_EQ(fileText(folder_ / "saved"), "mine");
}

} // namespace
} // namespace panside
