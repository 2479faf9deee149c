#include "core/shift/rehearsal_feed.h"

#include <gtest/gtest.h>
#include <thread>

namespace panside {
namespace {

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

} // namespace
} // namespace panside
