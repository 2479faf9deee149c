#pragma once
// The words of the day book: one table of rows, one of keys, shared by reader, writer, check, ledger and screens.
#include "core/boil/day_row.h"

#include <span>

namespace panside {

// What a row's value is.
enum class DayValue : std::uint8_t { none, volume, volumeOrMass, volumeOrDepth, count, percent, traceOrWords };

// What a key's text is.
enum class DayText : std::uint8_t {
    words,  // anything
    vessel, // a vessel's name
    gear,   // a vessel's name, or gear that nobody need have told of
    choice, // one of the key's words; another is kept, and named in a warning
    amount, // a number and unit written together, of the key's dimension
    plain,  // a number that need not have its one unit
    sapTemperature,
    temperature
};

struct DayDeedRow {
    Deed deed;
    std::string_view name;
    DayValue value;
    bool valueNeeded;
    std::span<const Key> needed; // of which every one must be there
    std::span<const Key> either; // of which at least one must be
    std::span<const Key> taken;  // all that it may have
};
const DayDeedRow& rowOf(Deed deed);
std::span<const DayDeedRow> allDeeds();
std::optional<Deed> deedNamed(std::string_view name);

struct DayKeyRow {
    Key key;
    std::string_view name;
    DayText text;
    std::string_view choices; // words with | between
    Unit unit;                // whose dimension an amount has
    double lowest, highest;   // SI of that dimension
    std::string_view example;
};
// What a key means in a row: `of` of a packed row is glass or tin, of a tested one a vessel.
DayKeyRow keyOf(Deed deed, Key key);
std::string_view nameOf(Key key);

// Is `word` one of `choices`?
bool isChoice(std::string_view choices, std::string_view word);

// A name as it is compared: without blanks, all small.
std::string nameKey(std::string_view name);
// How many letters must be changed, added or taken away to make one of the other.
std::size_t lettersBetween(std::string_view a, std::string_view b);

} // namespace panside
