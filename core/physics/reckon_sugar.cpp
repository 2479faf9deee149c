// Sums of one solution, its weight, its light, its Baume; and of amounts: sap for syrup, and blends.
#include "core/physics/baume.h"
#include "core/physics/law_chart.h"
#include "core/physics/mixing.h"
#include "core/physics/reckon_kinds.h"
#include "core/physics/refraction.h"
#include "core/physics/sap.h"
#include "core/physics/sugar_density.h"
#include "core/physics/water.h"

#include <cmath>

namespace panside::sums {
namespace {

constexpr Temperature cold = Temperature::celsius(20);
constexpr std::string_view pureSugar =
    "Real syrup is not pure sugar: allow 0.2 °Brix between instruments. For sale, the law of the "
    "place says which instrument counts.";

Answer refractionOf(Brix sugar, std::vector<Sentence> sum) {
    const auto index = refractiveIndex(sugar);
    return {.figures = {{"brix", sugar.degrees(), "Sugar", saySugar(sugar)},
                        {"index", *index, "Refractive index at 20 °C", say("%1", {number(*index, 5)})}},
            .sum = std::move(sum),
            .uncertainty =
                say("The scale is good to 0.02 °Brix, the correction to 0.02 below 20 °C and 0.06 at 30 °C; a "
                    "hand refractometer to 0.2."),
            .source = "ICUMSA scale of 1974 and OIV-MA-AS2-02, tables I and II",
            .caution = pureSugar};
}

constexpr std::string_view planning =
    "For planning. Sugar also stays in the pans, the filter and the drums: a season's total is "
    "always worse.";
constexpr std::string_view testAgain =
    "Stir well, heat again and test again: the hydrometer decides. Note which lots went in.";

Portion portionIn(Reader& in, const std::string& written) {
    const auto [volume, sugar] =
        in.volumeOf("part", written, 100000,
                    say("a part is a volume and a density with @ between them, as in %1.", {"10gal@68.9brix"}));
    return {volume, in.sugarIn("part", sugar, cold)};
}

} // namespace

Answer reckonDensity(Reader& in) {
    const Brix sugar = in.sugar("density", cold);
    const Temperature temperature = in.temperature("temp", 0, 105);
    const Density density = *sugarDensity(sugar, temperature);
    const Density uncertainty = *sugarDensityUncertainty(sugar, temperature);
    const double perLitre = density.kilogramPerCubicMetre() / 1000;
    const Mass gallon = density * Volume::gallon(1);
    return {
        .figures = {{"kgPerM3", density.kilogramPerCubicMetre(), "A liter weighs", say("%1 kg", {number(perLitre, 4)})},
                    {"", std::nullopt, "A gallon weighs", say("%1 lb", {number(gallon.pound(), 3)})}},
        .sum = {say("Water at %1 °C weighs %2 kg a liter; %3 °Brix of sugar in it brings that to %4.",
                    {number(temperature.celsius(), 1),
                     number(waterDensity(temperature)->kilogramPerCubicMetre() / 1000, 4), number(sugar.degrees(), 2),
                     number(perLitre, 4)})},
        .uncertainty =
            say("One standard uncertainty is %1 kg in 1000 liters.", {number(uncertainty.kilogramPerCubicMetre(), 2)}),
        .source = "ICUMSA SPS-4 (1998)",
        .caution = pureSugar};
}

Answer reckonRefraction(Reader& in) {
    in.oneOf("index", "density", say("give one of --index (with --temp) and --density."));
    if (in.has("density")) {
        const Brix sugar = in.sugar("density", cold);
        return refractionOf(sugar, {say("The scale has %1 °Brix at an index of %2 at 20 °C.",
                                        {number(sugar.degrees(), 2), number(*refractiveIndex(sugar), 5)})});
    }
    const double index = in.bareNumber("index", 1.3330, 1.4778);
    const Temperature temperature = in.temperature("temp", 10, 30);
    const auto reading = sugarOfIndex(index);
    const auto correction = reading ? refractometerCorrection(*reading, temperature) : std::nullopt;
    if (!correction || *reading + *correction < Brix::degrees(0))
        in.refuse("index", number(index, 5), {say("at that temperature even plain water bends light more than this.")});
    return refractionOf(*reading + *correction,
                        {say("An index of %1 reads %2 °Brix on the scale made for 20 °C.",
                             {number(index, 5), number(reading->degrees(), 2)}),
                         say("At %1 °C the reading needs %2 °Brix added.",
                             {number(temperature.celsius(), 1), number(correction->degrees(), 2)})});
}

Answer reckonBaume(Reader& in) {
    in.oneOf("density", "baume", say("give one of --density and --baume."));
    const Temperature scale = in.has("cal") ? in.temperature("cal", 0, 50) : cold;
    const Brix sugar = in.sugar(in.has("baume") ? "baume" : "density", scale);
    const double degrees = baumeOf(sugar, scale)->degrees;
    const double gravity = *sugarDensity(sugar, scale) / *waterDensity(scale);
    std::vector<Sentence> sum{
        say("At %1 °C it weighs %2 times as much as water.", {number(scale.celsius(), 1), number(gravity, 5)}),
        say("145 less 145 over %1 is %2 °Bé.", {number(gravity, 5), number(degrees, 2)})};
    if (const auto least = vermontChart(scale); least && std::abs(scale.fahrenheit() - 60) < 1)
        sum.push_back(say("Vermont's own chart pairs %1 °Bé with %2 °Brix, and there the chart decides.",
                          {number(least->baume, 1), number(least->brix, 1)}));
    return {.figures = {{"baume", degrees, "Baumé", say("%1 °Bé", {number(degrees, 2)})},
                        {"brix", sugar.degrees(), "Sugar", saySugar(sugar)}},
            .sum = std::move(sum),
            .uncertainty = say("Printed tables agree within 0.06 °Bé, which is 0.1 °Brix."),
            .source = "Modulus 145 of the American scale; density of ICUMSA SPS-4 (1998)",
            .caution = pureSugar};
}

Answer reckonSap(Reader& in) {
    const Brix sap = in.sugar("sap", cold), syrup = in.sugar("density", cold);
    std::optional<Volume> volume;
    if (in.has("volume"))
        volume = in.amount<Volume>("volume", {0, 100000, Unit::L});
    if (!(sap < syrup))
        in.refuse("sap", in.text("sap"), {say("sap must be thinner than syrup. Are the two the right way round?")});
    const auto ratio = sapPerSyrup(sap, syrup);
    if (!ratio)
        in.refuse("sap", in.text("sap"), {say("sap of less than 0.2 °Brix is as good as water.")});
    const auto rule = ruleOf86(sap);
    const auto revised = revisedRule(sap, syrup);
    std::vector<Sentence> sum{say("The sugar in a liter of %1 °Brix syrup is that in %2 liters of %3 °Brix sap.",
                                  {number(syrup.degrees(), 2), number(*ratio, 2), number(sap.degrees(), 2)})};
    if (rule)
        sum.push_back(
            say("The rule of 86 says 86 over %1, or %2: it was made for raw sap and thinner syrup, of 65.5 °Brix.",
                {number(sap.degrees(), 2), number(*rule, 2)}));
    if (revised)
        sum.push_back(say("The revised rule for this density says %1.", {number(*revised, 2)}));
    std::optional<double> litres;
    Sentence inAll = say("—");
    if (volume) {
        const Volume needed = *volume * *ratio;
        litres = needed.litre();
        inAll = sayVolume(needed);
        sum.push_back(say("For %1 L of syrup: %2 L of sap.", {number(volume->litre(), 2), number(needed.litre(), 1)}));
    }
    return {
        .figures = {{"sapPerSyrup", *ratio, "Sap for one of syrup", say("%1", {number(*ratio, 2)})},
                    {"ruleOf86", rule, "By the rule of 86", rule ? say("%1", {number(*rule, 2)}) : say("—")},
                    {"sapL", litres, "Sap in all", inAll}},
        .sum = std::move(sum),
        .uncertainty =
            say("0.1 °Brix wrong in the sap is %1 wrong in the ratio.", {number(*ratio * 0.1 / sap.degrees(), 2)}),
        .source =
            "Mass balance; ICUMSA SPS-4 (1998). Rule of 86: the trade's; revised: University of Vermont, about 2013",
        .caution = planning};
}

Answer reckonBlend(Reader& in) {
    std::vector<Portion> parts;
    std::vector<Sentence> sum;
    for (const std::string& written : in.all("part")) {
        const Portion part = portionIn(in, written);
        parts.push_back(part);
        sum.push_back(say("%1 L of %2 °Brix.", {number(part.volume.litre(), 2), number(part.sugar.degrees(), 2)}));
    }
    const auto mixed = blend(parts);
    if (!mixed)
        in.refuse("part", {}, {say("there is nothing to mix: all volumes are zero.")});
    sum.push_back(say("Mass and sugar add up: %1 L of %2 °Brix.",
                      {number(mixed->volume.litre(), 2), number(mixed->sugar.degrees(), 2)}));
    return {.figures = {{"volumeL", mixed->volume.litre(), "Mixed", sayVolume(mixed->volume)},
                        {"brix", mixed->sugar.degrees(), "Density", saySugar(mixed->sugar)}},
            .sum = std::move(sum),
            .uncertainty = say(
                "As good as the readings that went in. Volumes are taken at 20 °C; hot syrup takes up 4 percent more."),
            .source = "Mass balance; ICUMSA SPS-4 (1998)",
            .caution = testAgain};
}

} // namespace panside::sums
