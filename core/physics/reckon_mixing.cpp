// Sums of amounts: sap for syrup, and blends.
#include "core/physics/mixing.h"
#include "core/physics/reckon_kinds.h"
#include "core/physics/sap.h"

namespace panside::sums {
namespace {

constexpr Temperature atTwenty = Temperature::celsius(20);
constexpr std::string_view planning =
    "For planning. Sugar also stays in the pans, the filter and the drums: a season's total is "
    "always worse.";
constexpr std::string_view testAgain =
    "Stir well, heat again and test again: the hydrometer decides. Note which lots went in.";

Portion portionIn(Reader& in, const std::string& written) {
    const auto [volume, sugar] =
        in.volumeOf("part", written, 100000,
                    say("a part is a volume and a density with @ between them, as in %1.", {"10gal@68.9brix"}));
    return {volume, in.sugarIn("part", sugar, atTwenty)};
}

} // namespace

Answer reckonSap(Reader& in) {
    const Brix sap = in.sugar("sap", atTwenty), syrup = in.sugar("density", atTwenty);
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
