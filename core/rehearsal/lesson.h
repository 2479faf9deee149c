#pragma once
// A lesson: an evening of the rehearsal in which things go wrong, drawn from the seed, and what came of it, against the
// truth that no fact tells.
#include "core/rehearsal/dice.h"
#include "core/rehearsal/options.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <vector>

namespace panside {

struct RehearsalTruth;

enum class Trouble : std::uint8_t { probeOut, feedShut, forgottenLoads, foam, frontPassing, nobodyDraws };
inline constexpr std::size_t troubleCount = 6;
// The evening as it is when this begins so long after its fire was lit.
void throwIn(RehearsalOptions& options, Trouble trouble, Duration at, rehearsal::Dice& dice);

struct Lesson {
    RehearsalOptions options;
    std::vector<Trouble> troubles; // in the order they come
};
// Two or three troubles that begin within three quarters of an hour of `begins`, since the fire was lit; the same seed
// gives the same lesson.
Lesson lessonOf(std::uint64_t seed, Duration begins);
inline constexpr Duration lessonLasts = std::chrono::minutes{90};

// Counted from the beginning of the lesson on.
struct LessonScore {
    int draws = 0;
    int missed = 0;                   // times the pan ran 1 K over its mark with the draw shut
    int late = 0;                     // draws opened more than a minute after the mark was reached
    int tooEarly = 0;                 // draws opened 0.3 K or more under the mark
    int alarmsMissed = 0;             // high and medium ones that nobody saw for two minutes
    std::optional<Brix> meanDensity;  // of the draws, by what came
    std::optional<double> furthest;   // degrees Brix that the worst draw lay from 66.9
    std::optional<double> woodALitre; // kg loaded for each liter of water boiled off
};

// Looks at the truth once a second.
class LessonWatch {
public:
    void look(const RehearsalTruth& truth);
    // What was before does not count.
    void begin(const RehearsalTruth& truth);
    const LessonScore& score() const { return score_; }

private:
    void close();
    LessonScore score_;
    std::optional<Instant> overSince_;
    bool drawing_ = false, far_ = false;
    double sugar_ = 0, seconds_ = 0; // of the draw that is open
    double allSugar_ = 0, allSeconds_ = 0;
    Mass loadedBefore_;
    Volume boiledBefore_;
};

} // namespace panside
