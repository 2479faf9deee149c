// Whatever is altered, added or taken out of a journal by other hands is found by the full check, and named.
#include "core/journal/backup.h"
#include "core/journal/draw_scores.h"
#include "core/journal/kept_figures.h"
#include "core/journal/salvage.h"
#include "core/journal/shift_summary.h"
#include "tests/core/journal/derived.h"
#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include <SQLiteCpp/Database.h>

namespace panside {
namespace {

class FullCheck : public JournalPlace {
protected:
    // A night begun here with a withdrawal and a setting carried on, and one that was imported.
    void SetUp() override {
        HandJournal journal = Journal::open(place());
        journal.carry(factFrom("2025-03-19T12:00:00Z,set,66.9,brix,key=target_density"));
        const auto first = journal.append(factFrom("2025-03-20T09:00:00Z,lit,,,"));
        for (int i = 0; i < 5; ++i) {
            Fact fact = factFrom("2025-03-20T09:01:00Z,syrup_pan,101.5,degC,");
            fact.at += std::chrono::seconds{i};
            journal.append(fact);
        }
        const auto load = journal.append(factFrom("2025-03-20T09:07:00Z,fired,,,"));
        journal.append(factFrom("2025-03-20T09:08:00Z,note,,,mine"));
        journal.withdraw(load.id, *instantIn("2025-03-20T09:10:00Z"));
        journal.append(factFrom("2025-03-20T18:00:00Z,shift_end,,,"));
        journal.carry(factFrom("2025-03-20T19:00:00Z,set,65,brix,key=target_density"));
        imported(journal, shortLog);
        summaries(journal);
        for (const Shift& shift : journal.shifts())
            drawScores(journal, shift.id);
        keepFigures(journal, first.shift, 1, factsSeen(journal, first.shift), {{"litres", 3.5}});
    }
    // In English, as the terminal says it.
    std::vector<std::string> found() const {
        std::vector<std::string> said;
        for (const Sentence& finding : fullCheck(Journal::open(place(), Journal::Access::read)).findings)
            said.push_back(english(finding));
        return said;
    }
    // What the check finds after this was done to the journal by another program.
    std::vector<std::string> after(const std::string& sql) {
        const auto copy = folder_ / "before";
        std::filesystem::copy_file(place(), copy);
        { SQLite::Database{place().string(), SQLite::OPEN_READWRITE}.exec(sql); }
        auto findings = found();
        std::filesystem::rename(copy, place());
        return findings;
    }
};

const std::string begunHere = "2025-03-20T09:00:00Z", other = "2025-03-14T18:00:00Z";

TEST_F(FullCheck, AJournalThatOnlyPansideWroteIsSound) {
    EXPECT_TRUE(found().empty()) << found().front();
    {
        HandJournal journal = Journal::open(place());
        const auto shift = journal.shifts().back().id;
        journal.appendTo(shift, factFrom("2025-03-20T10:00:00Z,fired,,,"));
        journal.withdrawFrom(shift, 2, *instantIn("2025-03-21T09:00:00Z"));
        dropDerived(journal);
        summaries(journal);
        // Enough readings that small blocks are merged.
        Fact reading = factFrom("2025-03-22T09:00:00Z,stack,301.5,degC,");
        std::vector<Change> changes;
        Scribe scribe{journal.standing()};
        for (int i = 0; i < 20000; ++i, reading.at += std::chrono::seconds{1}) {
            scribe.keep(reading, changes);
            if (i % 900 == 0) {
                journal.commit(changes);
                changes.clear();
            }
        }
        journal.commit(changes);
    }
    EXPECT_TRUE(found().empty()) << found().front();
}

TEST_F(FullCheck, NamesWhatWasAltered) {
    const std::vector<std::pair<std::string, std::string>> done{
        {"UPDATE carried SET row=replace(row,'65','76.9') WHERE id=2",
         "a setting for shifts to come: 2025-03-20T19:00:00Z,set,76.9,brix,key=target_density"},
        {"UPDATE carried SET at=at+1 WHERE id=2",
         "a setting for shifts to come: 2025-03-20T19:00:00Z,set,65,brix,key=target_density"},
        {"UPDATE withdrawal SET fact=fact-1", "a withdrawal of the shift " + begunHere},
        {"UPDATE withdrawal SET by='Odile'", "a withdrawal of the shift " + begunHere},
        {"UPDATE turn SET open=1 WHERE number=2", "an opening or closing of the shift " + begunHere},
        {"UPDATE shift SET opening=0 WHERE live=1", "the shift " + begunHere + " in the list of shifts"},
        {"UPDATE shift SET live=1 WHERE live=0", "the shift " + other + " in the list of shifts"},
        {"UPDATE fact SET row=replace(row,'mine','yours')", "a fact of the shift " + begunHere},
        {"UPDATE fact SET at=at+1 WHERE row LIKE '%mine'", "a fact of the shift " + begunHere},
        {"UPDATE block SET latest=latest+1 WHERE shift=1742461200000000 AND first=3",
         "readings of the shift " + begunHere},
        {"UPDATE summary SET loads=loads+1 WHERE shift=1742461200000000",
         "figures worked out of the shift " + begunHere + "; they are counted again when they are shown"},
        {"UPDATE figure SET value=4",
         "figures worked out of the shift " + begunHere + "; they are counted again when they are shown"},
        {"UPDATE scored SET seen=seen+1 WHERE shift=1741975200000000",
         "figures worked out of the shift " + other + "; they are counted again when they are shown"},
    };
    for (const auto& [sql, finding] : done)
        EXPECT_EQ(after(sql), std::vector{finding}) << sql;
}

// What was worked out and altered since is never shown, and is right again once it was asked for.
TEST_F(FullCheck, FiguresThatWereAlteredAreCountedAgain) {
    for (const std::string sql :
         {"UPDATE summary SET loads=loads+1", "UPDATE figure SET value=4", "UPDATE scored SET sum=sum+1"}) {
        { SQLite::Database{place().string(), SQLite::OPEN_READWRITE}.exec(sql); }
        EXPECT_FALSE(found().empty()) << sql;
        HandJournal journal = Journal::open(place());
        for (const ShiftSummary& summary : summaries(journal))
            EXPECT_EQ(summary.loads, textOf(summary.shift.id) == begunHere ? 0 : 2) << sql;
        EXPECT_EQ(keptFigures(journal, 1).size(), sql.find("figure") == std::string::npos ? 1U : 0U) << sql;
        for (const Shift& shift : journal.shifts())
            drawScores(journal, shift.id);
        const auto begun = journal.shifts().back().id;
        keepFigures(journal, begun, 1, factsSeen(journal, begun), {{"litres", 3.5}});
        EXPECT_TRUE(found().empty()) << sql << ": " << found().front();
    }
}

TEST_F(FullCheck, NamesWhatWasAddedOrTakenOut) {
    const std::vector<std::pair<std::string, std::string>> done{
        {"INSERT INTO withdrawal(shift, id, fact, at, by) SELECT shift, 99, 8, at, by FROM withdrawal",
         "a withdrawal of the shift " + begunHere},
        {"INSERT INTO turn(shift, number, open) VALUES(1742461200000000, 3, 1)",
         "an opening or closing of the shift " + begunHere},
        {"DELETE FROM withdrawal", "missing rows, 1 of the shift " + begunHere},
        {"DELETE FROM turn WHERE number=2", "missing rows, 1 of the shift " + begunHere},
        {"DELETE FROM carried WHERE id=2", "missing rows, 1 of the list of shifts or of settings for shifts to come"},
        {"DELETE FROM fact WHERE row LIKE '%mine'", "missing rows, 1 of the shift " + begunHere},
        {"DELETE FROM fact WHERE row LIKE '%shift_end%' AND shift=1742461200000000",
         "missing rows, 1 of the shift " + begunHere},
        {"DELETE FROM block WHERE shift=1741975200000000", "missing rows, 1 of the shift " + other},
        {"DELETE FROM shift WHERE live=0", "missing rows, 1 of the list of shifts or of settings for shifts to come"},
        {"UPDATE seal SET sum=sum+1 WHERE part=3 AND shift=1742461200000000",
         "rows that are not as they were kept of the shift " + begunHere},
        {"INSERT INTO fact SELECT shift, 77, at, row, sum FROM fact WHERE row LIKE '%mine'",
         "a fact of the shift " + begunHere},
    };
    for (const auto& [sql, finding] : done)
        EXPECT_EQ(after(sql), std::vector{finding}) << sql;
    // A whole shift, with all that seals it.
    const auto gone = after("DELETE FROM shift WHERE live=0; DELETE FROM fact WHERE shift=1741975200000000;"
                            "DELETE FROM block WHERE shift=1741975200000000; DELETE FROM turn WHERE "
                            "shift=1741975200000000; DELETE FROM seal WHERE shift=1741975200000000;"
                            "DELETE FROM summary WHERE shift=1741975200000000");
    EXPECT_EQ(gone,
              (std::vector<std::string>{"missing rows, 1 of the list of shifts or of settings for shifts to come"}));
}

TEST_F(FullCheck, ASalvageKeepsWhatIsProvenAndSaysWhatIsNot) {
    {
        SQLite::Database db{place().string(), SQLite::OPEN_READWRITE};
        db.exec("UPDATE carried SET row=replace(row,'65','76.9') WHERE id=2");
        db.exec("INSERT INTO withdrawal(shift, id, fact, at, by) VALUES(1742461200000000, 99, 9, 0, '')");
        db.exec("DELETE FROM fact WHERE id=1 AND shift=1742461200000000");
        // Beside sound readings: a shift that began so early would show what it opened with at another time.
        db.exec("UPDATE block SET earliest=616251514157376, latest=9616251514157376, count=7");
    }
    const auto saved = salvage(place(), folder_ / "saved");
    EXPECT_EQ(saved.settings, 1);
    ASSERT_EQ(saved.partly.size(), 1U);
    EXPECT_EQ(saved.partly[0].unproven, 1);
    EXPECT_GE(saved.partly[0].unreached, 1);
    HandJournal copy = Journal::open(folder_ / "saved");
    EXPECT_TRUE(fullCheck(copy).sound());
    SQLite::Database db{(folder_ / "saved").string()};
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM block WHERE earliest=616251514157376 OR count=7").getInt(), 0);
    EXPECT_GT(db.execAndGet("SELECT count(*) FROM block").getInt(), 0);
    const auto rows = rowsOf(copy, copy.shifts().back().id);
    EXPECT_NE(std::find(rows.begin(), rows.end(), "2025-03-20T09:08:00Z,note,,,mine"), rows.end())
        << "what nobody withdrew stands";
    EXPECT_TRUE(copy.standing().carried.empty()) << "nor did anybody set 76.9";
}

} // namespace
} // namespace panside
