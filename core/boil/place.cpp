#include "core/boil/place.h"

#include "core/boil/day_vocabulary.h"

#include <algorithm>
#include <array>

namespace panside {
namespace {

constexpr Brix solids = Brix::degrees(66.0), heaviest = Brix::degrees(68.9), heavier = Brix::degrees(66.9);
constexpr Temperature c20 = Temperature::celsius(20), f60 = Temperature::fahrenheit(60);
constexpr Source usRule{"21 CFR 168.140 (66 percent solids) and 7 CFR 52.5961 to .5966, 2015 (at most 68.9)", true};
constexpr Source canadaRule{"Canadian Grade Compendium, volume 7, in force December 2016", true};

constexpr PlaceLaw us(std::string_view name) {
    return {name, Country::unitedStates, solids, heaviest, c20, {}, usRule, name == "US"};
}
constexpr PlaceLaw canada(std::string_view name) {
    return {name, Country::canada, solids, heaviest, c20, {}, canadaRule, name == "Canada"};
}

constexpr std::array places{
    us("US"),
    us("Alabama"),
    us("Alaska"),
    us("Arizona"),
    us("Arkansas"),
    us("California"),
    us("Colorado"),
    us("Connecticut"),
    us("Delaware"),
    us("District of Columbia"),
    us("Florida"),
    us("Georgia"),
    us("Hawaii"),
    us("Idaho"),
    us("Illinois"),
    us("Indiana"),
    us("Iowa"),
    us("Kansas"),
    us("Kentucky"),
    us("Louisiana"),
    PlaceLaw{"Maine",
             Country::unitedStates,
             solids,
             heaviest,
             c20,
             {},
             {"Maine Revised Statutes, title 7, section 892-A, 2007 and 2013", true},
             true},
    us("Maryland"),
    us("Massachusetts"),
    us("Michigan"),
    us("Minnesota"),
    us("Mississippi"),
    us("Missouri"),
    us("Montana"),
    us("Nebraska"),
    us("Nevada"),
    PlaceLaw{"New Hampshire",
             Country::unitedStates,
             heavier,
             heaviest,
             c20,
             {},
             {"named on pages of Cornell University Extension, 2022; the most is the federal one", true},
             true},
    us("New Jersey"),
    us("New Mexico"),
    PlaceLaw{"New York",
             Country::unitedStates,
             solids,
             heaviest,
             c20,
             {},
             {"New York codes, title 1, part 270.1, about 2015", true},
             true},
    us("North Carolina"),
    us("North Dakota"),
    us("Ohio"),
    us("Oklahoma"),
    us("Oregon"),
    us("Pennsylvania"),
    us("Rhode Island"),
    us("South Carolina"),
    us("South Dakota"),
    us("Tennessee"),
    us("Texas"),
    us("Utah"),
    PlaceLaw{"Vermont",
             Country::unitedStates,
             heavier,
             heaviest,
             f60,
             36.0,
             {"Vermont maple regulation: 36 degrees Baume or 66.9 Brix at 60 degF by its own chart, 2015", true},
             true},
    us("Virginia"),
    us("Washington"),
    us("West Virginia"),
    us("Wisconsin"),
    us("Wyoming"),
    canada("Canada"),
    canada("Alberta"),
    canada("British Columbia"),
    canada("Manitoba"),
    canada("New Brunswick"),
    canada("Newfoundland and Labrador"),
    canada("Northwest Territories"),
    canada("Nova Scotia"),
    canada("Nunavut"),
    canada("Ontario"),
    canada("Prince Edward Island"),
    canada("Quebec"),
    canada("Saskatchewan"),
    canada("Yukon")};

constexpr std::array<std::string_view, 4> usWords{"Golden, delicate taste", "Amber, rich taste", "Dark, robust taste",
                                                  "Very dark, strong taste"};
constexpr std::array<std::string_view, 9> usOff{"metabolism", "buddy",     "sour sap", "scorched", "earthy",
                                                "woody",      "fermented", "defoamer", "chemical"};
constexpr std::array<std::string_view, 7> quebecOff{"slight trace",    "natural origin", "microbial", "chemical",
                                                    "uncharacterised", "buddy",          "ropy"};

} // namespace

std::span<const PlaceLaw> allPlaces() { return places; }

std::optional<std::size_t> placeNamed(std::string_view name) {
    std::string key = nameKey(name);
    if (key == "québec")
        key = "quebec";
    for (std::size_t i = 0; i < places.size(); ++i)
        if (nameKey(places[i].name) == key)
            return i;
    return std::nullopt;
}

std::string_view placeLike(std::string_view name) {
    const std::string key = nameKey(name);
    return std::min_element(places.begin(), places.end(),
                            [&key](const PlaceLaw& a, const PlaceLaw& b) {
                                return lettersBetween(nameKey(a.name), key) < lettersBetween(nameKey(b.name), key);
                            })
        ->name;
}

GradeWords gradeWords(const PlaceLaw& place) {
    return {usWords, place.country == Country::unitedStates
                         ? Source{"7 CFR 52.5961 to .5966, 2015", true}
                         : Source{"Canadian Grade Compendium, volume 7, in force December 2016", true}};
}

GradeWords offFlavours(const PlaceLaw& place) {
    if (place.name == "Quebec")
        return {quebecOff, {"bulk classification of the marketing board, as a study of 2018 lists it", true}};
    return {usOff, {"words of extension pages, 2017; common practice", true}};
}

LotRule lotRule(const PlaceLaw& place) {
    if (place.name == "Ontario")
        return {"a code on every container over 125 mL that the records explain; bought sap and syrup traced too",
                {"O. Reg. 119/11, as the ministry's page of 2017 tells it", true}};
    if (place.country == Country::canada)
        return {"a lot number or production code on every label",
                {"federal labelling rule in force December 2016", true}};
    if (place.name == "Vermont")
        return {"a batch code on every container", {"came with the grades of about 2014", true}};
    return {"none of its own is known here; a record of one step back and one step forward is expected",
            {"federal food records, as quoted", true}};
}

LeadLimit leadLimit(const PlaceLaw&) { return {250, {"often quoted of Ohio and New Hampshire, 2011 to 2018", true}}; }

} // namespace panside
