#include "core/boil/ground.h"

#include "core/boil/vocabulary.h"
#include "core/quantity/enum_count.h"

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

} // namespace

Sentence groundSentence(GroundKind kind) {
    switch (kind) {
    case GroundKind::levelFalls:
        return say("%3 is at %1 and falling: the bottom is bare in %2");
    case GroundKind::feedStopped:
        return say("no sap has run in for %1 while the fire burns; what is in the pans lasts %2 more");
    case GroundKind::levelHolds:
        return say("%3 is at %1, and %2 is usual: the pan is not short of sap, it has turned to syrup");
    case GroundKind::sugarRaces:
        return say("the sugar is back at the mark far sooner than usual, as in a pan that runs empty");
    case GroundKind::riseRunsAway:
        return say("%1 over boiling water and climbing; 75 brix is at %2");
    case GroundKind::riseOver75:
        return say("%1 over boiling water, past 75 brix at %2");
    case GroundKind::standsBlind:
        return say("it was on when the readings stopped, and nothing shows that it is over");
    case GroundKind::panUnderHalf:
        return say("the syrup pan is at %1; half of its running depth is %2");
    case GroundKind::stackOverSet:
        return say("flue gas at %1, the limit that was set is %2");
    case GroundKind::stackOverSeen:
        return say("flue gas at %1; %2 is well over the hottest this rig has run");
    case GroundKind::stackOverUsual:
        return say("flue gas at %1, over %2; how hot this rig runs is not known yet");
    case GroundKind::pressOverLimit:
        return say("the filter press is at %1, its limit is %2");
    case GroundKind::nothingRead:
        return say("%3: nothing read for %1; %2 is the longest it should take");
    case GroundKind::overTarget:
        return say("%1 over boiling water, the target is at %2");
    case GroundKind::withinDoubt:
        return say("by no more than the uncertainty of the target, %1");
    case GroundKind::underLegal:
        return say("%1 over boiling water, and nothing should be drawn under %2");
    case GroundKind::loadLate:
        return say("%1 after the call to fire; a crew usually varies by %2");
    case GroundKind::fireSags:
        return say("the stack is down to %1; its average with a fed fire is %2");
    case GroundKind::sapUnderNeed:
        return say("%1 of sap left, and it takes %2 to cover the pans while the fire burns out");
    case GroundKind::sapUnderHour:
        return say("sap for %1 more; the size of the pans is not known, so %2 is assumed for what they need");
    case GroundKind::lastLoadBeforeNext:
        return say("the last load is due in %1, the load after the next would come in %2");
    case GroundKind::notMoving:
        return say("%3: not one last digit moved for %1");
    case GroundKind::outsidePhysics:
        return say("%3: outside what can be");
    case GroundKind::tooFast:
        return say("%3: changed faster than it can");
    case GroundKind::tankNearRim:
        return say("%1 left to the rim, and it calls at %2");
    case GroundKind::tankFills:
        return say("it fills, and runs over in %1");
    case GroundKind::tankOverRim:
        return say("it stands over its rim by %1");
    case GroundKind::tankNamed:
        return say("the tank: %1");
    case GroundKind::callsFor:
        return say("call %1");
    case GroundKind::clockMoved:
        return say("the clock of the computer was moved %1 ago");
    case GroundKind::notKept:
        return say("what is entered and read cannot be kept");
    case GroundKind::checkDoubted:
        return say("the last check is far from what was expected: it is kept, and counts when a second one agrees");
    case GroundKind::climbsTo:
        return say("from %1 over boiling water to the target at %2");
    case GroundKind::offsetLearnt:
        return say("by its checks the pan reads %1 too high, give or take %2");
    case GroundKind::intervalLearnt:
        return say("every %1, the rhythm of this fire and crew");
    case GroundKind::ending:
        return say("this is no longer so; the alarm ends once that has lasted");
    }
    return {};
}

std::string groundText(const Ground& ground) {
    return filled(
        groundSentence(ground.kind).text,
        {words(ground.seen), words(ground.limit), ground.series ? std::string{rowOf(*ground.series).name} : "a probe"});
}

} // namespace panside
