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

std::optional<Remedy> remedyFor(Reader& in, Brix sugar) {
    const auto scale = Temperature::celsius(20);
    if (!in.has("volume")) {
        if (in.has("target") || in.has("sap"))
            in.refuseUsage("volume", {say("it is needed here, as in %1.", {"10gal"})});
        return Remedy{};
    }
    const auto volume = in.amount<Volume>("volume", {0, 100000, Unit::L});
    const auto target = in.has("target") ? in.sugar("target", scale) : Brix::degrees(66.9);
    const auto thinner = in.has("sap") ? in.sugar("sap", scale) : Brix::degrees(0);
    if (in.refused())
        return std::nullopt;
    if (!(*thinner < *target)) {
        in.refuse("sap", in.all("sap").empty() ? "" : in.all("sap").front(),
                  {say("what thins the syrup must be thinner than the target. Are the two the right way round?")});
        return std::nullopt;
    }
    const Volume none = Volume::litre(0);
    if (sugar >= *target) {
        const Volume add = *thinnerToReach(*target, {*volume, sugar}, *thinner);
        const std::string over = number((sugar - *target).degrees(), 2);
        const std::string wanted = number(target->degrees(), 1);
        const std::string whole = number(volume->litre(), 2);
        const std::string added = number(add.litre(), 2);
        if (!in.has("sap"))
            return Remedy{add,
                          none,
                          {say("It is %1 °Brix over the %2 wanted: to %3 L add %4 L of plain water.",
                               {over, wanted, whole, added})}};
        return Remedy{add,
                      none,
                      {say("It is %1 °Brix over the %2 wanted: to %3 L add %4 L of %5 °Brix.",
                           {over, wanted, whole, added, number(thinner->degrees(), 1)})}};
    }
    if (!(sugar > Brix::degrees(0))) {
        in.refuse("target", in.all("target").empty() ? "" : in.all("target").front(),
                  {say("there is no sugar in the cup: no boiling makes syrup of it.")});
        return std::nullopt;
    }
    const Volume off = *boilOffToReach(*target, {*volume, sugar});
    return Remedy{none,
                  off,
                  {say("It is %1 °Brix under the %2 wanted: from %3 L boil off %4 L of water.",
                       {number((*target - sugar).degrees(), 2), number(target->degrees(), 1),
                        number(volume->litre(), 2), number(off.litre(), 2)})}};
}

std::optional<double> litres(std::optional<Volume> volume) {
    return volume ? std::optional{volume->litre()} : std::nullopt;
}

} // namespace

Outcome reckonCup(Reader& in) {
    const auto scale = in.temperature("cal", 0, 50);
    const auto temperature = in.temperature("temp", 0, 105);
    const auto reading = scale ? in.sugar("reading", *scale) : std::nullopt;
    if (in.refused())
        return in.refusal();
    const auto sugar = sugarByHydrometer(*reading, *temperature, *scale);
    const auto uncertain = hydrometerUncertainty(*reading, *temperature, *scale);
    if (!sugar || !uncertain) {
        const std::string celsius = number(temperature->celsius(), 1);
        return Refusal{false,
                       "reading",
                       in.text("reading"),
                       {*temperature > *scale ? say("at %1 °C that would be more than 75 °Brix.", {celsius})
                                              : say("at %1 °C that would be less than no sugar.", {celsius}),
                        say("Is the temperature that of the cup, and the reading what the glass showed there?")}};
    }
    const auto remedy = remedyFor(in, *sugar);
    if (in.refused())
        return in.refusal();
    const double uncertainty = uncertain->degrees();
    std::vector<Sentence> sum{
        say("The scale was made for %1 °C; in the cup it is %2 °C, where syrup is thinner.",
            {number(scale->celsius(), 1), number(temperature->celsius(), 1)}),
        say("Allowing for the glass as well, %1 °Brix as read means %2 °Brix: %3 to be added.",
            {number(reading->degrees(), 2), number(sugar->degrees(), 2), number((*sugar - *reading).degrees(), 2)})};
    sum.insert(sum.end(), remedy->steps.begin(), remedy->steps.end());
    if (const auto least = vermontChart(*temperature); least && std::abs(scale->fahrenheit() - 60) < 1)
        sum.push_back(
            say("Vermont's own chart asks %1 °Brix (%2 °Bé) of a glass in such a cup, and there the chart decides.",
                {number(least->brix, 1), number(least->baume, 2)}));
    std::vector<Figure> figures{
        {"brix", sugar->degrees(), "True density", saySugar(*sugar)},
        {"uncertaintyBrix", uncertainty, "Standard uncertainty", say("%1 °Brix", {number(uncertainty, 2)})},
        {"addSapL", litres(remedy->add), "To add", remedy->add ? sayVolume(*remedy->add) : say("—")},
        {"boilOffL", litres(remedy->boilOff), "To boil off", remedy->boilOff ? sayVolume(*remedy->boilOff) : say("—")}};
    return Answer{.figures = std::move(figures),
                  .sum = std::move(sum),
                  .uncertainty =
                      say("One standard uncertainty is %1 °Brix, with the cup's temperature known to 1 °C. Printed hot "
                          "charts differ from this by up to 0.35 °Brix. Volumes are taken at 20 °C.",
                          {number(uncertainty, 2)}),
                  .source = "Float balance; ICUMSA SPS-4 (1998); glass of ISO 1768:1975",
                  .caution = hotCup};
}

} // namespace panside::sums
