// The sum for tomorrow's run.
#include "core/physics/reckon_kinds.h"
#include "core/physics/sap_run.h"

namespace panside::sums {
namespace {

Sentence sayDay(RunDay day) {
    switch (day) {
    case RunDay::frozen:
        return say("a day that hardly thaws");
    case RunDay::noFreeze:
        return say("no freeze: what the last one left");
    case RunDay::fair:
        return say("a fair run");
    case RunDay::heavy:
        return say("a heavy day");
    }
    return {};
}
std::string_view wordOf(RunDay day) {
    return day == RunDay::frozen     ? "frozen"
           : day == RunDay::noFreeze ? "noFreeze"
           : day == RunDay::fair     ? "fair"
                                     : "heavy";
}
Sentence sayFromTo(Volume low, Volume high) {
    return say("%1 to %2 L (%3 to %4 gal)",
               {number(low.litre(), 1), number(high.litre(), 1), number(low.gallon(), 1), number(high.gallon(), 1)});
}

} // namespace

Answer reckonRun(Reader& in) {
    const auto night = in.temperature("night", -40, 20), day = in.temperature("day", -30, 30);
    const double taps = in.has("taps") ? in.bareNumber("taps", 1, 1e6) : 0;
    const auto run = sapRun(night, day);
    if (!run)
        in.refuse("day", in.text("day"),
                  {say("the warmest of the day is under the coldest of the night. Are the two the right way round?")});
    Figure kind{"day", {}, "What to expect", sayDay(run->day)};
    kind.word = wordOf(run->day);
    Figure tap{"perTapL", {}, "Sap of a tap", sayFromTo(run->low, run->high)};
    tap.list = {run->low.litre(), run->high.litre()};
    Answer answer{.figures = {kind, tap},
                  .sum = {say("%1 °C by night, %2 °C by day.", {number(night.celsius(), 1), number(day.celsius(), 1)})},
                  .uncertainty =
                      say("A rule of thumb: sun, wind, vacuum, the trees and how long it was cold are not in "
                          "it. What your own taps gave on such days goes before it."),
                  .source = "A heavy day of about a gallon a tap: trade farming magazine, about 2015; the temperatures "
                            "and the other amounts are common practice, no source",
                  .caution = "Look how much room the tanks have before such a day."};
    if (taps > 0) {
        Figure all{"sapL", {}, "Sap of all taps", sayFromTo(run->low * taps, run->high * taps)};
        all.list = {run->low.litre() * taps, run->high.litre() * taps};
        answer.figures.push_back(all);
    }
    return answer;
}

} // namespace panside::sums
