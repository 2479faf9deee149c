#pragma once
// Why something is said: what was seen and the figure it is held against, as data. groundText() gives the English
// words, ui/words the person's.
#include "core/boil/fact.h"
#include "core/words/sentence.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace panside {

enum class GroundKind : std::uint8_t {
    // scorch_risk
    levelFalls,   // a level, and when the bottom is bare
    feedStopped,  // for so long no sap has run in; the pans last so long
    levelHolds,   // a level, against the running depth or the usual one: it is not for want of sap
    sugarRaces,   // while they draw the sugar is back at the mark far too soon
    riseRunsAway, // rise, against that of 75 brix
    riseOver75,   // the same, over it
    standsBlind,  // nothing is read that could tell that it is over
    // the others
    panUnderHalf,       // level, against half the running depth
    stackOverSet,       // flue gas, against stack_limit
    stackOverSeen,      // flue gas, against 100 K over the hottest that was seen
    stackOverUsual,     // flue gas, against what stands where nothing was seen yet
    pressOverLimit,     // pressure, against filter_limit
    nothingRead,        // for so long, against the time it may take
    overTarget,         // rise, against that at the target
    withinDoubt,        // by less than the doubt of the target
    underLegal,         // rise while drawing, against that at the legal minimum
    loadLate,           // so long after the call, against a crew's own scatter
    fireSags,           // the stack, against its mean while the fire was fed
    sapUnderNeed,       // sap left, against what covers the pans while the fire burns out
    sapUnderHour,       // sap left for so long, against an hour
    lastLoadBeforeNext, // until the last load, against the load after the next
    notMoving,          // no digit for so long
    outsidePhysics,     // what it reads is outside what can be
    tooFast,            // changed faster than it can
    tankNearRim,        // room left in a tank, against the rim that was set
    tankFills,          // it runs over in so long
    tankOverRim,        // by so much
    tankNamed,          // which tank it is about; none: the feed tank by its gauge
    callsFor,           // whom it calls
    clockMoved,         // by so much
    notKept,            // facts cannot be kept
    // no alarm
    checkDoubted,   // the last check is far off what is believed
    climbsTo,       // the forecast: from this rise to that of the target
    offsetLearnt,   // what the pan's probe reads too high, and how well that is known
    intervalLearnt, // the rhythm of the fire, learned
    ending          // it does so no longer, and is gone when that has lasted
};
inline constexpr std::size_t groundCount = 36;

using GroundFigure =
    std::variant<std::monostate, Temperature, TemperatureDifference, Pressure, Length, Volume, Duration, std::string>;

struct Ground {
    GroundKind kind;
    GroundFigure seen = {}, limit = {};
    std::optional<Series> series = {}; // of a level, or of a probe
    bool operator==(const Ground&) const = default;
};

// The grounds of one alarm, the most urgent first.
class Grounds {
public:
    void add(const Ground& ground) {
        if (count_ < each_.size())
            each_[count_++] = ground;
    }
    const Ground* begin() const { return each_.data(); }
    const Ground* end() const { return each_.data() + count_; }
    bool empty() const { return count_ == 0; }

private:
    std::array<Ground, 3> each_{{{GroundKind::ending}, {GroundKind::ending}, {GroundKind::ending}}};
    std::size_t count_ = 0;
};

// The sentence with %1 for what was seen and %2 for the limit; %3 for the reading it is about.
Sentence groundSentence(GroundKind kind);
std::string groundText(const Ground& ground); // in English and SI

} // namespace panside
