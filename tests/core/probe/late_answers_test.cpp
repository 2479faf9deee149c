#include "core/probe/late_answers.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

using namespace std::chrono_literals;

TEST(LateAnswers, ASlaveThatAnswersInTimeIsAskedAnything) {
    LateAnswers late{300ms, {{1, 2}, {2, 2}}};
    late.asked(1, 0, 0ms);
    late.answered(1, 20ms);
    EXPECT_TRUE(late.mayAsk(1, 1, 21ms));
    EXPECT_EQ(late.patience(1), 300ms);
}

TEST(LateAnswers, ASlaveThatOwesAnAnswerIsAskedNothingElse) {
    LateAnswers late{300ms, {{1, 2}, {2, 2}}};
    late.asked(1, 0, 0ms);
    late.timedOut(1, 300ms);
    EXPECT_FALSE(late.mayAsk(1, 0, 310ms)) << "its answer may be on its way";
    EXPECT_TRUE(late.mayAsk(1, 0, 1400ms));
    EXPECT_FALSE(late.mayAsk(1, 1, 1400ms));
    EXPECT_TRUE(late.mayAsk(2, 1, 310ms)) << "an answer says whose it is";
    // Asked again, it answers: the first asking or the second?
    late.asked(1, 0, 1400ms);
    late.answered(1, 1800ms);
    EXPECT_FALSE(late.mayAsk(1, 1, 3100ms)) << "if the first, the second's answer comes at 3.2 s";
    EXPECT_TRUE(late.mayAsk(1, 1, 3400ms));
}

TEST(LateAnswers, AnAnswerThatCameLateIsWaitedForNextTime) {
    LateAnswers late{300ms, {{1, 2}, {2, 2}}};
    late.asked(1, 0, 0ms);
    late.timedOut(1, 300ms);
    late.heardUnasked(480ms); // in two pieces
    late.heardUnasked(490ms);
    EXPECT_FALSE(late.mayAsk(1, 1, 500ms));
    EXPECT_TRUE(late.mayAsk(1, 1, 600ms));
    EXPECT_EQ(late.patience(1), 720ms);
}

TEST(LateAnswers, WhatTwoSlavesOweIsNotGuessedAt) {
    LateAnswers late{300ms, {{1, 2}, {2, 2}}};
    late.asked(1, 0, 0ms);
    late.timedOut(1, 300ms);
    late.asked(2, 5, 301ms);
    late.timedOut(2, 600ms);
    late.heardUnasked(700ms);
    EXPECT_FALSE(late.mayAsk(1, 1, 1700ms));
    EXPECT_FALSE(late.mayAsk(2, 6, 1700ms));
}

TEST(LateAnswers, ASlaveWithOneQuestionIsAskedOnAndOn) {
    LateAnswers late{300ms, {{1, 1}}};
    late.asked(1, 0, 0ms);
    late.timedOut(1, 300ms);
    EXPECT_TRUE(late.mayAsk(1, 0, 301ms)) << "whatever comes is its answer";
}

TEST(LateAnswers, ADeadSlaveDoesNotHoldUpTheOthersForLong) {
    LateAnswers late{300ms, {{1, 2}, {2, 2}}};
    for (int i = 0; i < 20; ++i) {
        late.asked(1, 0, i * 2000ms);
        late.timedOut(1, i * 2000ms + late.patience(1));
    }
    EXPECT_EQ(late.patience(1), 600ms);
}

} // namespace
} // namespace panside
