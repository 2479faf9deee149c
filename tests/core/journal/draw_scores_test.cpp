#include "core/journal/draw_scores.h"

#include "core/journal/shift_summary.h"
#include "tests/core/journal/derived.h"
#include "tests/core/journal/hand_journal.h"
#include "tests/core/journal/place.h"

#include <SQLiteCpp/Database.h>
#include <fmt/format.h>

namespace panside {
namespace {

using DrawScores = JournalPlace;

std::string at(int second) {
    return fmt::format("2025-03-14T{:02}:{:02}:{:02}Z", 12 + second / 3600, second / 60 % 60, second % 60);
}

// Six cycles of a quarter of an hour: at standard pressure the reading climbs to syrup and is drawn.
std::string steadyLog() {
    std::string log = "time,what,value,unit,detail\n" + at(0) + ",pressure,101.325,kPa,\n" + at(0) + ",lit,,,\n";
    for (int second = 0; second < 6 * 900; second += 10) {
        const int inCycle = second % 900;
        if (second % 480 == 0)
            log += at(second) + ",fired,,,\n";
        if (second % 60 == 0)
            log += at(second) + ",pressure,101.325,kPa,\n";
        if (second > 0 && inCycle == 0)
            log += at(second) + ",draw_open,,,\n";
        if (second > 900 && inCycle == 60)
            log += at(second) + ",draw_close,3,L,\n";
        const double rise = inCycle < 60 ? 4.3 - 0.03 * inCycle : 2.5 + 0.0022 * (inCycle - 60);
        log += fmt::format("{},syrup_pan,{:.3f},degC,\n", at(second), 99.974 + rise + 0.01 * (second / 10 % 3));
    }
    return log + at(6 * 900) + ",shift_end,,,\n";
}

TEST_F(DrawScores, AreTheSameKeptAndWorkedOutAgain) {
    HandJournal journal = Journal::open(place());
    const auto shift = imported(journal, steadyLog()).shift;
    const auto scores = drawScores(journal, shift);
    ASSERT_GE(scores.size(), 3U);
    for (const DrawScore& score : scores) {
        EXPECT_GT(score.forecasts, 10);
        EXPECT_TRUE(score.tenBefore && score.fiveBefore && score.twoBefore);
        EXPECT_LE(score.underP10, score.underP50);
        EXPECT_LE(score.underP50, score.underP90);
        EXPECT_GE(score.inside, 0);
        EXPECT_LE(score.inside, 1);
    }
    EXPECT_EQ(drawScores(journal, shift), scores); // from the table
    dropDerived(journal);
    SQLite::Database db{place().string(), SQLite::OPEN_READWRITE};
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM score").getInt(), 0);
    EXPECT_EQ(drawScores(journal, shift), scores);
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM score").getInt(), static_cast<int>(scores.size()));
}

TEST_F(DrawScores, FollowWhatIsWithdrawn) {
    HandJournal journal = Journal::open(place());
    const auto shift = imported(journal, steadyLog()).shift;
    const auto before = drawScores(journal, shift);
    for (const auto& entry : journal.facts(shift))
        if (std::holds_alternative<DrawOpened>(entry.fact.what) || std::holds_alternative<DrawClosed>(entry.fact.what))
            journal.withdrawFrom(shift, entry.id, shift);
    EXPECT_FALSE(before.empty());
    // The reading still falls as it does in a draw, but begins and ends are not those that were keyed.
    EXPECT_NE(drawScores(journal, shift), before);
    for (const auto& entry : journal.facts(shift))
        if (std::holds_alternative<Reading>(entry.fact.what))
            journal.withdrawFrom(shift, entry.id, shift);
    EXPECT_TRUE(drawScores(journal, shift).empty()); // nothing read, nothing that could be judged
}

TEST_F(DrawScores, OfAJournalThatMayOnlyBeReadAreWorkedOutEachTime) {
    ShiftId shift{};
    {
        HandJournal journal = Journal::open(place());
        shift = imported(journal, steadyLog()).shift;
    }
    HandJournal reader = Journal::open(place(), Journal::Access::read);
    EXPECT_FALSE(drawScores(reader, shift).empty());
    SQLite::Database db{place().string()};
    EXPECT_EQ(db.execAndGet("SELECT count(*) FROM scored").getInt(), 0);
}

} // namespace
} // namespace panside
