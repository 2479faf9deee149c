// Sums of the sap house: concentrating, the sap hydrometer, and tomorrow's run.
#include "core/physics/hydrometer.h"
#include "core/physics/mixing.h"
#include "core/physics/reckon_kinds.h"
#include "core/physics/sap.h"
#include "core/physics/sap_run.h"
#include "core/physics/sugar_density.h"

namespace panside::sums {
namespace {

constexpr Temperature sapAt = Temperature::celsius(20);
constexpr std::string_view concentrateKeeps =
    "Concentrate spoils sooner than sap: boil it first. Rinse after every cleaner.";
constexpr std::string_view aboutSugar =
    "A hydrometer shows all that is dissolved as sugar; ice in a tank makes what is "
    "left sweeter.";

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

Answer reckonConcentrate(Reader& in) {
    const auto [volume, sugar] =
        in.volumeOf("sap", in.text("sap"), 1e6,
                    say("sap is a volume and its sugar with @ between them, as in %1.", {"800gal@2brix"}));
    const Brix sap = in.sugarIn("sap", sugar, sapAt), to = in.sugar("to", sapAt);
    if (!(sap.degrees() > 0) || to < sap)
        in.refuse("to", in.text("to"),
                  sap > sweetestSap && sap.degrees() / 10 < to.degrees()
                      ? std::vector<Sentence>{say("concentrate must be sweeter than the sap."), meantInstead(sap)}
                      : std::vector<Sentence>{
                            say("concentrate must be sweeter than the sap. Are the two the right way round?")});
    const Volume water = boilOffToReach(to, {volume, sap}).value_or(Volume{});
    const Volume concentrate =
        volume * (sugarDensity(sap, sapAt)->si() * sap.si() / (sugarDensity(to, sapAt)->si() * to.si()));
    const Brix syrup = Brix::degrees(66.9);
    std::vector<Sentence> sum{say("All the sugar stays: %1 L of %2 °Brix becomes %3 L of %4 °Brix.",
                                  {number(volume.litre(), 1), number(sap.degrees(), 2), number(concentrate.litre(), 1),
                                   number(to.degrees(), 2)})};
    const auto before = sapPerSyrup(sap, syrup), after = to < syrup ? sapPerSyrup(to, syrup) : std::nullopt;
    if (before && after && *before > 1)
        sum.push_back(
            say("For a liter of syrup the pans now boil off %1 L of water instead of %2 L: %3 percent of the "
                "boil and of the wood is saved.",
                {number(*after - 1, 1), number(*before - 1, 1), number((1 - (*after - 1) / (*before - 1)) * 100, 0)}));
    return {.figures = {{"concentrateL", concentrate.litre(), "Concentrate", sayVolume(concentrate)},
                        {"waterL", water.litre(), "Water taken out", sayVolume(water)}},
            .sum = std::move(sum),
            .uncertainty = say("As good as the readings: 0.1 °Brix wrong in the sap is %1 percent of the volume.",
                               {number(10 / sap.degrees(), 1)}),
            .source = "Mass balance; ICUMSA SPS-4 (1998)",
            .caution = concentrateKeeps};
}

Answer reckonSapScale(Reader& in) {
    const Temperature scale = in.temperature("cal", 0, 50), temperature = in.temperature("temp", 0, 50);
    const Brix reading = in.sugar("reading", scale);
    const auto sugar = sugarByHydrometer(reading, temperature, scale);
    if (!sugar)
        in.refuse("reading", in.text("reading"),
                  {say("at that temperature it would be less than no sugar. Is the temperature that of the sap?")});
    Answer answer{
        .figures = {{"brix", sugar->degrees(), "Sugar of the sap", saySugar(*sugar)}},
        .sum = {say("The scale was made for %1 °C; the sap is at %2 °C.",
                    {number(scale.celsius(), 1), number(temperature.celsius(), 1)}),
                say("%1 °Brix as read means %2 °Brix.", {number(reading.degrees(), 2), number(sugar->degrees(), 2)})},
        .uncertainty = say("A sap hydrometer is read to 0.1 °Brix; 5 °C wrong in the sap's temperature is up "
                           "to 0.2 °Brix near 20 °C."),
        .source = "Float balance; ICUMSA SPS-4 (1998); glass of ISO 1768:1975",
        .caution = aboutSugar};
    if (reading > sweetestSap)
        answer.sum.push_back(meantInstead(reading));
    return answer;
}

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
