#include "core/rehearsal/lesson.h"

#include "core/rehearsal/rehearsal.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <set>

namespace panside {
namespace {

using namespace std::chrono_literals;

TEST(Lesson, IsTheSameBySeedAndAllTroublesCome) {
    std::set<Trouble> met;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Lesson lesson = lessonOf(seed, 2h), again = lessonOf(seed, 2h);
        EXPECT_EQ(lesson.troubles, again.troubles);
        EXPECT_GE(lesson.troubles.size(), 2u);
        EXPECT_LE(lesson.troubles.size(), 3u);
        met.insert(lesson.troubles.begin(), lesson.troubles.end());
    }
    EXPECT_EQ(met.size(), troubleCount);
}

TEST(Lesson, NothingGoesWrongBeforeItBegins) {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const Lesson lesson = lessonOf(seed, 2h);
        const RehearsalOptions& options = lesson.options;
        if (options.probeFault != ProbeTrouble::none) {
            EXPECT_GT(options.probeFaultAfter, 2h);
        }
        if (options.feedFault != FeedFault::none) {
            EXPECT_GT(options.feedFaultAfter, 2h);
            EXPECT_LT(options.feedFaultAfter, 2h + 45min);
        }
    }
}

// A pan that is told second by second: over its mark for `over` seconds, then drawn.
struct Told {
    LessonWatch watch;
    RehearsalTruth truth;
    Told() {
        truth.boiling = true;
        truth.mark = Temperature::celsius(104);
        truth.reading = Temperature::celsius(103);
        watch.begin(truth);
    }
    void pass(int seconds, double reading, bool drawing = false, double brix = 66.9) {
        truth.reading = Temperature::celsius(reading);
        truth.drawing = drawing;
        truth.drawOff = Brix::degrees(brix);
        for (int i = 0; i < seconds; ++i) {
            truth.at = truth.at + 1s;
            watch.look(truth);
        }
    }
};

TEST(LessonWatch, CountsADrawInTimeAsNothingButADraw) {
    Told told;
    told.pass(300, 103);
    told.pass(20, 104.1);
    told.pass(90, 104, true, 67.0);
    told.pass(100, 103.2);
    EXPECT_EQ(told.watch.score().draws, 1);
    EXPECT_EQ(told.watch.score().late + told.watch.score().missed + told.watch.score().tooEarly, 0);
    EXPECT_NEAR(told.watch.score().meanDensity->degrees(), 67.0, 1e-9);
    EXPECT_NEAR(told.watch.score().furthest.value(), 0.1, 1e-9);
}

TEST(LessonWatch, CountsWhatWasLateMissedAndTooEarly) {
    Told told;
    told.pass(90, 104.2);
    told.pass(60, 104.2, true);
    EXPECT_EQ(told.watch.score().late, 1);
    told.pass(60, 103);
    told.pass(60, 103.5, true, 64);
    EXPECT_EQ(told.watch.score().tooEarly, 1);
    told.pass(60, 103);
    told.pass(300, 105.1);
    EXPECT_EQ(told.watch.score().missed, 1) << "once, however long it stood";
    EXPECT_EQ(told.watch.score().draws, 2);
    EXPECT_NEAR(told.watch.score().furthest.value(), 2.9, 1e-9);
}

// The made-up crew of a quiet evening gets a clean sheet: what is counted is the lesson's doing.
TEST(LessonWatch, FindsLittleToBlameInAQuietEvening) {
    Rehearsal quiet{RehearsalOptions{}, 4};
    quiet.advance(quiet.options().begins + 5h);
    EXPECT_GT(quiet.score().draws, 5);
    EXPECT_EQ(quiet.score().missed, 0);
    EXPECT_LT(quiet.score().furthest.value(), 4);
    EXPECT_GT(quiet.score().woodALitre.value(), 0.1);
}

// An evening into which a teacher throws something after two hours and a half, and the same evening let alone.
struct Taught {
    Rehearsal taught{RehearsalOptions{}, 4}, calm{RehearsalOptions{}, 4};
    std::size_t before = 0;
    std::vector<Fact> seen;
    Taught(Trouble trouble, Duration after) {
        const Instant thrown = taught.options().begins + 2h + 30min;
        taught.advance(thrown);
        calm.advance(thrown);
        before = taught.deeds().size();
        taught.befall(trouble);
        seen = taught.advance(thrown + after);
        calm.advance(thrown + after);
    }
    static std::ptrdiff_t count(const Rehearsal& evening, std::size_t from, RehearsalDeed::Kind kind) {
        return std::count_if(evening.deeds().begin() + static_cast<std::ptrdiff_t>(from), evening.deeds().end(),
                             [&](const RehearsalDeed& deed) { return deed.kind == kind; });
    }
};

TEST(Teacher, HasTheProbeGoOutAtOnce) {
    const Taught lesson{Trouble::probeOut, 1min};
    EXPECT_EQ(Taught::count(lesson.taught, lesson.before, RehearsalDeed::Kind::probeFails), 1);
}

TEST(Teacher, HasTheFeedShutSoThatThePanFalls) {
    const Taught lesson{Trouble::feedShut, 15min};
    EXPECT_EQ(Taught::count(lesson.taught, lesson.before, RehearsalDeed::Kind::feedStopped), 1);
    EXPECT_LT(lesson.taught.truth().flueDepth, lesson.calm.truth().flueDepth);
}

TEST(Teacher, HasALoadForgotten) {
    const Taught lesson{Trouble::forgottenLoads, 9min};
    EXPECT_LT(Taught::count(lesson.taught, lesson.before, RehearsalDeed::Kind::fired),
              Taught::count(lesson.calm, lesson.before, RehearsalDeed::Kind::fired));
}

TEST(Teacher, HasTheProbeStandInFoamAtOnce) {
    const Taught lesson{Trouble::foam, 1min};
    Temperature lowest = Temperature::celsius(200);
    for (const Fact& fact : lesson.seen)
        if (const auto* reading = std::get_if<Reading>(&fact.what); reading && reading->series == Series::syrup_pan)
            lowest = std::min(lowest, Temperature::kelvin(reading->si));
    EXPECT_LT((lowest - lesson.taught.truth().reading).kelvin(), -0.5) << "in steam it reads boiling water";
}

TEST(Teacher, HasAFrontPassWithinTheHour) {
    const Taught lesson{Trouble::frontPassing, 65min};
    EXPECT_GT(std::abs(lesson.taught.truth().pressure.kilopascal() - lesson.calm.truth().pressure.kilopascal()), 1.0);
}

TEST(Teacher, HasThePanTurnWhole) {
    const Taught lesson{Trouble::nobodyDraws, 45min};
    EXPECT_EQ(Taught::count(lesson.taught, lesson.before, RehearsalDeed::Kind::opened), 0);
    EXPECT_GT((lesson.taught.truth().reading - lesson.taught.truth().mark).kelvin(), 1);
}

TEST(Rehearsal, ThePersonTakesTheCrewsPartAndGivesItBack) {
    Rehearsal evening{RehearsalOptions{}, 4};
    const Instant lit = evening.options().begins;
    evening.advance(lit + 2h);
    evening.sendCrewAway(true);
    const auto before = evening.deeds().size();
    evening.advance(lit + 2h + 30min);
    EXPECT_EQ(evening.deeds().size(), before) << "nobody fires";
    evening.perform(Fired{});
    EXPECT_EQ(evening.deeds().size(), before + 1);
    evening.sendCrewAway(false);
    evening.advance(lit + 3h);
    EXPECT_GT(evening.deeds().size(), before + 1);
    evening.sendCrewAway(true);
    evening.perform(Shutdown{});
    EXPECT_FALSE(evening.ended());
    evening.perform(ShiftEnd{});
    EXPECT_TRUE(evening.ended());
}

} // namespace
} // namespace panside
