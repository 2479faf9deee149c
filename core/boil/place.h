#pragma once
// The law of a place as far as this program knows it: density, temperature it is stated at, grade words, off-flavours,
// lot code. Advice, not law: each figure says from where it is and how it was read, and each is open to change by the
// settings. The inspector decides.
#include "core/quantity/quantity.h"

#include <optional>
#include <span>
#include <string_view>

namespace panside {

enum class Country : std::uint8_t { unitedStates, canada };

struct Source {
    std::string_view text; // edition and date
    bool quoted;           // read only as others quote it
};

struct PlaceLaw {
    std::string_view name; // in English
    Country country;
    Brix least;                       // of the sugar, by mass
    std::optional<Brix> most;         // none: none is known
    Temperature statedAt;             // the temperature the density is stated at
    std::optional<double> leastBaume; // degrees on one paper scale, where the law has a chart of its own, which decides
    Source density;
    bool ownDensity; // a rule of its own; otherwise the federal one
};

// Every state, the District of Columbia, every province and territory; `US` and `Canada` for the federal rule alone.
std::span<const PlaceLaw> allPlaces();
// By its English name; blanks and case do not count. nullopt for a name that is none.
std::optional<std::size_t> placeNamed(std::string_view name);
// The name that is most like it.
std::string_view placeLike(std::string_view name);

// The words of a country's grades, from the lightest, and where they are from.
struct GradeWords {
    std::span<const std::string_view> words;
    Source source;
};
GradeWords gradeWords(const PlaceLaw& place);
// Words for what is wrong with a flavour.
GradeWords offFlavours(const PlaceLaw& place);
// What a lot code has to do there.
struct LotRule {
    std::string_view text;
    Source source;
};
LotRule lotRule(const PlaceLaw& place);
// Lead in syrup that is spoken of as too much.
struct LeadLimit {
    double partsPerBillion; // by mass
    Source source;
};
LeadLimit leadLimit(const PlaceLaw& place);

} // namespace panside
