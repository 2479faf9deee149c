#include "core/journal/log_import.h"

#include "core/journal/log_chunks.h"
#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include <stdexcept>
#include <streambuf>

namespace panside {
namespace {

using LogImport = JournalPlace;

TEST_F(LogImport, GivesTheLogBackAsItWas) {
    HandJournal journal = Journal::open(place());
    const Imported result = imported(journal, shortLog);
    ASSERT_EQ(result.outcome, ImportOutcome::added);
    EXPECT_EQ(result.facts, 17U);
    EXPECT_EQ(result.warningCount, 1U); // humour is no word of the log: kept, and named
    EXPECT_EQ(exported(journal, result.shift), shortLog);
    EXPECT_EQ(sentence(result, "night.csv"), "night.csv: added as shift 2025-03-14T18:00:00Z, 17 facts.");
    const auto shifts = journal.shifts();
    ASSERT_EQ(shifts.size(), 1U);
    EXPECT_TRUE(shifts[0].imported);
    EXPECT_FALSE(shifts[0].open);
}

TEST_F(LogImport, NoticesALogThatIsThereAlready) {
    HandJournal journal = Journal::open(place());
    ASSERT_EQ(imported(journal, shortLog).outcome, ImportOutcome::added);
    const auto again = imported(journal, shortLog);
    EXPECT_EQ(again.outcome, ImportOutcome::alreadyThere);
    EXPECT_EQ(sentence(again, "night.csv"),
              "night.csv: already there as shift 2025-03-14T18:00:00Z; nothing was added.");
    EXPECT_EQ(journal.shifts().size(), 1U);
    // Other line ends, another order of the rows and a byte-order mark make no other log.
    std::string windows = "\xEF\xBB\xBF" + shortLog;
    for (std::size_t i = 0; (i = windows.find('\n', i)) != std::string::npos; i += 2)
        windows.replace(i, 1, "\r\n");
    EXPECT_EQ(imported(journal, windows).outcome, ImportOutcome::alreadyThere);
}

TEST_F(LogImport, NoticesTheExportOfItsOwnShift) {
    HandJournal journal = Journal::open(place());
    journal.carry(factFrom("2025-03-14T12:00:00Z,set,18,kg,key=load_mass"));
    const auto first = journal.append(factFrom("2025-03-14T18:00:00Z,syrup_pan,20.1,degC,"));
    journal.append(factFrom("2025-03-14T17:45:00Z,lit,,,entered=2025-03-14T18:00:30Z")); // begins before its name
    const auto wrong = journal.append(factFrom("2025-03-14T18:01:00Z,fired,400,lb,"));
    journal.withdraw(wrong.id, first.shift);
    journal.close();
    EXPECT_EQ(imported(journal, exported(journal, first.shift)).outcome, ImportOutcome::alreadyThere);
    EXPECT_EQ(journal.shifts().size(), 1U);
}

TEST_F(LogImport, RefusesOtherFactsUnderTheSameBeginning) {
    HandJournal journal = Journal::open(place());
    ASSERT_EQ(imported(journal, shortLog).outcome, ImportOutcome::added);
    std::string other = shortLog;
    other.replace(other.find("20.25"), 5, "20.26");
    const auto result = imported(journal, other);
    EXPECT_EQ(result.outcome, ImportOutcome::differs);
    EXPECT_EQ(sentence(result, "night.csv"),
              "night.csv: a shift that begins at the same time is there, 2025-03-14T18:00:00Z, with other facts (17 "
              "there, 17 in "
              "the log); nothing was imported. Import it into another journal to compare them.");
    EXPECT_EQ(exported(journal, result.shift), shortLog);
}

TEST_F(LogImport, TakesNothingOfALogWithOneBadRow) {
    HandJournal journal = Journal::open(place());
    std::string bad = shortLog;
    bad.replace(bad.find("20.25"), 5, "2O.25");
    const auto result = imported(journal, bad);
    EXPECT_EQ(result.outcome, ImportOutcome::faulty);
    ASSERT_EQ(result.faults.size(), 1U);
    EXPECT_EQ(result.faults[0].line, 5U);
    EXPECT_EQ(result.faults[0].slip, Slip::number);
    EXPECT_EQ(sentence(result, "night.csv"), "night.csv: 1 fault, nothing was imported.");
    EXPECT_TRUE(journal.shifts().empty());
    std::istringstream nothing;
    EXPECT_EQ(importLog(journal, nothing).outcome, ImportOutcome::faulty);
}

TEST_F(LogImport, RefusesTwoShiftsInOneLog) {
    HandJournal journal = Journal::open(place());
    const auto result = imported(journal, shortLog + "2025-03-15T17:00:00Z,lit,,,\n");
    EXPECT_EQ(result.outcome, ImportOutcome::twoShifts);
    EXPECT_EQ(sentence(result, "night.csv"), "night.csv: two shifts in one log: shift_end at 2025-03-14T20:10:00Z, "
                                             "then lit at 2025-03-15T17:00:00Z; nothing was "
                                             "imported. Split the log between the two.");
    EXPECT_TRUE(journal.shifts().empty());
}

// Long enough for many pieces and blocks: 60000 rows.
std::string longLog() {
    std::string log = "time,what,value,unit,detail\n";
    Instant time = *instantIn("2025-03-14T18:00:00Z");
    for (int second = 0; second < 20000; ++second, time += std::chrono::seconds{1}) {
        const std::string at = textOf(time);
        log +=
            at + ",syrup_pan," + std::to_string(100 + second % 7) + "." + std::to_string(1 + second % 9) + ",degC,\n";
        log += at + ",stack," + std::to_string(300 + second % 90) + ",degC,\n";
        log += second % 500 == 0 ? at + ",note,,,\"line one\nline \"\"two\"\"\"\n" : at + ",pressure,98.7,kPa,\n";
    }
    return log;
}

TEST_F(LogImport, ReadsALongLogInPieces) {
    HandJournal journal = Journal::open(place());
    const std::string log = longLog();
    std::uint64_t seen = 0;
    int calls = 0;
    const auto result = imported(journal, log, {.goOn = [&](std::uint64_t bytes) {
                                     EXPECT_GE(bytes, seen);
                                     seen = bytes;
                                     return ++calls < 1000;
                                 }});
    ASSERT_EQ(result.outcome, ImportOutcome::added);
    EXPECT_EQ(result.facts, 60000U);
    EXPECT_EQ(seen, log.size());
    EXPECT_GT(calls, 5);
    EXPECT_TRUE(exported(journal, result.shift) == log);
    EXPECT_LT(std::filesystem::file_size(place()), 60000 * 2);
}

TEST_F(LogImport, SaysTheLineOfAFaultFarDownALongLog) {
    HandJournal journal = Journal::open(place());
    std::string log = longLog();
    const auto line = 1 + static_cast<std::size_t>(std::count(log.begin(), log.end(), '\n'));
    log += "2025-03-15T18:00:00Z,syrup_pan,1O1,degC,\n2025-03-15T18:00:00Z,syrup_pan,101,,\n";
    const auto result = imported(journal, log, {.goOn = {}, .most = 1});
    ASSERT_EQ(result.outcome, ImportOutcome::faulty);
    EXPECT_EQ(result.faultCount, 2U);
    ASSERT_EQ(result.faults.size(), 1U);
    EXPECT_EQ(result.faults[0].line, line);
}

TEST_F(LogImport, PutsRowsInTheOrderOfTheirTimesHoweverFarApartTheyStand) {
    HandJournal journal = Journal::open(place());
    std::string log = longLog();
    const std::string early = "2025-03-14T17:00:00Z,stack,11.5,degC,\n2025-03-14T17:00:00Z,lit,,,\n";
    const auto result = imported(journal, log + early);
    ASSERT_EQ(result.outcome, ImportOutcome::added);
    EXPECT_EQ(textOf(result.shift), "2025-03-14T17:00:00Z");
    EXPECT_TRUE(exported(journal, result.shift) == log.insert(log.find('\n') + 1, early));
}

TEST_F(LogImport, LeavesNothingBehindWhenStopped) {
    HandJournal journal = Journal::open(place());
    int calls = 0;
    const auto result = imported(journal, longLog(), {.goOn = [&](std::uint64_t) { return ++calls < 3; }});
    EXPECT_EQ(result.outcome, ImportOutcome::cancelled);
    EXPECT_TRUE(journal.shifts().empty());
    EXPECT_EQ(imported(journal, longLog()).outcome, ImportOutcome::added);
}

TEST_F(LogImport, AnExportCanBeStopped) {
    HandJournal journal = Journal::open(place());
    const auto result = imported(journal, longLog());
    int pieces = 0;
    EXPECT_FALSE(exportLog(
        journal, result.shift, [&](std::string_view) { ++pieces; }, [](std::uint64_t) { return false; }));
    EXPECT_EQ(pieces, 1);
}

// A stick pulled in mid-import had looked like the end of the log, and half a night was taken for the whole.
class Pulled : public std::streambuf {
public:
    explicit Pulled(std::string text) : text_{std::move(text)} {
        setg(text_.data(), text_.data(), text_.data() + text_.size());
    }

protected:
    int_type underflow() override { throw std::runtime_error{"no such device"}; }

private:
    std::string text_;
};

TEST_F(LogImport, ALogThatCannotBeReadToItsEndIsRefusedWhole) {
    HandJournal journal = Journal::open(place());
    Pulled stick{shortLog};
    std::istream log{&stick};
    const auto done = importLog(journal, log);
    EXPECT_EQ(done.outcome, ImportOutcome::unreadable);
    EXPECT_EQ(sentence(done, "night.csv"),
              "night.csv: cannot be read to its end; nothing was imported. Check the disk or stick.");
    EXPECT_TRUE(journal.shifts().empty());
}

// What a check takes an import takes, and what it refuses an import refuses.
TEST_F(LogImport, AgreesWithTheCheck) {
    const std::string head = "time,what,value,unit,detail\n", lit = "2025-03-14T18:00:00Z,lit,,,\n";
    const std::vector<std::pair<std::string, ImportOutcome>> logs{
        {shortLog, ImportOutcome::added},
        {head + lit + "2025-03-14T19:00:00Z,shift_end,,,\n2025-03-14T20:00:00Z,lit,,,\n", ImportOutcome::twoShifts},
        {head + "2025-03-14T18:00:00Z,note,,," + std::string(1 << 20, 'x') + "\n" + lit, ImportOutcome::faulty},
        {head + "2025-03-14T18:00:00Z,note,,,\"" + std::string(1 << 20, 'x') + "\n" + lit, ImportOutcome::faulty},
        {std::string(1 << 20, 'x'), ImportOutcome::faulty},
        {head, ImportOutcome::faulty},
        {"", ImportOutcome::faulty},
        {head + lit + "2199-03-14T19:00:00Z,fired,,,\n", ImportOutcome::faulty},
        {head + lit + "2025-03-14T18:00:00Z,syrup_pan,1e300,degC,\n", ImportOutcome::faulty}};
    for (const auto& [log, expected] : logs) {
        const ReadLog read = readLog(log); // as a check reads it
        EXPECT_EQ(!read.faults.empty(), expected == ImportOutcome::faulty) << log.substr(0, 200);
        EXPECT_EQ(twoShiftsIn(read.facts).has_value(), expected == ImportOutcome::twoShifts) << log.substr(0, 200);
        HandJournal journal = Journal::open(folder_ / std::to_string(&log - &logs.front().first));
        EXPECT_EQ(imported(journal, log).outcome, expected) << log.substr(0, 200);
    }
}

// A file without a line end is given up after the first pieces, not gone through again and again.
TEST_F(LogImport, GivesUpAFileWithoutLineEndsAtOnce) {
    std::istringstream text{"time,what,value,unit,detail\n" + std::string(std::size_t{1} << 25, 'x')};
    LogChunks chunks{text};
    HandJournal journal = Journal::open(place());
    const auto found = importLog(journal, chunks);
    ASSERT_EQ(found.faultCount, 1U);
    EXPECT_EQ(found.faults[0].slip, Slip::rowLength);
    EXPECT_EQ(found.faults[0].line, 2U);
    EXPECT_LE(chunks.bytes(), std::uint64_t{1} << 20);
}

// The limits are of the whole log, not of the pieces in which it is read.
TEST_F(LogImport, HoldsALogToItsLimitsAcrossPieces) {
    std::string log = "time,what,value,unit,detail\n";
    for (int i = 0; i < 100; ++i) {
        for (int k = 0; k < 100; ++k)
            log += "2025-03-14T18:00:00Z,syrup_pan,100,degC,probe=p" + std::to_string(i) + "\n";
        log += "2025-03-14T18:00:00Z,note,,," + std::string(5000, 'x') + "\n";
    }
    HandJournal journal = Journal::open(place());
    const auto found = imported(journal, log);
    ASSERT_EQ(found.faultCount, 1U);
    EXPECT_EQ(found.faults[0].slip, Slip::probes);
    EXPECT_EQ(found.faults[0].line, 2U + 64 * 101);
}

} // namespace
} // namespace panside
