#include "core/rehearsal/lesson.h"

#include "core/quantity/enum_count.h"
#include "core/rehearsal/rehearsal.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

static_assert(hasCount<Trouble, troubleCount>());

// Judgement, no source: what an instructor would let pass.
constexpr double farOver = 1.0, early = 0.3, wantedBrix = 66.9;
constexpr Duration patience{60};

} // namespace

void throwIn(RehearsalOptions& options, Trouble trouble, Duration at, rehearsal::Dice& dice) {
    using namespace std::chrono_literals;
    switch (trouble) {
    case Trouble::probeOut:
        options.probeFault = dice.chance(0.5) ? ProbeTrouble::silent : ProbeTrouble::stuck;
        options.probeFaultAfter = at;
        options.probeFaultLasts = Duration{dice.uniform(300, 900)};
        break;
    case Trouble::feedShut:
        options.feedFault = FeedFault::stops;
        options.feedFaultAfter = at;
        options.crewSavesPan = false; // somebody has to see it
        break;
    case Trouble::forgottenLoads:
        options.fire.forgets = 0.25;
        break;
    case Trouble::foam:
        options.probe.foamsPerHour = 8;
        break;
    case Trouble::frontPassing:
        options.weather.frontHpa = dice.chance(0.5) ? -12 : 12;
        options.weather.frontAfter = at;
        options.weather.frontTakes = 1h;
        break;
    case Trouble::nobodyDraws:
        options.crew.blindAfter = at;
        break;
    }
}

Lesson lessonOf(std::uint64_t seed, Duration begins) {
    rehearsal::Dice dice{seed, 61};
    std::array<Trouble, troubleCount> all{Trouble::probeOut, Trouble::feedShut,     Trouble::forgottenLoads,
                                          Trouble::foam,     Trouble::frontPassing, Trouble::nobodyDraws};
    for (std::size_t i = all.size() - 1; i > 0; --i)
        std::swap(all[i], all[static_cast<std::size_t>(dice.whole(0, static_cast<int>(i)))]);
    Lesson lesson;
    const int count = dice.whole(2, 3);
    Duration at = begins + Duration{dice.uniform(240, 600)};
    for (int i = 0; i < count; ++i) {
        lesson.troubles.push_back(all[static_cast<std::size_t>(i)]);
        throwIn(lesson.options, lesson.troubles.back(), at, dice);
        at += Duration{dice.uniform(600, 1000)};
    }
    return lesson;
}

void LessonWatch::begin(const RehearsalTruth& truth) {
    *this = LessonWatch{};
    loadedBefore_ = truth.woodLoaded;
    boiledBefore_ = truth.boiledOff;
    drawing_ = truth.drawing;
}

void LessonWatch::close() {
    if (seconds_ <= 0)
        return;
    const double brix = sugar_ / seconds_ * 100;
    allSugar_ += sugar_;
    allSeconds_ += seconds_;
    score_.meanDensity = Brix::degrees(allSugar_ / allSeconds_ * 100);
    const double off = std::abs(brix - wantedBrix);
    score_.furthest = std::max(score_.furthest.value_or(0), off);
    sugar_ = seconds_ = 0;
}

void LessonWatch::look(const RehearsalTruth& truth) {
    const double over = (truth.reading - truth.mark).kelvin();
    if (truth.drawing && !drawing_) {
        ++score_.draws;
        score_.late += overSince_ && secondsBetween(*overSince_, truth.at) > patience.count();
        score_.tooEarly += over < -early;
    }
    if (!truth.drawing && drawing_)
        close();
    if (truth.drawing) {
        sugar_ += truth.drawOff.massFraction();
        seconds_ += 1;
    }
    drawing_ = truth.drawing;
    if (over < 0 || truth.drawing) {
        overSince_.reset();
        far_ = far_ && over >= 0;
    } else if (truth.boiling) {
        if (!overSince_)
            overSince_ = truth.at;
        score_.missed += over >= farOver && !far_;
        far_ = far_ || over >= farOver;
    }
    const double boiled = (truth.boiledOff - boiledBefore_).litre();
    if (boiled > 1)
        score_.woodALitre = (truth.woodLoaded - loadedBefore_).kilogram() / boiled;
}

} // namespace panside
