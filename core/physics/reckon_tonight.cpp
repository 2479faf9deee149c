// The sum for tonight: what stands, how long, how much syrup, what wood; and cold by a clock time.
#include "core/physics/reckon_tonight.h"

#include "core/physics/reckon_kinds.h"
#include "core/physics/sap.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace panside::sums {
namespace {

constexpr std::string_view stayTillCold =
    "Stay until the fire is dead and the pans are covered; look again an hour later. Tired hands burn pans: plan to be "
    "in bed.";

const Kind& tonightKind() {
    const auto kinds = reckonKinds();
    return *std::ranges::find(kinds, "tonight", &Kind::name);
}

// A time of day as people write it, in minutes after midnight: 23:00, 9:30, 11pm.
std::optional<int> minutesIn(std::string_view text) {
    int hours = 0, minutes = 0;
    const char* end = text.data() + text.size();
    auto at = std::from_chars(text.data(), end, hours);
    if (at.ec != std::errc{})
        return std::nullopt;
    if (at.ptr != end && (*at.ptr == ':' || *at.ptr == '.' || *at.ptr == 'h')) {
        const char* from = at.ptr + 1;
        at = std::from_chars(from, end, minutes);
        if (at.ec != std::errc{} || at.ptr != from + 2)
            return std::nullopt;
    }
    const std::string_view rest{at.ptr, static_cast<std::size_t>(end - at.ptr)};
    if (rest == "pm" || rest == "am") {
        if (hours < 1 || hours > 12)
            return std::nullopt;
        hours = hours % 12 + (rest == "pm" ? 12 : 0);
    } else if (!rest.empty()) {
        return std::nullopt;
    }
    return hours >= 0 && hours < 24 && minutes >= 0 && minutes < 60 ? std::optional{hours * 60 + minutes}
                                                                    : std::nullopt;
}
std::string clockAt(double minutes) {
    const int all = static_cast<int>(std::lround(minutes / 5)) * 5; // no range is good to the minute
    const int of = ((all % 1440) + 1440) % 1440;
    const std::string rest = std::to_string(of % 60);
    return std::to_string(of / 60) + (rest.size() < 2 ? ":0" : ":") + rest;
}
double minutesOf(Duration span) { return span.count() / 60; }
std::string hoursAs(Duration span) { return number(span.count() / 3600, 1); }

Likely<double> inSeconds(const Likely<Duration>& span) {
    return {span.p10.count(), span.p50.count(), span.p90.count()};
}
Sentence sayHours(const Likely<Duration>& span) {
    return say("%1 h, %2 to %3 h", {hoursAs(span.p50), hoursAs(span.p10), hoursAs(span.p90)});
}
Sentence saySyrup(const Likely<Volume>& syrup) {
    return say("%1 L, %2 to %3 L (%4 gal, %5 to %6 gal)",
               {number(syrup.p50.litre(), 1), number(syrup.p10.litre(), 1), number(syrup.p90.litre(), 1),
                number(syrup.p50.gallon(), 1), number(syrup.p10.gallon(), 1), number(syrup.p90.gallon(), 1)});
}
Sentence sayCords(const Likely<double>& cords) {
    return say("%1 cord, %2 to %3", {number(cords.p50, 2), number(cords.p10, 2), number(cords.p90, 2)});
}

std::optional<int> clockIn(Reader& in, std::string_view name) {
    if (!in.has(name))
        return std::nullopt;
    const std::string written = in.text(name);
    const auto minutes = minutesIn(written);
    if (!minutes)
        in.refuse(name, written, {say("that is no time of day. Write hours and minutes, as in %1.", {"23:00"})});
    return minutes;
}

struct Asked {
    std::optional<int> light, cold; // minutes after midnight
    std::optional<Brix> concentrate;
    std::optional<Volume> keep;
    std::optional<Duration> burnOut;
    std::optional<Brix> syrup;
};
Asked askedIn(Reader& in) {
    Asked asked;
    asked.light = clockIn(in, "light");
    asked.cold = clockIn(in, "cold");
    if (in.has("concentrate"))
        asked.concentrate = in.sugar("concentrate", Temperature::celsius(20), 30);
    if (in.has("keep"))
        asked.keep = in.amount<Volume>("keep", {0, 1e5, Unit::L});
    if (in.has("burn-out"))
        asked.burnOut = Duration{in.siOf("burn-out", in.text("burn-out"), {0, 720, Unit::min})};
    if (in.has("density")) {
        asked.syrup = in.sugar("density", Temperature::celsius(20));
        if (*asked.syrup < Brix::degrees(40))
            in.refuse("density", in.text("density"), {say("syrup is meant here, not sap, as in %1.", {"66.9brix"})});
    }
    return asked;
}

[[noreturn]] void lacking(TonightLack lack, const Tonight& rig) {
    switch (lack) {
    case TonightLack::noSap:
        Reader::refuse("stand", {}, {say("there is no sap anywhere. Say what there is, as in %1.", {"450gal@2brix"})});
    case TonightLack::noNight:
        Reader::refuse("rate", {},
                       {say("nothing is known of this rig yet: no night with a fire and a tank that was read. Say what "
                            "it boils off, as in %1.",
                            {"60gal/h"})});
    default:
        Reader::refuse("stand", {},
                       {say("all of it must cover the pans while the fire burns out: about %1 L. Do not light "
                            "for it.",
                            {number(rig.basis().keepBack.value_or(Volume{}).litre(), 0)})});
    }
}

void sayGround(const Tonight& rig, const TonightPlan& plan, std::vector<Sentence>& sum) {
    const auto rate = rig.rate();
    if (plan.nights > 0)
        sum.push_back(
            say("Learned from %1 nights of this rig: %2 L/h of water (%3 L/h to %4 L/h), and %5 min to warm up.",
                {std::to_string(plan.nights), number(rate->p50.litrePerHour(), 0), number(rate->p10.litrePerHour(), 0),
                 number(rate->p90.litrePerHour(), 0), number(minutesOf(*rig.warmUp()), 0)}));
    else
        sum.push_back(say(
            "By the rate given, %1 L/h of water, and half an hour to warm up; no night of this rig was learned from.",
            {number(rate->p50.litrePerHour(), 0)}));
    const std::string sap = number(plan.sap.litre(), 0), sugar = number(plan.sugar.kilogram(), 1),
                      water = number(plan.water.litre(), 0);
    sum.push_back(
        plan.keepKnown
            ? say("%1 L are on hand with %2 kg of sugar. %3 L are kept back to cover the pans; %4 L of water must go.",
                  {sap, sugar, number(plan.keepBack.litre(), 0), water})
            : say("%1 L are on hand with %2 kg of sugar; %3 L of water must go. Nothing is kept back, as nothing is "
                  "known of the pans: say how much covers them while the fire burns out, and stop that much sooner.",
                  {sap, sugar, water}));
}

void sayClock(const Asked& asked, const TonightPlan& plan, std::vector<Sentence>& sum) {
    if (asked.light)
        sum.push_back(
            say("Lit at %1: last load about %2 (%3 to %4), cold about %5 (%6 to %7).",
                {clockAt(*asked.light), clockAt(*asked.light + minutesOf(plan.lastLoad.p50)),
                 clockAt(*asked.light + minutesOf(plan.lastLoad.p10)),
                 clockAt(*asked.light + minutesOf(plan.lastLoad.p90)), clockAt(*asked.light + minutesOf(plan.cold.p50)),
                 clockAt(*asked.light + minutesOf(plan.cold.p10)), clockAt(*asked.light + minutesOf(plan.cold.p90))}));
    if (asked.cold)
        sum.push_back(say("All of it, cold by %1: light by %2 (nine nights in ten), by %3 (five in ten).",
                          {clockAt(*asked.cold), clockAt(*asked.cold - minutesOf(plan.cold.p90)),
                           clockAt(*asked.cold - minutesOf(plan.cold.p50))}));
}

// How much of it may be started, to be cold by then.
void addMayStart(const Asked& asked, const Tonight& rig, std::span<const SapStanding> stands, Answer& answer,
                 std::vector<Sentence>& sum) {
    if (!asked.light || !asked.cold)
        return;
    const int between = ((*asked.cold - *asked.light) % 1440 + 1440) % 1440;
    if (const auto may = rig.mayStart(stands, Duration{between * 60.0})) {
        answer.figures.push_back({"mayStartL", may->surely.litre(), "May be started", sayVolume(may->surely)});
        answer.figures.push_back(
            {"mayStartLikelyL", may->likely.litre(), "In five nights of ten", sayVolume(may->likely)});
        sum.push_back(may->all ? say("Lit at %1, all of it may be started and the fire is cold by %2 (nine nights "
                                     "in ten).",
                                     {clockAt(*asked.light), clockAt(*asked.cold)})
                               : say("Lit at %1 and cold by %2: start %3 L of it (nine nights in ten), %4 L (five "
                                     "in ten). Leave the coldest and the youngest.",
                                     {clockAt(*asked.light), clockAt(*asked.cold), number(may->surely.litre(), 0),
                                      number(may->likely.litre(), 0)}));
    }
}

void addConcentrated(Brix to, const Tonight& rig, const TonightPlan& plan, std::span<const SapStanding> stands,
                     Answer& answer, std::vector<Sentence>& sum) {
    const auto thick = concentratedTo(stands, to);
    const auto other = rig.plan(thick);
    Volume left;
    for (const SapStanding& one : thick)
        left += one.volume;
    const double out = (plan.sap - left).litre();
    answer.figures.push_back({"concentrateL", left.litre(), "Through the concentrator", sayVolume(left)});
    answer.figures.push_back(
        {"savesS", other ? std::optional{(plan.lastLoad.p50 - other->lastLoad.p50).count()} : std::nullopt, "It saves",
         other ? say("%1 h", {hoursAs(plan.lastLoad.p50 - other->lastLoad.p50)}) : say("all of the boil")});
    answer.figures.push_back(
        {"savesCords",
         other && other->cords && plan.cords ? std::optional{plan.cords->p50 - other->cords->p50} : std::nullopt,
         "And of wood",
         other && other->cords && plan.cords ? say("%1 cord", {number(plan.cords->p50 - other->cords->p50, 2)})
                                             : say("not known")});
    sum.push_back(
        other ? say("Concentrated to %1 °Brix first: %2 L of water less to boil off, last load after %3 h "
                    "instead of %4 h. Concentrate spoils sooner than sap.",
                    {number(to.degrees(), 1), number(out, 0), hoursAs(other->lastLoad.p50), hoursAs(plan.lastLoad.p50)})
              : say("Concentrated to %1 °Brix, no more is left than covers the pans.", {number(to.degrees(), 1)}));
}

// The figures of a plan, and what they rest on.
Answer answerOf(const TonightPlan& plan) {
    Answer answer{.figures = {{"lastLoadS", {}, "To the last load", sayHours(plan.lastLoad)},
                              {"coldS", {}, "To a cold fire", sayHours(plan.cold)},
                              {"syrupL", {}, "Syrup to come", saySyrup(plan.syrup)},
                              {"cords", {}, "Wood", plan.cords ? sayCords(*plan.cords) : say("not known")},
                              {"sapL", plan.sap.litre(), "Sap on hand", sayVolume(plan.sap)},
                              {"sugarKg", plan.sugar.kilogram(), "Sugar in it", sayMass(plan.sugar)},
                              {"waterL", plan.water.litre(), "Water to boil off", sayVolume(plan.water)},
                              {"keepBackL", plan.keepKnown ? std::optional{plan.keepBack.litre()} : std::nullopt,
                               "Sap to keep back", plan.keepKnown ? sayVolume(plan.keepBack) : say("not known")},
                              {"nights", static_cast<double>(plan.nights), "Nights learned from",
                               say("%1", {std::to_string(plan.nights)})}},
                  .sum = {},
                  .uncertainty = say("Of ten such nights one comes under the first figure of a range, one over its "
                                     "last. Sap that still runs in, a late thaw or other wood is not in it."),
                  .source =
                      "Own nights of this rig: warm-up and rate fitted with a stated prior; sugar by mass balance",
                  .caution = stayTillCold};
    answer.figures[0].range = inSeconds(plan.lastLoad);
    answer.figures[1].range = inSeconds(plan.cold);
    answer.figures[2].range = Likely<double>{plan.syrup.p10.litre(), plan.syrup.p50.litre(), plan.syrup.p90.litre()};
    answer.figures[3].range = plan.cords;
    if (plan.firstDraw) {
        answer.figures.push_back({"firstDrawS", {}, "To the first draw", sayHours(*plan.firstDraw)});
        answer.figures.back().range = inSeconds(*plan.firstDraw);
    }
    return answer;
}

std::vector<SapStanding> standsOf(const Arguments& arguments) {
    Arguments only;
    for (const auto& one : arguments)
        if (one.first == "stand")
            only.push_back(one);
    only.emplace_back("rate", "1L/h"); // needed of the kind, no matter here
    const Reader in{tonightKind(), only};
    std::vector<SapStanding> stands;
    for (const std::string& written : in.all("stand")) {
        const auto [volume, sugar] =
            in.volumeOf("stand", written, 1e6,
                        say("what stands is a volume and its sugar with @ between them, as in %1.", {"450gal@2brix"}));
        stands.push_back({volume, in.sugarIn("stand", sugar, Temperature::celsius(20), 30)});
    }
    return stands;
}

Answer tonight(const Arguments& arguments, TonightBasis basis, std::span<const SapStanding> stands) {
    Arguments rest{{"stand", "1L@2brix"}};
    const bool rated = std::ranges::any_of(arguments, [](const auto& one) { return one.first == "rate"; });
    if (!rated)
        rest.emplace_back("rate", "1L/h"); // needed of the kind, no matter here
    for (const auto& one : arguments)
        if (one.first != "stand")
            rest.push_back(one);
    Reader in{tonightKind(), rest};
    if (rated)
        basis.rate = in.amount<VolumeFlow>("rate", {1, 10000, Unit::Lph});
    const Asked asked = askedIn(in);
    if (asked.keep) {
        basis.keepBack = asked.keep;
        for (NightBoiled& night : basis.nights)
            night.kept.reset(); // what was said goes before what was done
    }
    if (asked.burnOut) {
        basis.burnOut = *asked.burnOut;
        basis.burnOutLearned = true;
    }
    basis.syrup = asked.syrup.value_or(basis.syrup);
    const Tonight rig{std::move(basis)};
    const auto plan = rig.plan(stands);
    if (!plan)
        lacking(rig.lack(stands), rig);
    std::vector<Sentence> sum;
    sayGround(rig, *plan, sum);
    for (const SapStanding& one : stands)
        if (one.sugar > sweetestConcentrate)
            sum.push_back(meantInstead(one.sugar));
    sayClock(asked, *plan, sum);
    Answer answer = answerOf(*plan);
    addMayStart(asked, rig, stands, answer, sum);
    if (asked.concentrate)
        addConcentrated(*asked.concentrate, rig, *plan, stands, answer, sum);
    answer.sum = std::move(sum);
    return answer;
}

} // namespace

Outcome reckonTonight(const Arguments& arguments, TonightBasis basis,
                      std::optional<std::span<const SapStanding>> stands) {
    return outcomeOf([&]() -> Outcome {
        return stands ? tonight(arguments, std::move(basis), *stands)
                      : tonight(arguments, std::move(basis), standsOf(arguments));
    });
}

Answer reckonTonight(Reader& in) {
    TonightBasis basis;
    basis.rate = in.amount<VolumeFlow>("rate", {1, 10000, Unit::Lph});
    return tonight(in.given(), std::move(basis), standsOf(in.given()));
}

} // namespace panside::sums
