#include "core/boil/ground.h"

#include "core/boil/vocabulary.h"
#include "core/quantity/enum_count.h"

#include <array>
#include <fmt/format.h>

namespace panside {
namespace {

static_assert(hasCount<GroundKind, groundCount>());

std::string spanWords(Duration span) {
    const double s = seconds(span);
    return s < 120 ? fmt::format("{:.0f} s", s) : fmt::format("{:.0f} min", s / 60);
}

std::string words(const GroundFigure& figure) {
    return std::visit(Overloaded{
                          [](std::monostate) { return std::string{}; },
                          [](Temperature t) { return fmt::format("{:.1f} degC", t.celsius()); },
                          [](TemperatureDifference d) { return fmt::format("{:.2f} K", d.kelvin()); },
                          [](Pressure p) { return fmt::format("{:.1f} kPa", p.kilopascal()); },
                          [](Length l) { return fmt::format("{:.0f} mm", l.millimetre()); },
                          [](Volume v) { return fmt::format("{:.0f} L", v.litre()); },
                          [](Duration d) { return spanWords(d); },
                          [](const std::string& name) { return name; },
                      },
                      figure);
}

// %1 what was seen, %2 its limit, %3 the reading.
struct GroundRow {
    GroundKind kind;
    std::string_view text;
};
constexpr GroundRow groundRow(GroundKind kind, std::string_view text) { return {kind, text}; }
constexpr std::array<GroundRow, groundCount> groundRows{{
    groundRow(GroundKind::levelFalls, "%3 is at %1 and falling: the bottom is bare in %2"),
    groundRow(GroundKind::feedStopped,
              "no sap has run in for %1 while the fire burns; what is in the pans lasts %2 more"),
    groundRow(GroundKind::levelHolds,
              "%3 is at %1, and %2 is usual: the pan is not short of sap, it has turned to syrup"),
    groundRow(GroundKind::sugarRaces,
              "the sugar is back at the mark far sooner than usual, as in a pan that runs empty"),
    groundRow(GroundKind::riseRunsAway, "%1 over boiling water and climbing; 75 brix is at %2"),
    groundRow(GroundKind::riseOver75, "%1 over boiling water, past 75 brix at %2"),
    groundRow(GroundKind::standsBlind, "it was on when the readings stopped, and nothing shows that it is over"),
    groundRow(GroundKind::panUnderHalf, "the syrup pan is at %1; half of its running depth is %2"),
    groundRow(GroundKind::stackOverSet, "flue gas at %1, the limit that was set is %2"),
    groundRow(GroundKind::stackOverSeen, "flue gas at %1; %2 is well over the hottest this rig has run"),
    groundRow(GroundKind::stackOverUsual, "flue gas at %1, over %2; how hot this rig runs is not known yet"),
    groundRow(GroundKind::pressOverLimit, "the filter press is at %1, its limit is %2"),
    groundRow(GroundKind::nothingRead, "%3: nothing read for %1; %2 is the longest it should take"),
    groundRow(GroundKind::overTarget, "%1 over boiling water, the target is at %2"),
    groundRow(GroundKind::withinDoubt, "by no more than the uncertainty of the target, %1"),
    groundRow(GroundKind::underLegal, "%1 over boiling water, and nothing should be drawn under %2"),
    groundRow(GroundKind::loadLate, "%1 after the call to fire; a crew usually varies by %2"),
    groundRow(GroundKind::fireSags, "the stack is down to %1; its average with a fed fire is %2"),
    groundRow(GroundKind::sapUnderNeed, "%1 of sap left, and it takes %2 to cover the pans while the fire burns out"),
    groundRow(GroundKind::sapUnderHour,
              "sap for %1 more; the size of the pans is not known, so %2 is assumed for what they need"),
    groundRow(GroundKind::lastLoadBeforeNext, "the last load is due in %1, the load after the next would come in %2"),
    groundRow(GroundKind::notMoving, "%3: not one last digit moved for %1"),
    groundRow(GroundKind::outsidePhysics, "%3: outside what can be"),
    groundRow(GroundKind::tooFast, "%3: changed faster than it can"),
    groundRow(GroundKind::tankNearRim, "%1 left to the rim, and it calls at %2"),
    groundRow(GroundKind::tankFills, "it fills, and runs over in %1"),
    groundRow(GroundKind::tankOverRim, "it stands over its rim by %1"),
    groundRow(GroundKind::tankNamed, "the tank: %1"),
    groundRow(GroundKind::callsFor, "call %1"),
    groundRow(GroundKind::clockMoved, "the clock of the computer was moved %1 ago"),
    groundRow(GroundKind::notKept, "what is entered and read cannot be kept"),
    groundRow(GroundKind::checkDoubted,
              "the last check is far from what was expected: it is kept, and counts when a second one agrees"),
    groundRow(GroundKind::climbsTo, "from %1 over boiling water to the target at %2"),
    groundRow(GroundKind::offsetLearnt, "by its checks the pan reads %1 too high, give or take %2"),
    groundRow(GroundKind::intervalLearnt, "every %1, the rhythm of this fire and crew"),
    groundRow(GroundKind::ending, "this is no longer so; the alarm ends once that has lasted"),
}};
static_assert(inOrder(groundRows, &GroundRow::kind));

} // namespace

Sentence groundSentence(GroundKind kind) { return say(groundRows.at(static_cast<std::size_t>(kind)).text); }

std::string groundText(const Ground& ground) {
    return filled(
        groundSentence(ground.kind).text,
        {words(ground.seen), words(ground.limit), ground.series ? std::string{rowOf(*ground.series).name} : "a probe"});
}

} // namespace panside
