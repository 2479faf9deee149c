#include "core/journal/day_books.h"
#include "core/shift/rehearsal_feed.h"

#include <gtest/gtest.h>
#include <thread>

namespace panside {
namespace {

using namespace std::chrono;
using namespace std::chrono_literals;

// A teacher's fault makes a lesson of the evening, and the same again has the same go wrong.
TEST(RehearsalFeed, WhatATeacherThrewInComesAgainWithTheSameEvening) {
    RehearsalFeed feed{4, 600}; // ten minutes a second
    EXPECT_FALSE(feed.isLesson());
    feed.throwIn(Trouble::feedShut);
    EXPECT_TRUE(feed.isLesson());
    EXPECT_EQ(feed.troubles(), std::vector{Trouble::feedShut});
    feed.again(RehearsalFeed::Evening::same);
    for (int i = 0; i < 1000 && !feed.isLesson(); ++i) { // as long as it took before
        std::this_thread::sleep_for(10ms);
        feed.advance();
    }
    EXPECT_EQ(feed.troubles(), std::vector{Trouble::feedShut});
    feed.again(RehearsalFeed::Evening::another);
    feed.advance();
    EXPECT_FALSE(feed.isLesson()) << "another evening is another";
}

// Who looks for last night finds it, and what is drawn tonight stays where it went.
TEST(RehearsalHouse, LiesBeforeTonightWhateverTheYear) {
    for (const Instant now : {Instant{sys_days{2026y / 11 / 30}} + 20h, Instant{sys_days{2031y / 1 / 2}}}) {
        const RehearsalHouse house{4, now};
        const auto journal = Journal::open(house.journal(), Journal::Access::read);
        const auto lastNight = journal.deeds(journal.shifts().back().id);
        ASSERT_FALSE(lastNight.empty());
        EXPECT_LT(lastNight.back().fact.at, now);
        EXPECT_GT(lastNight.back().fact.at, now - 24h);
        const auto book = bookFacts(journal);
        ASSERT_FALSE(book.empty());
        EXPECT_LT(book.back().fact.at, now);
        EXPECT_GT(book.back().fact.at, now - 48h);
    }
}

} // namespace
} // namespace panside
