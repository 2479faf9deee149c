// The hydrometer in a hot cup, and what to do about what it says.
#include "core/physics/hydrometer.h"
#include "core/physics/law_chart.h"
#include "core/physics/mixing.h"
#include "core/physics/reckon_kinds.h"

#include <cmath>

namespace panside::sums {
namespace {

constexpr std::string_view hotCup =
    "Hot syrup burns. Read the hydrometer and the cup's thermometer at the same moment; stir what you "
    "add well in, heat it again, and test again before it is packed.";

struct Remedy {
    std::optional<Volume> add, boilOff;
    std::vector<Sentence> steps;
};

Remedy remedyFor(Reader& in, Brix sugar) {
    const auto scale = Temperature::celsius(20);
    if (!in.has("volume")) {
        if (in.has("target") || in.has("sap"))
            in.refuseUsage("volume", {say("it is needed here, as in %1.", {"10gal"})});
        return {};
    }
    const Volume volume = in.amount<Volume>("volume", {0, 100000, Unit::L});
    const Brix target = in.has("target") ? in.sugar("target", scale) : Brix::degrees(66.9);
    const Brix thinner = in.has("sap") ? in.sugar("sap", scale) : Brix::degrees(0);
    const auto given = [&](std::string_view name) { return in.has(name) ? in.text(name) : std::string{}; };
    if (!(thinner < target))
        in.refuse("sap", given("sap"),
                  {say("what thins the syrup must be thinner than the target. Are the two the right way round?")});
    const Volume none = Volume::litre(0);
    const std::string wanted = number(target.degrees(), 1), whole = number(volume.litre(), 2);
    if (sugar >= target) {
        const Volume add = *thinnerToReach(target, {volume, sugar}, thinner);
        const std::string over = number((sugar - target).degrees(), 2), added = number(add.litre(), 2);
        return {add,
                none,
                {in.has("sap") ? say("It is %1 °Brix over the %2 wanted: to %3 L add %4 L of %5 °Brix.",
                                     {over, wanted, whole, added, number(thinner.degrees(), 1)})
                               : say("It is %1 °Brix over the %2 wanted: to %3 L add %4 L of plain water.",
                                     {over, wanted, whole, added})}};
    }
    if (!(sugar > Brix::degrees(0)))
        in.refuse("target", given("target"), {say("there is no sugar in the cup: no boiling makes syrup of it.")});
    const Volume off = *boilOffToReach(target, {volume, sugar});
    return {none,
            off,
            {say("It is %1 °Brix under the %2 wanted: from %3 L boil off %4 L of water.",
                 {number((target - sugar).degrees(), 2), wanted, whole, number(off.litre(), 2)})}};
}

std::optional<double> litres(std::optional<Volume> volume) {
    return volume ? std::optional{volume->litre()} : std::nullopt;
}

} // namespace

Answer reckonCup(Reader& in) {
    const Temperature scale = in.temperature("cal", 0, 50);
    const Temperature temperature = in.temperature("temp", 0, 105);
    const Brix reading = in.sugar("reading", scale);
    const auto sugar = sugarByHydrometer(reading, temperature, scale);
    const auto uncertain = hydrometerUncertainty(reading, temperature, scale);
    if (!sugar || !uncertain) {
        const std::string celsius = number(temperature.celsius(), 1);
        in.refuse("reading", in.text("reading"),
                  {temperature > scale ? say("at %1 °C that would be more than 75 °Brix.", {celsius})
                                       : say("at %1 °C that would be less than no sugar.", {celsius}),
                   say("Is the temperature that of the cup, and the reading what the glass showed there?")});
    }
    const Remedy remedy = remedyFor(in, *sugar);
    const double uncertainty = uncertain->degrees();
    std::vector<Sentence> sum{
        say("The scale was made for %1 °C; in the cup it is %2 °C, where syrup is thinner.",
            {number(scale.celsius(), 1), number(temperature.celsius(), 1)}),
        say("Allowing for the glass as well, %1 °Brix as read means %2 °Brix: %3 to be added.",
            {number(reading.degrees(), 2), number(sugar->degrees(), 2), number((*sugar - reading).degrees(), 2)})};
    sum.insert(sum.end(), remedy.steps.begin(), remedy.steps.end());
    if (const auto least = vermontChart(temperature); least && std::abs(scale.fahrenheit() - 60) < 1)
        sum.push_back(
            say("Vermont's own chart asks %1 °Brix (%2 °Bé) of a glass in such a cup, and there the chart decides.",
                {number(least->brix, 1), number(least->baume, 2)}));
    std::vector<Figure> figures{
        {"brix", sugar->degrees(), "True density", saySugar(*sugar)},
        {"uncertaintyBrix", uncertainty, "Standard uncertainty", say("%1 °Brix", {number(uncertainty, 2)})},
        {"addSapL", litres(remedy.add), "To add", remedy.add ? sayVolume(*remedy.add) : say("—")},
        {"boilOffL", litres(remedy.boilOff), "To boil off", remedy.boilOff ? sayVolume(*remedy.boilOff) : say("—")}};
    return {.figures = std::move(figures),
            .sum = std::move(sum),
            .uncertainty =
                say("One standard uncertainty is %1 °Brix, with the cup's temperature known to 1 °C. Printed hot "
                    "charts differ from this by up to 0.35 °Brix. Volumes are taken at 20 °C.",
                    {number(uncertainty, 2)}),
            .source = "Float balance; ICUMSA SPS-4 (1998); glass of ISO 1768:1975",
            .caution = hotCup};
}

} // namespace panside::sums
