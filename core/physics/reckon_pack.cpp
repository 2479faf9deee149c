// Sums of the packing table: weight to fill, what a drum gives, the colour of a blend.
#include "core/physics/pack.h"
#include "core/physics/reckon_kinds.h"
#include "core/physics/sugar_density.h"

namespace panside::sums {
namespace {

constexpr Temperature labelledAt = Temperature::celsius(20);
constexpr std::string_view noLegalScale =
    "No scale here is legal for trade: sell by one that is inspected. Take off the empty container's own weight. Hot "
    "syrup burns deeply: carry it covered.";
constexpr std::string_view measureColour = "An estimate: measure before it is labelled.";

std::string_view classWords(std::string_view name) {
    if (name == "golden")
        return say("golden").text;
    if (name == "amber")
        return say("amber").text;
    return name == "dark" ? say("dark").text : say("very dark").text;
}

// Kilograms with the grams that a packing scale shows.
Sentence sayFill(double kg) { return say("%1 kg (%2 lb)", {number(kg, 3), number(kg / Mass::kilogramPerPound, 3)}); }

} // namespace

Answer reckonFill(Reader& in) {
    const auto size = in.amount<Volume>("size", {0.001, 2000, Unit::L});
    const auto sugar = in.sugar("density", labelledAt);
    const Temperature at = in.has("at") ? in.temperature("at", 0, 105) : labelledAt;
    const double kg = (*sugarDensity(sugar, at) * size).kilogram();
    const double hot = sugarDensity(sugar, labelledAt)->si() / sugarDensity(sugar, Temperature::celsius(85))->si();
    return {
        .figures = {{"kg", kg, "Weight of the content", sayFill(kg)}},
        .sum = {say("A liter of %1 °Brix weighs %2 kg at %3 °C.",
                    {number(sugar.degrees(), 2), number(sugarDensity(sugar, at)->si() / 1e3, 4),
                     number(at.celsius(), 1)}),
                say("The same content fills %1 percent more at 85 °C: a container that is brim-full of hot syrup is so "
                    "much short when it is cold.",
                    {number((hot - 1) * 100, 1)})},
        .uncertainty = say("0.1 °Brix wrong in the syrup is 0.05 percent of the weight."),
        .source = "ICUMSA SPS-4 (1998). Volumes on labels are meant at 68 °F: NIST Handbook 133, as quoted",
        .caution = noLegalScale};
}

Answer reckonContainers(Reader& in) {
    const auto volume = in.amount<Volume>("volume", {0, 100000, Unit::L});
    const auto sugar = in.sugar("density", labelledAt);
    std::vector<Volume> sizes;
    for (const std::string& written : in.all("size"))
        sizes.push_back(Volume::ofSi(in.siOf("size", written, {0.001, 2000, Unit::L})));
    const Containers found = *containersFrom(volume, sizes);
    std::vector<double> counts;
    std::vector<Sentence> sum;
    std::string all;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        counts.push_back(static_cast<double>(found.counts[i]));
        const std::string count = number(counts.back(), 0);
        all += (i > 0 ? " + " : "") + count;
        sum.push_back(say(
            "%1 of %2 L, each to be filled to %3 kg.",
            {count, number(sizes[i].litre(), 3), number((*sugarDensity(sugar, labelledAt) * sizes[i]).kilogram(), 3)}));
    }
    return {.figures = {{"counts", {}, "Containers", say("%1", {all}), std::move(counts)},
                        {"leftL", found.left.litre(), "Left over", sayVolume(found.left)}},
            .sum = std::move(sum),
            .uncertainty = say("At 20 °C, with nothing broken, tasted or left in the filler."),
            .source = "Arithmetic, the largest filled first; weights by ICUMSA SPS-4 (1998)",
            .caution = noLegalScale};
}

Answer reckonColour(Reader& in) {
    std::vector<LitPart> parts;
    std::vector<Sentence> sum;
    for (const std::string& written : in.all("part")) {
        const auto [volume, rest] =
            in.volumeOf("part", written, 100000,
                        say("a part is a volume and its light with @ between them, as in %1.", {"10gal@62percent"}));
        parts.push_back({volume, in.siOf("part", rest, {0.1, 100, Unit::percent})});
        sum.push_back(say("%1 L that lets %2 percent of light through.",
                          {number(volume.litre(), 2), number(parts.back().light * 100, 1)}));
    }
    const auto light = lightThrough(parts);
    if (!light)
        in.refuse("part", {}, {say("there is nothing to mix: all volumes are zero.")});
    const auto name = colourClass(*light);
    sum.push_back(say("What each takes away adds up by volume: %1 percent is left.", {number(*light * 100, 1)}));
    return {.figures = {{"percent", *light * 100, "Light", say("%1 percent", {number(*light * 100, 1)})},
                        {"class", {}, "Class by light", say(classWords(name)), {}, name}},
            .sum = std::move(sum),
            .uncertainty = say("About 3 percent of light either way; clouded or unfiltered syrup is not covered."),
            .source = "Law of Beer and Lambert. Classes at 75, 50 and 25 percent: 7 CFR 52.5961, as quoted",
            .caution = measureColour};
}

} // namespace panside::sums
