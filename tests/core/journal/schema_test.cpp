// Journals of older forms, as they were made then. A form that was once in a person's hands stays here for good.
#include "core/journal/backup.h"
#include "core/journal/kept_figures.h"
#include "core/journal/shift_summary.h"
#include "tests/core/journal/first_form.h"
#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include <SQLiteCpp/Database.h>

namespace panside {
namespace {

using Schema = JournalPlace;

TEST_F(Schema, ReadsAndMigratesTheFirstForm) {
    {
        SQLite::Database db{place().string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        db.exec(firstFormEmpty);
        db.exec(firstFormShift);
    }
    const std::vector<std::string> rows{"2025-03-14T18:00:00Z,lit,,,", "2025-03-14T18:00:01Z,syrup_pan,20.25,degC,",
                                        "2025-03-14T18:00:01Z,stack,68.5,degF,",
                                        "2025-03-14T18:07:00Z,fired,40,lb,wood=maple"};
    {
        HandJournal old = Journal::open(place(), Journal::Access::read); // reading changes nothing in it
        EXPECT_EQ(rowsOf(old, old.shifts().at(0).id), rows);
        EXPECT_EQ(summaries(old).at(0).loads, 1);
        SQLite::Database db{place().string()};
        EXPECT_EQ(db.execAndGet("PRAGMA user_version").getInt(), 1);
    }
    HandJournal journal = Journal::open(place());
    EXPECT_EQ(rowsOf(journal, journal.shifts().at(0).id), rows);
    EXPECT_EQ(journal.append(factFrom("2025-03-14T18:09:00Z,fired,,,")).id, 5);
    EXPECT_EQ(summaries(journal).at(0).loads, 2);
    SQLite::Database db{place().string()};
    EXPECT_EQ(db.execAndGet("PRAGMA user_version").getInt(), 8);
}

// The form that bears sums over everything: what was there is sealed, a setting that was carried stands as it did, and
// of two shifts that an earlier program left open the later one stays so.
TEST_F(Schema, SealsWhatOlderFormsKept) {
    {
        SQLite::Database db{place().string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        db.exec(firstFormEmpty);
        db.exec(firstFormShift);
        db.exec("INSERT INTO shift VALUES(1742061600000000,1,0); INSERT INTO turn VALUES(1742061600000000,1,1);"
                "INSERT INTO withdrawal VALUES(1741975200000000,5,4,1741975620000000,'Odile');"
                "INSERT INTO carried VALUES(1,1741970000000000,'2025-03-14T16:33:20Z,set,66,brix,key=target_density');"
                "INSERT INTO carried VALUES(2,1742062000000000,'2025-03-15T18:06:40Z,set,65,brix,key=target_density')");
    }
    HandJournal journal = Journal::open(place());
    const auto health = fullCheck(journal);
    EXPECT_TRUE(health.sound()) << english(health.findings.front());
    const auto shifts = journal.shifts();
    ASSERT_EQ(shifts.size(), 2U);
    EXPECT_FALSE(shifts[0].open);
    EXPECT_TRUE(shifts[1].open);
    const auto standing = journal.standing();
    EXPECT_EQ(standing.shift, shifts[1].id);
    ASSERT_EQ(standing.carried.size(), 1U);
    EXPECT_DOUBLE_EQ(standing.carried[0].set.si, 0.65);
    EXPECT_EQ(rowsOf(journal, shifts[0].id).size(), 3U);
}

// The second form had the summaries, and nothing for what others work out.
TEST_F(Schema, ReadsAndMigratesTheSecondForm) {
    {
        SQLite::Database db{place().string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        db.exec(firstFormEmpty);
        db.exec(firstFormShift);
        db.exec("CREATE TABLE summary(shift INTEGER PRIMARY KEY, seen INTEGER NOT NULL, first INTEGER NOT NULL, "
                "last INTEGER NOT NULL, readings INTEGER NOT NULL, facts INTEGER NOT NULL, draws INTEGER NOT NULL, "
                "drawsMeasured INTEGER NOT NULL, loads INTEGER NOT NULL, loadsWeighed INTEGER NOT NULL, "
                "checks INTEGER NOT NULL, sap REAL NOT NULL, syrup REAL NOT NULL, wood REAL NOT NULL, lit INTEGER, "
                "crew TEXT NOT NULL); PRAGMA user_version=2");
    }
    {
        HandJournal old = Journal::open(place(), Journal::Access::read);
        EXPECT_EQ(summaries(old).at(0).loads, 1);
        EXPECT_TRUE(keptFigures(old, 1).empty());
    }
    HandJournal journal = Journal::open(place());
    EXPECT_EQ(rowsOf(journal, journal.shifts().at(0).id).size(), 4U);
    const ShiftId shift = journal.shifts().at(0).id;
    EXPECT_TRUE(keepFigures(journal, shift, 1, factsSeen(journal, shift), {{"loads", 1}}));
    EXPECT_EQ(keptFigures(journal, 1).at(shift).at("loads"), 1);
}

} // namespace
} // namespace panside
