#include "core/journal/kept_figures.h"

#include "core/journal/shift_summary.h"
#include "tests/core/journal/derived.h"
#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include <SQLiteCpp/Database.h>

namespace panside {
namespace {

using KeptFigures = JournalPlace;

TEST_F(KeptFigures, AreGivenBackToTheLastDigit) {
    HandJournal journal = Journal::open(place());
    const auto shift = imported(journal, shortLog).shift;
    const Figures figures{{"syrup", 0.1 + 0.2}, {"crew:Odile", 7200}};
    EXPECT_TRUE(keepFigures(journal, shift, 4, factsSeen(journal, shift), figures));
    EXPECT_EQ(keptFigures(journal, 4).at(shift), figures);
    EXPECT_TRUE(keptFigures(journal, 5).empty()); // another rule
    const Figures fewer{{"syrup", 1}};
    EXPECT_TRUE(keepFigures(journal, shift, 5, factsSeen(journal, shift), fewer));
    EXPECT_EQ(keptFigures(journal, 5).at(shift), fewer);
    dropDerived(journal);
    EXPECT_TRUE(keptFigures(journal, 5).empty());
}

TEST_F(KeptFigures, HoldOnlyAsLongAsTheFactsStay) {
    HandJournal journal = Journal::open(place());
    const auto shift = imported(journal, shortLog).shift;
    keepFigures(journal, shift, 1, factsSeen(journal, shift), {{"loads", 2}});
    journal.appendTo(shift, factFrom("2025-03-14T18:20:00Z,fired,10,kg,entered=2025-03-15T09:00:00Z"));
    EXPECT_TRUE(keptFigures(journal, 1).empty());
    keepFigures(journal, shift, 1, factsSeen(journal, shift), {{"loads", 3}});
    EXPECT_EQ(keptFigures(journal, 1).size(), 1U);
    journal.withdrawFrom(shift, 5, shift);
    EXPECT_TRUE(keptFigures(journal, 1).empty());
}

TEST_F(KeptFigures, OfAnotherFamilyStandBesideThemAndGoByThemselves) {
    HandJournal journal = Journal::open(place());
    const auto shift = imported(journal, shortLog).shift;
    const Figures draws{{"sugar 0", 0.669}}, account{{"syrup", 1}};
    EXPECT_TRUE(keepFiguresOf(journal, shift, "draws", 7, factsSeen(journal, shift), draws));
    EXPECT_TRUE(keptFigures(journal, 4).empty());
    EXPECT_TRUE(keepFigures(journal, shift, 4, factsSeen(journal, shift), account));
    EXPECT_EQ(keptFigures(journal, 4).at(shift), account);
    EXPECT_EQ(keptFiguresOf(journal, "draws", 7).at(shift), draws);
    EXPECT_TRUE(keptFiguresOf(journal, "draws", 8).empty());
    EXPECT_TRUE(keptFiguresOf(journal, "dra", 7).empty());
    EXPECT_TRUE(keepFiguresOf(journal, shift, "draws", 7, factsSeen(journal, shift), {{"sugar 0", 0.66}}));
    EXPECT_EQ(keptFigures(journal, 4).at(shift), account);
    journal.withdrawFrom(shift, 5, shift);
    EXPECT_TRUE(keptFiguresOf(journal, "draws", 7).empty());
    dropDerived(journal);
    EXPECT_TRUE(keptFiguresOf(journal, "draws", 7).empty());
}

TEST_F(KeptFigures, AreNotKeptWhereTheJournalMayNotBeWritten) {
    ShiftId shift;
    {
        HandJournal journal = Journal::open(place());
        shift = imported(journal, shortLog).shift;
    }
    HandJournal reader = Journal::open(place(), Journal::Access::read);
    EXPECT_FALSE(keepFigures(reader, shift, 1, factsSeen(reader, shift), {{"loads", 2}}));
    EXPECT_TRUE(keptFigures(reader, 1).empty());
}

} // namespace
} // namespace panside
