// How the alarms of a shift did. The numbers that chattering, standing and flood go by are those of ANSI/ISA-18.2 and
// EEMUA 191, from memory; half an hour of standing is common practice, no source.
#include "core/boil/alarm_review.h"

#include "core/boil/shift_log.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

const Instant dusk = instantIn("2025-03-14T18:00:00Z").value();

AlarmSpan span(Alarm alarm, double began, std::optional<double> ended, std::optional<double> seen = {}) {
    AlarmSpan span{alarm, {}, priorityOf(alarm), dusk + Duration{began}};
    if (ended)
        span.ended = dusk + Duration{*ended};
    if (seen)
        span.seen = dusk + Duration{*seen};
    return span;
}
AlarmReview reviewed(std::vector<AlarmSpan> spans, double hours = 6) {
    return alarmReview({dusk, dusk + Duration{hours * 3600}, std::move(spans)});
}

TEST(AlarmReview, CountsHowOftenHowLongAndHowSoonAnswered) {
    const auto review = reviewed({span(Alarm::fire_overdue, 600, 720, 660), span(Alarm::fire_overdue, 2000, 2300, 2020),
                                  span(Alarm::pan_low, 3000, 3030), span(Alarm::fire_overdue, 9000, 9060, 9180),
                                  span(Alarm::fire_overdue, 20000, 20010)});
    ASSERT_EQ(review.tallies.size(), 2U);
    EXPECT_EQ(review.tallies[0].alarm, Alarm::pan_low); // urgent before what stood longer
    EXPECT_EQ(review.tallies[0].answered, 0);
    EXPECT_FALSE(review.tallies[0].answeredIn);
    const AlarmTally& fire = review.tallies[1];
    EXPECT_EQ(fire.times, 4);
    EXPECT_DOUBLE_EQ(fire.total.count(), 120 + 300 + 60 + 10);
    EXPECT_DOUBLE_EQ(fire.longest.count(), 300);
    EXPECT_EQ(fire.answered, 3);
    EXPECT_DOUBLE_EQ(fire.answeredIn->count(), 60); // of 60, 20 and 180 seconds
    EXPECT_EQ(review.times, 5);
    EXPECT_EQ(review.urgent, 1);
    EXPECT_DOUBLE_EQ(review.anHour.value(), 5.0 / 6);
}

TEST(AlarmReview, KeepsTheReadingsOfOneAlarmApart) {
    auto stack = span(Alarm::probe_silent, 100, 200), feed = span(Alarm::probe_silent, 150, 300);
    stack.series = Series::stack;
    feed.series = Series::feed;
    EXPECT_EQ(reviewed({stack, feed}).tallies.size(), 2U);
}

TEST(AlarmReview, ThreeInAMinuteChatterTwoDoNot) {
    const auto three = reviewed({span(Alarm::pan_low, 100, 105), span(Alarm::pan_low, 130, 135),
                                 span(Alarm::pan_low, 160, 165), span(Alarm::pan_low, 900, 905)});
    EXPECT_EQ(three.tallies[0].chattered, 3);
    EXPECT_EQ(three.tallies[0].chatterFrom, dusk + Duration{100});
    const auto slower =
        reviewed({span(Alarm::pan_low, 100, 105), span(Alarm::pan_low, 130, 135), span(Alarm::pan_low, 161, 166)});
    EXPECT_EQ(slower.tallies[0].chattered, 0);
    EXPECT_FALSE(slower.tallies[0].chatterFrom);
    // Three different ones in a minute are no chatter.
    EXPECT_EQ(reviewed({span(Alarm::pan_low, 1, 2), span(Alarm::stack_hot, 3, 4), span(Alarm::sap_low, 5, 6)})
                  .tallies[0]
                  .chattered,
              0);
}

TEST(AlarmReview, OneThatChattersOnIsCountedEachTimeOnce) {
    std::vector<AlarmSpan> spans;
    for (int i = 0; i < 7; ++i)
        spans.push_back(span(Alarm::pan_low, 20 * i, 20 * i + 5));
    EXPECT_EQ(reviewed(spans).tallies[0].chattered, 7);
}

TEST(AlarmReview, HalfAnHourIsTooLongToStand) {
    const auto review = reviewed({span(Alarm::fire_overdue, 0, 1799), span(Alarm::fire_overdue, 3000, 4800),
                                  span(Alarm::fire_overdue, 6 * 3600 - 1900, {})});
    EXPECT_EQ(review.tallies[0].stoodLong, 2);
    EXPECT_TRUE(review.tallies[0].standsAtEnd);
    EXPECT_DOUBLE_EQ(review.tallies[0].longest.count(), 1900);
}

TEST(AlarmReview, TheBusiestTenMinutesAreAFloodFromElevenOn) {
    std::vector<AlarmSpan> spans{span(Alarm::sap_low, 10, 20)};
    for (int i = 0; i < 10; ++i)
        spans.push_back(span(Alarm::pan_low, 7200 + 59 * i, 7200 + 59 * i + 5));
    const auto ten = reviewed(spans);
    EXPECT_EQ(ten.busiest, (AlarmReview::Busiest{dusk + Duration{7200}, 10, false}));
    spans.push_back(span(Alarm::pan_low, 7200 + 599, 7900));
    EXPECT_EQ(reviewed(spans).busiest, (AlarmReview::Busiest{dusk + Duration{7200}, 11, true}));
    spans.back() = span(Alarm::pan_low, 7200 + 600, 7900); // ten minutes later is another ten minutes
    EXPECT_FALSE(reviewed(spans).busiest->flood);
}

TEST(AlarmReview, ACalmNightHasNothingToTell) {
    const auto review = reviewed({});
    EXPECT_TRUE(review.tallies.empty());
    EXPECT_FALSE(review.busiest);
    EXPECT_DOUBLE_EQ(review.anHour.value(), 0);
    EXPECT_FALSE(reviewed({}, 0.4).anHour);
}

} // namespace
} // namespace panside
