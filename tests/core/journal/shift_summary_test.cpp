#include "core/journal/shift_summary.h"

#include "core/journal/rows.h"
#include "tests/core/journal/derived.h"
#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include <SQLiteCpp/Database.h>

namespace panside {
namespace {

using Summary = JournalPlace;

TEST_F(Summary, CountsWhatAListShows) {
    HandJournal journal = Journal::open(place());
    imported(journal, shortLog);
    const auto all = summaries(journal);
    ASSERT_EQ(all.size(), 1U);
    const ShiftSummary& one = all[0];
    EXPECT_EQ(textOf(one.first), "2025-03-14T18:00:00Z");
    EXPECT_EQ(textOf(one.last), "2025-03-14T20:10:00Z");
    EXPECT_EQ(textOf(one.lit.value()), "2025-03-14T18:00:00Z");
    EXPECT_EQ(one.readings, 5);
    EXPECT_EQ(one.facts, 12);
    EXPECT_EQ(one.draws, 1);
    EXPECT_EQ(one.drawsMeasured, 1);
    EXPECT_EQ(one.loads, 2);
    EXPECT_EQ(one.loadsWeighed, 2);
    EXPECT_DOUBLE_EQ(one.sap.litre(), 400);
    // NIST Handbook 44, appendix C: a US gallon is 3.785411784 L exactly, a pound 0.45359237 kg exactly. The second
    // load is of the set mass, 18 kg.
    EXPECT_DOUBLE_EQ(one.syrup.litre(), 2.5 * 3.785411784);
    EXPECT_DOUBLE_EQ(one.wood.kilogram(), 40 * 0.45359237 + 18);
}

TEST_F(Summary, FollowsWhatIsAddedAndWithdrawn) {
    HandJournal journal = Journal::open(place());
    const auto shift = imported(journal, shortLog).shift;
    ASSERT_EQ(summaries(journal)[0].loads, 2);
    const auto late =
        journal.appendTo(shift, factFrom("2025-03-14T18:20:00Z,fired,10,kg,entered=2025-03-15T09:00:00Z"));
    EXPECT_EQ(summaries(journal)[0].loads, 3);
    journal.withdrawFrom(shift, late, shift);
    EXPECT_EQ(summaries(journal)[0].loads, 2);
    journal.withdrawFrom(shift, 4, shift); // a reading
    EXPECT_EQ(summaries(journal)[0].readings, 4);
}

// Kept ones come from the table, counted ones from the facts: the same to the last digit.
TEST_F(Summary, IsTheSameKeptAndCountedAgain) {
    HandJournal journal = Journal::open(place());
    imported(journal, shortLog);
    const auto counted = summaries(journal)[0];
    const auto expectSame = [&](const ShiftSummary& other) {
        EXPECT_EQ(other.sap.si(), counted.sap.si());
        EXPECT_EQ(other.syrup.si(), counted.syrup.si());
        EXPECT_EQ(other.wood.si(), counted.wood.si());
        EXPECT_EQ(other.crew, counted.crew);
        EXPECT_EQ(other.readings, counted.readings);
        EXPECT_EQ(other.lit, counted.lit);
        EXPECT_EQ(other.last, counted.last);
    };
    expectSame(summaries(journal)[0]); // kept
    dropDerived(journal);
    expectSame(summaries(journal)[0]);
    expectSame(summaryOf(journal, counted.shift.id));
    SQLite::Database db{place().string(), SQLite::OPEN_READWRITE};
    EXPECT_EQ(db.execAndGet("SELECT loads FROM summary").getInt(), 2);
    db.exec("UPDATE summary SET loads=77, seen=1"); // out of date
    EXPECT_EQ(summaries(journal)[0].loads, 2);
}

// The fourth form counted a draw that was told twice as two.
TEST_F(Summary, ThatAnEarlierFormKeptIsCountedAgain) {
    {
        HandJournal journal = Journal::open(place());
        imported(journal, shortLog);
        EXPECT_EQ(summaries(journal)[0].draws, 1);
    }
    const auto change = [&](const char* how) {
        SQLite::Database db{place().string(), SQLite::OPEN_READWRITE};
        db.exec(how);
    };
    const auto draws = [&](Journal::Access access) {
        HandJournal journal = Journal::open(place(), access);
        return summaries(journal)[0].draws;
    };
    change("UPDATE summary SET draws=2");
    {
        SQLite::Database db{place().string(), SQLite::OPEN_READWRITE};
        sealDerived(db, Derived::summary, microsOf(instantIn("2025-03-14T18:00:00Z").value()));
    }
    EXPECT_EQ(draws(Journal::Access::write), 2) << "what is kept in this form is not counted again";
    change("DROP TABLE seal; ALTER TABLE shift DROP COLUMN begun; ALTER TABLE shift DROP COLUMN sum;"
           "ALTER TABLE turn DROP COLUMN sum; ALTER TABLE withdrawal DROP COLUMN sum;"
           "ALTER TABLE carried DROP COLUMN after; ALTER TABLE carried DROP COLUMN sum;"
           "ALTER TABLE summary DROP COLUMN sum; ALTER TABLE scored DROP COLUMN sum;"
           "ALTER TABLE worked DROP COLUMN sum; PRAGMA user_version=4");
    EXPECT_EQ(draws(Journal::Access::read), 1);
    EXPECT_EQ(draws(Journal::Access::write), 1);
}

TEST_F(Summary, NamesTheCrewAndCountsAnOpenShift) {
    HandJournal journal = Journal::open(place());
    journal.append(factFrom("2025-03-14T18:00:00Z,crew,,,by=Odile"));
    journal.append(factFrom("2025-03-14T18:00:00Z,crew,,,by=Anselme"));
    journal.append(factFrom("2025-03-14T22:00:00Z,crew,,,by=Odile"));
    journal.append(factFrom("2025-03-14T22:01:00Z,fired,,,"));
    const auto open = summaries(journal)[0];
    EXPECT_EQ(open.crew, (std::vector<std::string>{"Odile", "Anselme"}));
    EXPECT_EQ(open.loads, 1);
    EXPECT_EQ(open.loadsWeighed, 0); // of unknown mass: not counted as none
    journal.append(factFrom("2025-03-14T22:09:00Z,fired,,,"));
    EXPECT_EQ(summaries(journal)[0].loads, 2);
}

} // namespace
} // namespace panside
