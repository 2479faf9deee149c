// Sums of one solution: its weight, its light, its Baume.
#include "core/physics/baume.h"
#include "core/physics/law_chart.h"
#include "core/physics/reckon_kinds.h"
#include "core/physics/refraction.h"
#include "core/physics/sugar_density.h"
#include "core/physics/water.h"

#include <cmath>

namespace panside::sums {
namespace {

constexpr Temperature cold = Temperature::celsius(20);
constexpr std::string_view pureSugar =
    "Real syrup is not pure sugar: allow 0.2 °Brix between instruments. For sale, the law of the "
    "place says which instrument counts.";

Outcome refractionOf(Brix sugar, std::vector<Sentence> sum) {
    const auto index = refractiveIndex(sugar);
    return Answer{.figures = {{"brix", sugar.degrees(), "Sugar", saySugar(sugar)},
                              {"index", *index, "Refractive index at 20 °C", say("%1", {number(*index, 5)})}},
                  .sum = std::move(sum),
                  .uncertainty =
                      say("The scale is good to 0.02 °Brix, the correction to 0.02 below 20 °C and 0.06 at 30 °C; a "
                          "hand refractometer to 0.2."),
                  .source = "ICUMSA scale of 1974 and OIV-MA-AS2-02, tables I and II",
                  .caution = pureSugar};
}

} // namespace

Outcome reckonDensity(Reader& in) {
    const auto sugar = in.sugar("density", cold);
    const auto temperature = in.temperature("temp", 0, 105);
    if (in.refused())
        return in.refusal();
    const Density density = *sugarDensity(*sugar, *temperature);
    const Density uncertainty = *sugarDensityUncertainty(*sugar, *temperature);
    const double perLitre = density.kilogramPerCubicMetre() / 1000;
    const Mass gallon = density * Volume::gallon(1);
    return Answer{
        .figures = {{"kgPerM3", density.kilogramPerCubicMetre(), "A liter weighs", say("%1 kg", {number(perLitre, 4)})},
                    {"", std::nullopt, "A gallon weighs", say("%1 lb", {number(gallon.pound(), 3)})}},
        .sum = {say("Water at %1 °C weighs %2 kg a liter; %3 °Brix of sugar in it brings that to %4.",
                    {number(temperature->celsius(), 1),
                     number(waterDensity(*temperature)->kilogramPerCubicMetre() / 1000, 4), number(sugar->degrees(), 2),
                     number(perLitre, 4)})},
        .uncertainty =
            say("One standard uncertainty is %1 kg in 1000 liters.", {number(uncertainty.kilogramPerCubicMetre(), 2)}),
        .source = "ICUMSA SPS-4 (1998)",
        .caution = pureSugar};
}

Outcome reckonRefraction(Reader& in) {
    if (in.has("index") == in.has("density"))
        in.refuseUsage("index", {say("give one of --index (with --temp) and --density.")});
    if (in.refused())
        return in.refusal();
    if (in.has("density")) {
        const auto sugar = in.sugar("density", cold);
        if (in.refused())
            return in.refusal();
        return refractionOf(*sugar, {say("The scale has %1 °Brix at an index of %2 at 20 °C.",
                                         {number(sugar->degrees(), 2), number(*refractiveIndex(*sugar), 5)})});
    }
    const auto index = in.bareNumber("index", 1.3330, 1.4778);
    const auto temperature = in.temperature("temp", 10, 30);
    if (in.refused())
        return in.refusal();
    const auto reading = sugarOfIndex(*index);
    const auto correction = reading ? refractometerCorrection(*reading, *temperature) : std::nullopt;
    if (!correction || *reading + *correction < Brix::degrees(0))
        return Refusal{false,
                       "index",
                       number(*index, 5),
                       {say("at that temperature even plain water bends light more than this.")}};
    return refractionOf(*reading + *correction,
                        {say("An index of %1 reads %2 °Brix on the scale made for 20 °C.",
                             {number(*index, 5), number(reading->degrees(), 2)}),
                         say("At %1 °C the reading needs %2 °Brix added.",
                             {number(temperature->celsius(), 1), number(correction->degrees(), 2)})});
}

Outcome reckonBaume(Reader& in) {
    if (in.has("baume") == in.has("density"))
        in.refuseUsage("density", {say("give one of --density and --baume.")});
    if (in.refused())
        return in.refusal();
    const Temperature scale = in.has("cal") ? in.temperature("cal", 0, 50).value_or(cold) : cold;
    const auto sugar = in.sugar(in.has("baume") ? "baume" : "density", scale);
    if (in.refused())
        return in.refusal();
    const double degrees = baumeOf(*sugar, scale)->degrees;
    const double gravity = *sugarDensity(*sugar, scale) / *waterDensity(scale);
    std::vector<Sentence> sum{
        say("At %1 °C it weighs %2 times as much as water.", {number(scale.celsius(), 1), number(gravity, 5)}),
        say("145 less 145 over %1 is %2 °Bé.", {number(gravity, 5), number(degrees, 2)})};
    if (const auto least = vermontChart(scale); least && std::abs(scale.fahrenheit() - 60) < 1)
        sum.push_back(say("Vermont's own chart pairs %1 °Bé with %2 °Brix, and there the chart decides.",
                          {number(least->baume, 1), number(least->brix, 1)}));
    return Answer{.figures = {{"baume", degrees, "Baumé", say("%1 °Bé", {number(degrees, 2)})},
                              {"brix", sugar->degrees(), "Sugar", saySugar(*sugar)}},
                  .sum = std::move(sum),
                  .uncertainty = say("Printed tables agree within 0.06 °Bé, which is 0.1 °Brix."),
                  .source = "Modulus 145 of the American scale; density of ICUMSA SPS-4 (1998)",
                  .caution = pureSugar};
}

} // namespace panside::sums
