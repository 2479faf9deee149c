#include "core/boil/repeated_draw.h"

#include "core/boil/shift_log.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

using Telling = RepeatedDraw::Telling;

DrawClosed shut(std::optional<double> litre, std::string to = {}) {
    return {litre ? std::optional{Said<Volume>{Volume::litre(*litre), Unit::L}} : std::nullopt, std::move(to)};
}

// What each telling is, six seconds apart, and what they say of the draw in the end.
struct Heard {
    std::vector<Telling> tellings;
    DrawClosed draw;
};
Heard heard(std::initializer_list<DrawClosed> tellings, double apart = 6) {
    RepeatedDraw repeated;
    Heard all;
    Instant at{};
    for (const DrawClosed& telling : tellings) {
        all.tellings.push_back(repeated.hear({at, telling}));
        all.draw = repeated.draw();
        at = at + Duration{apart};
    }
    return all;
}

TEST(RepeatedDraw, HasTheVesselOfOneTellingAndTheVolumeOfTheOther) {
    const auto vesselFirst = heard({shut({}, "drum 1"), shut(3)});
    EXPECT_EQ(vesselFirst.tellings, (std::vector{Telling::first, Telling::measured}));
    EXPECT_EQ(vesselFirst.draw, shut(3, "drum 1"));
    const auto volumeFirst = heard({shut(3), shut({}, "drum 1")});
    EXPECT_EQ(volumeFirst.tellings, (std::vector{Telling::first, Telling::placed}));
    EXPECT_EQ(volumeFirst.draw, shut(3, "drum 1"));
}

TEST(RepeatedDraw, TakesTheVesselFromASecondTellingOfTheSameVolume) {
    const auto told = heard({shut(3), shut(3, "drum 1")});
    EXPECT_EQ(told.tellings, (std::vector{Telling::first, Telling::placed}));
    EXPECT_EQ(told.draw, shut(3, "drum 1"));
}

TEST(RepeatedDraw, KnowsOneVolumeInAnotherMeasure) {
    const auto gallons = [](double number) {
        return DrawClosed{Said<Volume>{Volume::gallon(number), Unit::gal}, "drum 1"};
    };
    using Told = std::vector<Telling>;
    EXPECT_EQ(heard({shut(3.785, "drum 1"), gallons(1)}).tellings, (Told{Telling::first, Telling::again}));
    EXPECT_EQ(heard({gallons(1.5), shut(5.68, "drum 1")}).tellings, (Told{Telling::first, Telling::again}));
    EXPECT_EQ(heard({gallons(1.5), shut(5.7, "drum 1")}).tellings, (Told{Telling::first, Telling::first}));
}

TEST(RepeatedDraw, LosesNothingToAPoorerTelling) {
    const auto told = heard({shut(3, "drum 1"), shut({}), shut(3), shut({}, "drum 1")});
    EXPECT_EQ(told.tellings, (std::vector{Telling::first, Telling::again, Telling::again, Telling::again}));
    EXPECT_EQ(told.draw, shut(3, "drum 1"));
}

// Whoever measured it stood beside the vessel.
TEST(RepeatedDraw, BelievesOfTwoVesselsTheOneThatWasToldWithTheVolume) {
    EXPECT_EQ(heard({shut({}, "drum 1"), shut(3, "pail")}).draw, shut(3, "pail"));
    EXPECT_EQ(heard({shut(3, "pail"), shut({}, "drum 1")}).draw, shut(3, "pail"));
}

TEST(RepeatedDraw, IsAnotherAfterAMinuteOrInAnotherPail) {
    EXPECT_EQ(heard({shut(3), shut(3, "drum 1")}, 61).tellings, (std::vector{Telling::first, Telling::first}));
    EXPECT_EQ(heard({shut(3, "pail 1"), shut(3, "pail 2")}).tellings, (std::vector{Telling::first, Telling::first}));
    EXPECT_EQ(heard({shut(3), shut(3, "pail 1"), shut(3, "pail 2")}).tellings,
              (std::vector{Telling::first, Telling::placed, Telling::first}));
    EXPECT_EQ(heard({shut(3), shut(2.5)}).tellings, (std::vector{Telling::first, Telling::first}));
}

TEST(RepeatedDraw, IsAnotherWhereOneWasOpenedBetween) {
    RepeatedDraw repeated;
    EXPECT_EQ(repeated.hear({Instant{}, shut(3)}), Telling::first);
    EXPECT_EQ(repeated.hear({Instant{} + Duration{5}, DrawOpened{}}), Telling::none);
    EXPECT_EQ(repeated.hear({Instant{} + Duration{10}, shut(3)}), Telling::first);
}

TEST(RepeatedDraw, OneOfTwoHandsEnteredItMinutesLater) {
    const auto draws = [](const char* second) {
        RepeatedDraw repeated;
        int counted = 0;
        for (const char* row : {"2027-03-14T20:00:00Z,draw_close,7.8,L,to=pail 3", second})
            counted += RepeatedDraw::counts(repeated.hear(std::get<Fact>(factOfLine(row))));
        return counted;
    };
    EXPECT_EQ(draws("2027-03-14T20:04:00Z,draw_close,7.8,L,to=Pail3;entered=2027-03-14T21:00:00Z"), 1);
    EXPECT_EQ(draws("2027-03-14T20:04:00Z,draw_close,7.8,L,to=pail 3"), 2);
    EXPECT_EQ(draws("2027-03-14T20:04:00Z,draw_close,7.9,L,to=pail 3;entered=2027-03-14T21:00:00Z"), 2);
    EXPECT_EQ(draws("2027-03-14T20:04:00Z,draw_close,7.8,L,to=pail 4;entered=2027-03-14T21:00:00Z"), 2);
    EXPECT_EQ(draws("2027-03-14T20:06:00Z,draw_close,7.8,L,to=pail 3;entered=2027-03-14T21:00:00Z"), 2);
}

// Nobody keyed that it was shut: it was, by the time the next one is opened or the shift ends.
TEST(RepeatedDraw, OneThatNobodyKeyedShutCountsWhenTheNextIsOpenedOrTheShiftEnds) {
    RepeatedDraw repeated;
    const auto told = [&](const char* row) { return repeated.hear(std::get<Fact>(factOfLine(row))); };
    EXPECT_EQ(told("2025-03-14T20:00:00Z,draw_open,,,"), Telling::none);
    EXPECT_EQ(told("2025-03-14T20:00:20Z,draw_open,,,"), Telling::none) << "pressed twice";
    EXPECT_TRUE(repeated.reopened());
    EXPECT_EQ(told("2025-03-14T20:20:00Z,draw_open,,,"), Telling::first);
    EXPECT_FALSE(repeated.draw().volume);
    EXPECT_EQ(told("2025-03-14T20:22:00Z,draw_close,4,L,"), Telling::first);
    EXPECT_EQ(told("2025-03-14T20:40:00Z,draw_open,,,"), Telling::none);
    EXPECT_EQ(told("2025-03-14T20:50:00Z,shift_end,,,"), Telling::first);
}

} // namespace
} // namespace panside
