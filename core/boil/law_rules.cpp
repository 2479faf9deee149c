#include "core/boil/law_rules.h"

#include "core/physics/baume.h"

#include <cmath>

namespace panside {

std::vector<LawRule> packingRules(const PlaceLaw& place) {
    constexpr LawRule full{"the container filled to at least 90 percent", {}};
    std::vector<LawRule> rules;
    if (place.country == Country::canada) {
        const bool ontario = place.name == "Ontario";
        rules.push_back(ontario ? LawRule{"packed at 85 °C, laid on its side 5 to 10 minutes",
                                          {"the ministry's page on mould in packed syrup, 2014", true}}
                                : LawRule{"packed at 82 to 85 °C or hotter",
                                          {"important practices of the federal inspectors", true}});
        rules.push_back({full.text, {"important practices of the federal inspectors", true}});
        return rules;
    }
    rules.push_back(
        {"at least 180 °F (82 °C) when the cap goes on", {"extension pages of several states; common practice", true}});
    rules.push_back(
        {"processing grade only in containers of 5 gallons and more", {"7 CFR 52.5961 to .5966, 2015", true}});
    if (place.name == "Ohio")
        rules.push_back({full.text, {"Ohio OAC 901:3-45-04", true}});
    if (place.name == "Wisconsin")
        rules.push_back({"a rule of its own on grades and labels: ask for it",
                         {"Wisconsin ATCP 87, known by its number only", true}});
    rules.push_back({"the volume of the label is meant at 68 °F (20 °C)", {"NIST Handbook 133", true}});
    return rules;
}

std::optional<LawRule> keepingRule(const PlaceLaw& place) {
    if (place.name == "Ontario")
        return LawRule{"a record of each lot", {"O. Reg. 119/11, as the ministry's page of 2017 tells it", true}};
    return std::nullopt;
}

std::optional<ChartReading> leastReading(const PlaceLaw& place, Temperature cup) {
    return place.leastBaume ? vermontChart(cup) : std::nullopt; // Vermont's is the only one known
}

std::optional<Brix> sugarByChart(const DensityCheck& check, const PlaceLaw& law) {
    constexpr double scaleWithin = 1; // degF
    const Temperature made = Temperature::fahrenheit(60);
    if (check.with != Instrument::hydrometer || !check.cup ||
        (check.scale && std::abs(check.scale->value.fahrenheit() - made.fahrenheit()) > scaleWithin))
        return std::nullopt;
    const auto least = leastReading(law, check.cup->value);
    if (!least)
        return std::nullopt;
    if (check.unit != Unit::baume)
        return law.least + Brix::degrees(check.reading - least->brix);
    const auto shown = sugarOfBaume({check.reading}, made), asked = sugarOfBaume({least->baume}, made);
    return shown && asked ? std::optional{law.least + (*shown - *asked)} : std::nullopt;
}

bool isLegalByChart(const DensityCheck& check, const PlaceLaw& law) {
    constexpr double halfStep = 0.05; // Brix: of the paper scale, as it is printed
    const auto sugar = sugarByChart(check, law);
    return sugar && sugar->degrees() >= law.least.degrees() - halfStep;
}

} // namespace panside
