// What can go wrong with the file, and what is said of it.
#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include "core/journal/journal_writer.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>

#include <csignal>
#include <functional>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace panside {
namespace {

namespace fs = std::filesystem;
using JournalTroubles = JournalPlace;

// What opening or using a journal throws; its words are checked whole.
std::string told(const std::function<void()>& work, JournalTrouble expected) {
    try {
        work();
    } catch (const JournalError& error) {
        EXPECT_EQ(error.trouble(), expected) << error.what();
        return error.what();
    }
    ADD_FAILURE() << "nothing was thrown";
    return {};
}

void write(const fs::path& place, const std::string& text) { std::ofstream{place, std::ios::binary} << text; }

// A process of its own, ended as kill -9 ends it, when it says that it is ready.
class Child {
public:
    explicit Child(const std::function<void(int ready)>& work) {
        int ends[2];
        if (::pipe(ends) != 0)
            throw std::runtime_error{"pipe"};
        pid_ = ::fork();
        if (pid_ == 0) {
            ::close(ends[0]);
            work(ends[1]);
            ::_exit(0);
        }
        ::close(ends[1]);
        from_ = ends[0];
    }
    ~Child() {
        ::close(from_);
        kill();
    }
    // Bytes that the child has sent, at least so many; fewer if it ended.
    std::string wait(std::size_t count) const {
        std::string got;
        char byte = 0;
        while (got.size() < count && ::read(from_, &byte, 1) == 1)
            got += byte;
        return got;
    }
    std::string rest() const { return wait(SIZE_MAX); }
    void kill() {
        if (pid_ > 0) {
            ::kill(pid_, SIGKILL);
            ::waitpid(pid_, nullptr, 0);
        }
        pid_ = 0;
    }
    int exitStatus() {
        int status = 0;
        ::waitpid(pid_, &status, 0);
        pid_ = 0;
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    pid_t pid() const { return pid_; }

private:
    pid_t pid_;
    int from_;
};

void say(int ready, char what) { [[maybe_unused]] const auto sent = ::write(ready, &what, 1); }

TEST_F(JournalTroubles, AFileOfAnotherKindIsLeftAsItIs) {
    const std::string text(4000, 'z');
    write(place(), text);
    EXPECT_EQ(told([&] { Journal::open(place()); }, JournalTrouble::notSqlite),
              place().string() + ": this is not a journal but some other file; it was left as it is. Check the path.");
    EXPECT_EQ(fileText(place()), text);
    write(place(), "short");
    told([&] { Journal::open(place()); }, JournalTrouble::notSqlite);
    EXPECT_EQ(fileText(place()), "short");
}

TEST_F(JournalTroubles, ADatabaseOfAnotherProgramIsLeftAsItIs) {
    for (const char* mark : {"PRAGMA application_id=1234", "PRAGMA user_version=2"}) {
        fs::remove(place());
        {
            SQLite::Database db{place().string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
            db.exec("CREATE TABLE hens(name TEXT)");
            db.exec(mark);
        }
        const std::string before = fileText(place());
        EXPECT_EQ(told([&] { Journal::open(place()); }, JournalTrouble::notOurs),
                  place().string() +
                      ": this database belongs to another program; it was left as it is. Check the path.");
        EXPECT_EQ(fileText(place()), before);
    }
}

TEST_F(JournalTroubles, AJournalOfALaterVersionIsLeftAsItIs) {
    { HandJournal{Journal::open(place())}.append(factFrom("2025-03-14T18:00:00Z,lit,,,")); }
    { SQLite::Database{place().string(), SQLite::OPEN_READWRITE}.exec("PRAGMA user_version=99"); }
    const std::string before = fileText(place());
    for (const auto access : {Journal::Access::write, Journal::Access::read})
        EXPECT_EQ(told([&] { Journal::open(place(), access); }, JournalTrouble::newer),
                  place().string() + ": this journal was written by a later version of Panside (its form is 99, this "
                                     "program knows forms up to 8); "
                                     "it was left as it is. Install that version, or open another journal.");
    EXPECT_EQ(fileText(place()), before);
}

TEST_F(JournalTroubles, ToReadThereMustBeAFile) {
    EXPECT_EQ(told([&] { Journal::open(place(), Journal::Access::read); }, JournalTrouble::noSuchFile),
              place().string() + ": there is no journal here. Check the path.");
    EXPECT_FALSE(fs::exists(place()));
    told([&] { Journal::open(folder_); }, JournalTrouble::cannotRead);
}

TEST_F(JournalTroubles, AFolderThatCannotBeMadeIsNamed) {
    write(folder_ / "file", "x");
    told([&] { Journal::open(folder_ / "file" / "night.journal"); }, JournalTrouble::noFolder);
}

TEST_F(JournalTroubles, ASecondConsoleReadsAndSaysWhoWrites) {
    Child first{[&](int ready) {
        HandJournal journal = Journal::open(place());
        journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
        say(ready, 'r');
        ::pause();
    }};
    ASSERT_EQ(first.wait(1), "r");
    HandJournal second = Journal::open(place());
    ASSERT_TRUE(second.readOnly());
    const std::string expected = place().string() + ": another console is writing in this journal (process " +
                                 std::to_string(first.pid()) +
                                 "); here it can only be read. Close the other one to write.";
    EXPECT_EQ(second.readOnly()->what(), expected);
    EXPECT_EQ(second.shifts().size(), 1U);
    EXPECT_EQ(told([&] { second.append(factFrom("2025-03-14T18:01:00Z,fired,,,")); }, JournalTrouble::heldByOther),
              expected);
    first.kill();
    HandJournal third = Journal::open(place());
    EXPECT_FALSE(third.readOnly());
    EXPECT_EQ(third.append(factFrom("2025-03-14T18:01:00Z,fired,,,")).id, 2);
}

TEST_F(JournalTroubles, AConnectionBesideTheWriterMayWriteToo) {
    HandJournal journal = Journal::open(place());
    Journal other = journal.beside();
    EXPECT_FALSE(other.readOnly());
    EXPECT_EQ(imported(other, shortLog).outcome, ImportOutcome::added);
    EXPECT_EQ(journal.shifts().size(), 1U);
}

TEST_F(JournalTroubles, KillingTheProgramLosesNothingThatWasAcknowledged) {
    // Every fact is acknowledged by a byte after append returned. The child is killed in the midst of it, ten times
    // over.
    std::size_t acknowledged = 0;
    for (int round = 0; round < 10; ++round) {
        Child child{[&](int ready) {
            HandJournal journal = Journal::open(place());
            for (int i = 0; i < 100000; ++i) {
                journal.append(factFrom("2025-03-14T18:00:00Z,note,,,round " + std::to_string(round) + " fact " +
                                        std::to_string(i)));
                say(ready, 'k');
            }
        }};
        std::string got = child.wait(static_cast<std::size_t>(5 + 3 * round));
        child.kill();
        got += child.rest();
        acknowledged += got.size();
        const Journal journal = Journal::open(place(), Journal::Access::read);
        const auto open = journal.openShift();
        ASSERT_TRUE(open);
        const auto facts = journal.facts(open->id).size();
        ASSERT_GE(facts, acknowledged);
        ASSERT_LE(facts, acknowledged + 1); // the one that was on the disk but not yet told
        acknowledged = facts;
    }
    EXPECT_GT(acknowledged, 100U);
}

TEST_F(JournalTroubles, KillingTheProgramLosesASecondOfReadingsAtMost) {
    Child child{[&](int ready) {
        JournalWriter writer{Journal::open(place()),
                             {},
                             {.gather = std::chrono::milliseconds{20}, .again = std::chrono::milliseconds{1}}};
        for (int i = 0;; ++i) {
            Fact fact = factFrom("2025-03-14T18:00:00Z,syrup_pan,101.5,degC,");
            fact.at += std::chrono::milliseconds{i};
            writer.keep(std::move(fact));
            say(ready, 'k');
            ::usleep(200);
        }
    }};
    const std::size_t before = child.wait(600).size();
    ::usleep(300000); // many times the gathering: what came before it must be kept by now
    child.kill();
    const Journal journal = Journal::open(place(), Journal::Access::read);
    ASSERT_EQ(before, 600U);
    EXPECT_GE(journal.openFacts().size(), before);
}

TEST_F(JournalTroubles, ATornWriteIsAsIfItHadNotBeen) {
    Child child{[&](int ready) {
        HandJournal journal = Journal::open(place());
        journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
        say(ready, 'a');
        ::usleep(1000);
        journal.append(factFrom("2025-03-14T18:07:00Z,fired,,,"));
        say(ready, 'b');
        ::pause();
    }};
    ASSERT_EQ(child.wait(2), "ab");
    child.kill();
    const fs::path wal = place().string() + "-wal";
    const auto size = fs::file_size(wal);
    ASSERT_GT(size, 2000U);
    fs::resize_file(wal, size - 1000); // the last page of the last commit is cut short
    const Journal journal = Journal::open(place());
    EXPECT_EQ(rowsOf(journal, journal.openShift()->id), std::vector<std::string>{"2025-03-14T18:00:00Z,lit,,,"});
}

TEST_F(JournalTroubles, AFullDiskTakesNothingInPart) {
    { HandJournal{Journal::open(place())}.append(factFrom("2025-03-14T18:00:00Z,lit,,,")); }
    const auto size = static_cast<std::int64_t>(fs::file_size(place()));
    HandJournal journal = Journal::open(place(), Journal::Access::write, {.largestBytes = size});
    const std::string words = told(
        [&] {
            std::vector<Change> changes;
            Scribe scribe{journal.standing()};
            for (int i = 0; i < 50; ++i)
                scribe.keep(factFrom("2025-03-14T18:01:00Z,note,,," + std::string(1000, 'x')), changes);
            journal.commit(changes);
        },
        JournalTrouble::diskFull);
    EXPECT_EQ(words, place().string() +
                         ": the disk is full. Make room; what was not yet kept is held in memory and tried again.");
    EXPECT_EQ(journal.facts(journal.openShift()->id).size(), 1U);
    EXPECT_EQ(journal.append(factFrom("2025-03-14T18:07:00Z,fired,,,")).id, 2); // what is small enough still fits
}

// The system itself refuses to let the file grow.
TEST_F(JournalTroubles, ADiskThatRefusesToWriteIsToldAndLosesNothing) {
    Child child{[&](int ready) {
        std::signal(SIGXFSZ, SIG_IGN);
        HandJournal journal = Journal::open(place());
        journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
        const rlimit limit{300000, 300000};
        ::setrlimit(RLIMIT_FSIZE, &limit);
        try {
            for (int i = 0; i < 1000; ++i) {
                journal.append(factFrom("2025-03-14T18:01:00Z,note,,," + std::string(1000, 'x')));
                say(ready, 'k');
            }
        } catch (const JournalError& error) {
            const bool named =
                error.trouble() == JournalTrouble::cannotWrite || error.trouble() == JournalTrouble::diskFull;
            say(ready, named ? 'w' : '?');
        }
    }};
    const std::string got = child.rest();
    ASSERT_FALSE(got.empty());
    EXPECT_EQ(got.back(), 'w');
    const Journal journal = Journal::open(place());
    EXPECT_EQ(journal.facts(journal.openShift()->id).size(), got.size()); // lit, and a note for each k
}

TEST_F(JournalTroubles, AnotherProgramsLockIsTold) {
    HandJournal journal = Journal::open(place(), Journal::Access::write, {.patienceMs = 20, .largestBytes = {}});
    journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    {
        SQLite::Database other{place().string(), SQLite::OPEN_READWRITE};
        const SQLite::Transaction held{other, SQLite::TransactionBehavior::IMMEDIATE};
        EXPECT_EQ(told([&] { journal.append(factFrom("2025-03-14T18:07:00Z,fired,,,")); }, JournalTrouble::locked),
                  place().string() +
                      ": another program holds this journal locked. Close that program; it is tried again by itself.");
    }
    EXPECT_EQ(journal.append(factFrom("2025-03-14T18:07:00Z,fired,,,")).id, 2);
}

// As root every file may be written, so these look as another user; who is not root looks as himself.
int asAnybody(const std::function<bool()>& look) {
    Child child{[&](int) {
        if (::getuid() == 0 && ::setuid(65534) != 0)
            ::_exit(2);
        ::_exit(look() ? 0 : 1);
    }};
    return child.exitStatus();
}

TEST_F(JournalTroubles, AFileThatMayNotBeWrittenIsOpenedToRead) {
    { HandJournal{Journal::open(place())}.append(factFrom("2025-03-14T18:00:00Z,lit,,,")); }
    ::chmod(folder_.c_str(), 0777);
    ::chmod(place().c_str(), 0444);
    EXPECT_EQ(asAnybody([&] {
                  const Journal journal = Journal::open(place());
                  return journal.readOnly() && journal.readOnly()->trouble() == JournalTrouble::readOnly &&
                         journal.facts(journal.shifts().at(0).id).size() == 1;
              }),
              0);
}

// There SQLite is given the place as a URI, in which these signs mean something.
TEST_F(JournalTroubles, AFolderThatMayNotBeWrittenIsReadWhateverSignsItsNameHas) {
    const auto odd = folder_ / "50%41 #1?mode=memory.journal";
    { HandJournal{Journal::open(odd)}.append(factFrom("2025-03-14T18:00:00Z,lit,,,")); }
    ::chmod(odd.c_str(), 0444);
    ::chmod(folder_.c_str(), 0555);
    EXPECT_EQ(asAnybody([&] {
                  const Journal journal = Journal::open(odd);
                  return journal.readOnly() && journal.facts(journal.shifts().at(0).id).size() == 1;
              }),
              0);
    ::chmod(folder_.c_str(), 0755);
}

TEST_F(JournalTroubles, AFolderThatMayNotBeWrittenIsReadWithAllThatACrashLeftBesideTheFile) {
    Child child{[&](int ready) {
        HandJournal journal = Journal::open(place());
        journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
        say(ready, 'r');
        ::pause();
    }};
    child.wait(1);
    child.kill();
    ASSERT_TRUE(fs::exists(place().string() + "-wal"));
    fs::remove(place().string() + "-shm");
    for (const auto& file : fs::directory_iterator{folder_})
        ::chmod(file.path().c_str(), 0444);
    ::chmod(folder_.c_str(), 0555);
    const auto readsAll = [&] {
        const Journal journal = Journal::open(place());
        return journal.readOnly() && journal.facts(journal.shifts().at(0).id).size() == 1;
    };
    EXPECT_EQ(asAnybody(readsAll), 0);
    ::chmod(folder_.c_str(), 0755);
    fs::remove(place().string() + ".lock");
    ::chmod(place().c_str(), 0644);
    { Journal::open(place()); } // writes the rest into the file and takes the others away
    ::chmod(place().c_str(), 0444);
    ::chmod(folder_.c_str(), 0555);
    EXPECT_EQ(asAnybody(readsAll), 0);
    ::chmod(folder_.c_str(), 0755);
}

TEST_F(JournalTroubles, AChangedByteAmongTheReadingsIsNoticed) {
    {
        HandJournal journal = Journal::open(place());
        std::string log = "time,what,value,unit,detail\n";
        for (int i = 10; i < 60; ++i)
            log += "2025-03-14T18:00:" + std::to_string(i) + "Z,syrup_pan,101.5,degC,\n";
        imported(journal, log);
    }
    {
        SQLite::Database db{place().string(), SQLite::OPEN_READWRITE};
        db.exec("UPDATE block SET data = CAST(substr(data, 1, length(data) - 1) || x'05' AS BLOB)");
    }
    const Journal journal = Journal::open(place());
    EXPECT_EQ(told([&] { journal.facts(journal.shifts().at(0).id); }, JournalTrouble::damaged),
              place().string() +
                  ": the journal is damaged (readings of the shift 2025-03-14T18:00:10Z). Salvage what can be read "
                  "into a new file, or restore a back-up.");
}

// No hash covers how many readings a block says it holds: whatever stands there must not be believed.
TEST_F(JournalTroubles, AChangedCountOfABlockDoesNotExhaustTheMemory) {
    ShiftId shift{};
    {
        HandJournal journal = Journal::open(place());
        shift = imported(journal, "time,what,value,unit,detail\n2025-03-14T18:00:10Z,syrup_pan,101.5,degC,\n").shift;
    }
    for (const char* count : {"9000000000000000000", "1000000000000000", "-5"}) {
        {
            SQLite::Database db{place().string(), SQLite::OPEN_READWRITE};
            db.exec("UPDATE block SET count = " + std::string{count});
        }
        const Journal journal = Journal::open(place());
        EXPECT_EQ(journal.facts(shift).size(), 1U) << count;
    }
}

} // namespace
} // namespace panside
