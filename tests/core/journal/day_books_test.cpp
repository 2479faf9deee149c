#include "core/boil/shift_log.h"
#include "core/journal/day_books.h"
#include "place.h"
#include "tests/core/journal/hand_journal.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

std::vector<Fact> rows(const std::string& text) {
    auto read = readLog(std::string{logHeader} + "\n" + text);
    EXPECT_TRUE(read.faults.empty());
    return read.facts;
}
const std::string first = "2027-03-02T10:00:00Z,gathered,100,L,to=tank;brix=2\n";
const std::string second = "2027-03-03T10:00:00Z,moved,,,from=tank;to=feed\n";
const std::string third = "2027-03-04T10:00:00Z,cleaned,,,vessel=tank\n";

class DayBooks : public JournalPlace {};

TEST_F(DayBooks, AFileIsTakenOnceAndARowTwiceCountsOnce) {
    HandJournal journal = Journal::open(place());
    EXPECT_EQ(importBook(journal, rows(first + second)).added, 2u);
    EXPECT_EQ(importBook(journal, rows(first + second)).added, 0u);
    EXPECT_EQ(importBook(journal, rows(second + third)).added, 1u);
    EXPECT_EQ(bookFacts(journal, 2027).size(), 3u);
    EXPECT_TRUE(journal.shifts().empty()); // a book is no shift
    EXPECT_EQ(bookYears(journal), std::vector<int>{2027});
}

TEST_F(DayBooks, AnExportComesBackTheSame) {
    HandJournal journal = Journal::open(place());
    importBook(journal, rows(first + third));
    importBook(journal, rows(second));
    std::vector<Fact> facts;
    for (const auto& entry : bookFacts(journal, 2027))
        facts.push_back(entry.fact);
    EXPECT_EQ(writeLog(facts), std::string{logHeader} + "\n" + first + second + third);
}

TEST_F(DayBooks, RowsAreWithdrawnCorrectedAndEnteredLate) {
    HandJournal journal = Journal::open(place());
    const auto book = importBook(journal, rows(first)).book;
    const auto [into, id] = appendToBook(journal, rows(second).front());
    EXPECT_EQ(into, book); // the year's own
    journal.withdrawFrom(book, id, *instantIn("2027-03-05T10:00:00Z"), "Ann");
    EXPECT_EQ(bookFacts(journal).size(), 1u);
    Fact late = rows(third).front();
    late.entered = instantIn("2027-03-09T10:00:00Z");
    journal.appendTo(book, late);
    EXPECT_EQ(bookFacts(journal).back().fact, late);
    ASSERT_EQ(journal.withdrawn(book).size(), 1u);
    EXPECT_EQ(importBook(journal, rows(second)).added, 0u); // withdrawn stays withdrawn
}

TEST_F(DayBooks, ABookOfItsOwnYearIsBegun) {
    HandJournal journal = Journal::open(place());
    importBook(journal, rows(first));
    Fact next = rows(second).front();
    next.at = *instantIn("2028-03-02T10:00:00Z");
    appendToBook(journal, next);
    EXPECT_EQ(bookYears(journal), (std::vector<int>{2027, 2028}));
    EXPECT_EQ(bookFacts(journal, 2028).size(), 1u);
}

} // namespace
} // namespace panside
