#include "core/journal/journal.h"

#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include <SQLiteCpp/Database.h>

#include <algorithm>
#include <map>

namespace panside {
namespace {

using Rows = std::vector<std::string>;
using JournalFile = JournalPlace;

Instant at(const char* text) { return *instantIn(text); }

TEST_F(JournalFile, IsMadeWithTheFoldersAboveIt) {
    const auto place = folder_ / "share" / "panside" / "night.journal";
    HandJournal journal = Journal::open(place);
    EXPECT_FALSE(journal.readOnly());
    EXPECT_TRUE(std::filesystem::exists(place));
    EXPECT_TRUE(journal.shifts().empty());
}

TEST_F(JournalFile, KeepsFactsAcrossOpenings) {
    const Rows rows{"2025-03-14T18:00:00Z,lit,,,", "2025-03-14T18:00:01Z,syrup_pan,20.25,degC,",
                    "2025-03-14T18:00:01Z,stack,68.5,degF,probe=second", "2025-03-14T18:07:00Z,fired,40,lb,wood=maple",
                    "2025-03-14T18:08:00Z,note,,,\"a, b\""};
    {
        HandJournal journal = Journal::open(place());
        for (const auto& row : rows)
            journal.append(factFrom(row));
    }
    HandJournal journal = Journal::open(place());
    const auto open = journal.openShift();
    ASSERT_TRUE(open);
    EXPECT_EQ(open->name(), "2025-03-14T18:00:00Z");
    EXPECT_EQ(rowsOf(journal, open->id), rows);
    EXPECT_EQ(journal.append(factFrom("2025-03-14T18:09:00Z,fired,,,")).id, 6);
}

TEST_F(JournalFile, EndsAShiftByShiftEndOrByClosing) {
    HandJournal journal = Journal::open(place());
    journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    journal.append(factFrom("2025-03-14T23:00:00Z,shift_end,,,"));
    EXPECT_FALSE(journal.openShift());
    journal.append(factFrom("2025-03-15T18:00:00Z,lit,,,"));
    EXPECT_TRUE(journal.openShift());
    journal.close();
    EXPECT_FALSE(journal.openShift());
    ASSERT_EQ(journal.shifts().size(), 2U);
    EXPECT_EQ(journal.shifts()[1].name(), "2025-03-15T18:00:00Z");
}

TEST_F(JournalFile, AWithdrawnFactIsGoneFromTheShiftButNotFromTheFile) {
    HandJournal journal = Journal::open(place());
    journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    const auto fired = journal.append(factFrom("2025-03-14T18:07:00Z,fired,400,lb,"));
    const auto reading = journal.append(factFrom("2025-03-14T18:07:01Z,stack,300,degC,"));
    EXPECT_TRUE(journal.withdraw(fired.id, at("2025-03-14T18:07:05Z"), "Odile"));
    EXPECT_TRUE(journal.withdraw(reading.id, at("2025-03-14T18:07:06Z")));
    EXPECT_FALSE(journal.withdraw(77, at("2025-03-14T18:07:06Z")));
    EXPECT_EQ(rowsOf(journal, fired.shift), (Rows{"2025-03-14T18:00:00Z,lit,,,"}));
    const auto withdrawn = journal.withdrawn(fired.shift);
    ASSERT_EQ(withdrawn.size(), 1U);
    EXPECT_EQ(rowOf(withdrawn[0].entry.fact), "2025-03-14T18:07:00Z,fired,400,lb,");
    EXPECT_EQ(withdrawn[0].by, "Odile");
}

TEST_F(JournalFile, UndoingTheShiftEndOpensTheShiftAgain) {
    HandJournal journal = Journal::open(place());
    journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    const auto end = journal.append(factFrom("2025-03-14T23:00:00Z,shift_end,,,"));
    ASSERT_FALSE(journal.openShift());
    journal = Journal::open(place()); // also after a restart
    EXPECT_TRUE(journal.readOnly());  // the first is still open at this moment
    journal = Journal::open(place());
    ASSERT_FALSE(journal.readOnly());
    EXPECT_TRUE(journal.withdraw(end.id, at("2025-03-14T23:00:09Z")));
    ASSERT_TRUE(journal.openShift());
    EXPECT_EQ(journal.append(factFrom("2025-03-14T23:01:00Z,fired,,,")).shift, end.shift);
}

TEST_F(JournalFile, ALateFactStandsInItsTime) {
    HandJournal journal = Journal::open(place());
    const auto first = journal.append(factFrom("2025-03-14T18:00:00Z,syrup_pan,20,degC,"));
    journal.append(factFrom("2025-03-14T18:10:00Z,syrup_pan,30,degC,"));
    journal.append(factFrom("2025-03-14T18:05:00Z,fired,,,entered=2025-03-14T18:11:00Z"));
    journal.append(factFrom("2025-03-14T18:07:00Z,syrup_pan,25,degC,"));
    EXPECT_EQ(
        rowsOf(journal, first.shift),
        (Rows{"2025-03-14T18:00:00Z,syrup_pan,20,degC,", "2025-03-14T18:05:00Z,fired,,,entered=2025-03-14T18:11:00Z",
              "2025-03-14T18:07:00Z,syrup_pan,25,degC,", "2025-03-14T18:10:00Z,syrup_pan,30,degC,"}));
}

TEST_F(JournalFile, ANewShiftBeginsWithTheSettingsInForceAndWhatWasLearned) {
    HandJournal journal = Journal::open(place());
    journal.append(factFrom("2025-03-14T18:00:00Z,set,67.5,brix,key=target_density"));
    journal.append(factFrom("2025-03-14T18:00:00Z,set,18,kg,key=load_mass"));
    const auto mistaken = journal.append(factFrom("2025-03-14T18:30:00Z,set,80,kg,key=load_mass"));
    journal.append(factFrom("2025-03-14T19:00:00Z,set,200,m,key=elevation"));
    journal.withdraw(mistaken.id, at("2025-03-14T18:31:00Z"));
    journal.carry(factFrom("2025-03-14T20:00:00Z,set,0.42,K,key=probe_offset"));
    journal.append(factFrom("2025-03-14T23:00:00Z,shift_end,,,"));
    journal.carry(factFrom("2025-03-15T09:00:00Z,set,210,m,key=elevation"));
    const auto next = journal.append(factFrom("2025-03-15T18:00:00Z,lit,,,"));
    const Rows expected{"2025-03-15T18:00:00Z,set,67.5,brix,key=target_density",
                        "2025-03-15T18:00:00Z,set,210,m,key=elevation", "2025-03-15T18:00:00Z,set,18,kg,key=load_mass",
                        "2025-03-15T18:00:00Z,set,0.42,K,key=probe_offset", "2025-03-15T18:00:00Z,lit,,,"};
    EXPECT_EQ(rowsOf(journal, next.shift), expected);
    ASSERT_EQ(next.opening.size(), 4U);
    EXPECT_EQ(rowOf(next.opening[3].fact), expected[3]);
    EXPECT_EQ(next.opening[3].id, 4);
    // The same from the file as from memory.
    journal.close();
    journal = Journal::open(folder_ / "elsewhere"); // lets go of the first
    journal = Journal::open(place());
    const auto third = journal.append(factFrom("2025-03-16T18:00:00Z,lit,,,"));
    EXPECT_EQ(third.opening.size(), 4U);
}

// A small computer without a battery clock: a night that was begun after another, and whose times lie before it. After
// a crash it is taken up, with its own settings, and nothing of it is left open beside the next.
TEST_F(JournalFile, TheOpenShiftIsTheOneBegunLastWhateverTheClockSaid) {
    ShiftId first{}, second{};
    {
        HandJournal journal = Journal::open(place());
        journal.carry(factFrom("2025-03-13T12:00:00Z,set,68,brix,key=target_density"));
        first = journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,")).shift;
        journal.append(factFrom("2025-03-14T23:00:00Z,shift_end,,,"));
        journal.carry(factFrom("2025-03-15T08:00:00Z,set,18,kg,key=load_mass"));
        second = journal.append(factFrom("2024-01-01T00:00:10Z,lit,,,")).shift;
        journal.append(factFrom("2024-01-01T00:01:00Z,set,65,brix,key=target_density"));
        imported(journal, "time,what,value,unit,detail\n2024-06-01T18:00:00Z,lit,,,\n");
    }
    HandJournal journal = Journal::open(place());
    ASSERT_TRUE(journal.openShift());
    EXPECT_EQ(journal.openShift()->id, second);
    EXPECT_EQ(journal.latest(), at("2025-03-14T23:00:00Z")) << "what the clock is measured against";
    const auto standing = journal.standing();
    EXPECT_EQ(standing.shift, second);
    EXPECT_TRUE(standing.open);
    std::map<Setting, double> inForce;
    for (const Set& set : Scribe{standing}.inForce())
        inForce[set.key] = set.si;
    EXPECT_DOUBLE_EQ(inForce.at(Setting::target_density), 0.65);
    EXPECT_DOUBLE_EQ(inForce.at(Setting::load_mass), 18);
    EXPECT_EQ(journal.append(factFrom("2024-01-01T00:02:00Z,fired,,,")).shift, second);
    journal.close();
    // What is carried with the wrong clock stands as well.
    journal.carry(factFrom("2024-01-01T01:00:00Z,set,66,brix,key=target_density"));
    const auto third = journal.append(factFrom("2025-03-16T18:00:00Z,lit,,,"));
    EXPECT_EQ(third.opening.size(), 2U);
    const auto shifts = journal.shifts();
    ASSERT_EQ(shifts.size(), 4U);
    EXPECT_EQ(shifts[0].id, at("2024-06-01T18:00:00Z"));
    EXPECT_EQ(shifts[1].id, first);
    EXPECT_EQ(shifts[2].id, second);
    EXPECT_EQ(std::count_if(shifts.begin(), shifts.end(), [](const Shift& shift) { return shift.open; }), 1);
}

TEST_F(JournalFile, TheSettingsInForceStandBeforeAnEarlierFactThatWasEnteredLater) {
    HandJournal journal = Journal::open(place());
    journal.carry(factFrom("2025-03-14T12:00:00Z,set,18,kg,key=load_mass"));
    const auto first = journal.append(factFrom("2025-03-14T18:00:00Z,syrup_pan,20,degC,"));
    journal.append(factFrom("2025-03-14T17:45:00Z,lit,,,entered=2025-03-14T18:00:30Z"));
    EXPECT_EQ(rowsOf(journal, first.shift), (Rows{"2025-03-14T17:45:00Z,set,18,kg,key=load_mass",
                                                  "2025-03-14T17:45:00Z,lit,,,entered=2025-03-14T18:00:30Z",
                                                  "2025-03-14T18:00:00Z,syrup_pan,20,degC,"}));
    EXPECT_EQ(journal.openShift()->name(), "2025-03-14T18:00:00Z"); // its name stays
}

TEST_F(JournalFile, AnOldShiftCanBeCorrectedWhileANewOneIsOpen) {
    HandJournal journal = Journal::open(place());
    const auto old = journal.append(factFrom("2025-03-14T18:00:00Z,fired,400,lb,"));
    journal.append(factFrom("2025-03-14T23:00:00Z,shift_end,,,"));
    const auto open = journal.append(factFrom("2025-03-15T18:00:00Z,lit,,,"));
    journal.withdrawFrom(old.shift, old.id, at("2025-03-15T18:05:00Z"));
    EXPECT_GT(journal.appendTo(old.shift, factFrom("2025-03-14T18:00:00Z,fired,40,lb,entered=2025-03-15T18:05:00Z")),
              2);
    EXPECT_EQ(rowsOf(journal, old.shift)[0], "2025-03-14T18:00:00Z,fired,40,lb,entered=2025-03-15T18:05:00Z");
    EXPECT_EQ(journal.append(factFrom("2025-03-15T18:06:00Z,fired,,,")).shift, open.shift);
    EXPECT_THROW(journal.Journal::appendTo(at("2024-01-01T00:00:00Z"), factFrom("2025-03-14T18:00:00Z,lit,,,")),
                 JournalError);
}

TEST_F(JournalFile, AShiftIsFoundByTheBeginningOfItsName) {
    HandJournal journal = Journal::open(place());
    journal.append(factFrom("2025-03-14T18:00:00Z,lit,,,"));
    journal.close();
    journal.append(factFrom("2025-03-15T17:30:00.5Z,lit,,,"));
    EXPECT_EQ(journal.shiftNamed("2025-03-15").name(), "2025-03-15T17:30:00.5Z");
    EXPECT_EQ(journal.shiftNamed("2025-03-14T13:00:00-05:00").name(), "2025-03-14T18:00:00Z");
    try {
        journal.shiftNamed("2025-03");
        FAIL() << "two shifts begin so";
    } catch (const JournalError& error) {
        EXPECT_EQ(error.trouble(), JournalTrouble::noSuchShift);
        EXPECT_EQ(error.what(),
                  place().string() + ": there is no shift 2025-03 in this journal. Look at the list of its shifts.");
    }
}

// Small blocks, one a commit, are merged as the shift goes on and when it ends; nothing of it shows.
TEST_F(JournalFile, ReadingsAreTheSameBeforeAndAfterTheyAreMerged) {
    HandJournal journal = Journal::open(place());
    std::string expected = "time,what,value,unit,detail\n";
    ShiftId shift{};
    for (int second = 0; second < 300; ++second) {
        std::vector<Change> changes;
        const auto time = textOf(at("2025-03-14T18:00:00Z") + std::chrono::seconds{second});
        for (const char* rest : {",syrup_pan,101.25,degC,", ",stack,310.5,degF,", ",pressure,98.7,kPa,"}) {
            expected += time + rest + "\n";
            shift = journal.append(factFrom(time + rest)).shift;
        }
        if (second % 70 == 0) {
            expected += time + ",fired,,,\n";
            journal.append(factFrom(time + ",fired,,,"));
        }
    }
    EXPECT_EQ(exported(journal, shift), expected);
    const auto blocks = [&] {
        SQLite::Database db{place().string()};
        return db.execAndGet("SELECT count(*) FROM block").getInt();
    };
    EXPECT_EQ(blocks(), 900);
    journal.close();
    EXPECT_EQ(blocks(), 1);
    EXPECT_EQ(exported(journal, shift), expected);
}

TEST_F(JournalFile, ALongShiftIsMergedWhileItRuns) {
    HandJournal journal = Journal::open(place());
    std::vector<Change> changes;
    Scribe scribe{journal.standing()};
    for (int batch = 0; batch < 9; ++batch) {
        changes.clear();
        for (int i = 0; i < 2000; ++i) {
            Fact fact = factFrom("2025-03-14T18:00:00Z,syrup_pan,101.25,degC,");
            fact.at += std::chrono::seconds{batch * 2000 + i};
            scribe.keep(std::move(fact), changes);
        }
        journal.commit(changes);
    }
    SQLite::Database db{place().string()};
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM block").getInt(), 2); // a full one and the rest
    EXPECT_EQ(db.execAndGet("SELECT sum(count) FROM block").getInt(), 18000);
    EXPECT_EQ(journal.openFacts().size(), 18000U);
}

} // namespace
} // namespace panside
