#include "core/boil/day_vocabulary.h"

#include "core/quantity/enum_count.h"

#include <algorithm>
#include <array>
#include <numeric>
#include <vector>

namespace panside {
namespace {

constexpr std::array vesselNeeds{Key::name};
constexpr std::array vesselKeys{Key::name, Key::kind, Key::shape, Key::tare, Key::material, Key::lead, Key::out};
constexpr std::array toNeeds{Key::to};
constexpr std::array gatheredKeys{Key::to, Key::from, Key::taps, Key::brix, Key::with, Key::cal, Key::temp, Key::clear};
constexpr std::array fromToNeeds{Key::from, Key::to};
constexpr std::array movedKeys{Key::from, Key::to, Key::temp, Key::washed};
constexpr std::array inNeeds{Key::in};
constexpr std::array dippedKeys{Key::in, Key::temp, Key::brix, Key::with, Key::cal};
constexpr std::array concentratedNeeds{Key::from, Key::to, Key::brix};
constexpr std::array concentratedKeys{Key::from, Key::to, Key::brix, Key::brix_in, Key::hours, Key::washed, Key::temp};
constexpr std::array tradeKeys{Key::what, Key::from, Key::to, Key::vessel, Key::brix, Key::price, Key::temp, Key::lot};
constexpr std::array fromNeeds{Key::from};
constexpr std::array lostKeys{Key::from, Key::why, Key::temp};
constexpr std::array emptiedKeys{Key::to, Key::washed, Key::chased, Key::temp, Key::brix};
constexpr std::array pressKeys{Key::from, Key::to, Key::aid, Key::papers, Key::temp, Key::heel, Key::result};
constexpr std::array vesselOrLot{Key::vessel, Key::lot};
constexpr std::array gradedKeys{Key::vessel,  Key::lot, Key::light_class, Key::with,
                                Key::flavour, Key::off, Key::sample};
constexpr std::array packedNeeds{Key::lot, Key::from, Key::size};
constexpr std::array packedKeys{Key::lot,    Key::from, Key::size,   Key::of,  Key::filler,
                                Key::capped, Key::brix, Key::broken, Key::laid};
constexpr std::array lotNeeds{Key::lot};
constexpr std::array shippedKeys{Key::lot, Key::size, Key::to, Key::from, Key::price, Key::why};
constexpr std::array vesselNeed{Key::vessel};
constexpr std::array cleanedKeys{Key::vessel, Key::with, Key::rinsed, Key::checked};
constexpr std::array ofNeeds{Key::of};
constexpr std::array testedKeys{Key::of, Key::tested_for};
constexpr std::span<const Key> nothing{};

using V = DayValue;
constexpr std::array<DayDeedRow, deedCount> deeds{{
    {Deed::vessel, "vessel", V::volume, false, vesselNeeds, nothing, vesselKeys},
    {Deed::gathered, "gathered", V::volume, true, toNeeds, nothing, gatheredKeys},
    {Deed::moved, "moved", V::volume, false, fromToNeeds, nothing, movedKeys},
    {Deed::dipped, "dipped", V::volumeOrDepth, true, inNeeds, nothing, dippedKeys},
    {Deed::concentrated, "concentrated", V::volume, true, concentratedNeeds, nothing, concentratedKeys},
    {Deed::bought, "bought", V::volumeOrMass, true, nothing, nothing, tradeKeys},
    {Deed::sold, "sold", V::volumeOrMass, false, nothing, nothing, tradeKeys},
    {Deed::lost, "lost", V::volume, false, fromNeeds, nothing, lostKeys},
    {Deed::pans_emptied, "pans_emptied", V::volume, false, nothing, nothing, emptiedKeys},
    {Deed::press_on, "press_on", V::volume, false, nothing, nothing, pressKeys},
    {Deed::press_off, "press_off", V::volume, false, nothing, nothing, pressKeys},
    {Deed::graded, "graded", V::percent, false, nothing, vesselOrLot, gradedKeys},
    {Deed::packed, "packed", V::count, true, packedNeeds, nothing, packedKeys},
    {Deed::shipped, "shipped", V::count, true, lotNeeds, nothing, shippedKeys},
    {Deed::came_back, "came_back", V::count, true, lotNeeds, nothing, shippedKeys},
    {Deed::destroyed, "destroyed", V::count, true, lotNeeds, nothing, shippedKeys},
    {Deed::cleaned, "cleaned", V::none, false, vesselNeed, nothing, cleanedKeys},
    {Deed::tested, "tested", V::traceOrWords, false, ofNeeds, nothing, testedKeys},
}};

using T = DayText;
constexpr double zero = 273.15;
constexpr double sapColdest = zero - 5, sapWarmest = zero + 35; // sap in a bucket or a tank, common practice, no source
constexpr double coldest = zero - 10, hottest = zero + 115;
constexpr DayKeyRow wordsOf(Key key, std::string_view name) { return {key, name, T::words, "", Unit::none, 0, 0, ""}; }
constexpr DayKeyRow vesselOf(Key key, std::string_view name) {
    return {key, name, T::vessel, "", Unit::none, 0, 0, "drum 7"};
}
constexpr DayKeyRow choiceOf(Key key, std::string_view name, std::string_view choices) {
    return {key, name, T::choice, choices, Unit::none, 0, 0, ""};
}
constexpr DayKeyRow amountOf(Key key, std::string_view name, Unit unit, double low, double high,
                             std::string_view example) {
    return {key, name, T::amount, "", unit, low, high, example};
}
constexpr DayKeyRow plainOf(Key key, std::string_view name, Unit unit, double low, double high,
                            std::string_view example) {
    return {key, name, T::plain, "", unit, low, high, example};
}
constexpr DayKeyRow heatOf(Key key, std::string_view name, DayText text, double low, double high,
                           std::string_view example) {
    return {key, name, text, "", Unit::degC, low, high, example};
}

constexpr std::array<DayKeyRow, keyCount> keys{{
    vesselOf(Key::name, "name"),
    choiceOf(Key::kind, "kind", "gather|truck|hold|feed|concentrate|pail|filter|drum|canner"),
    wordsOf(Key::shape, "shape"),
    amountOf(Key::tare, "tare", Unit::kg, 0, 10000, "20kg"),
    wordsOf(Key::material, "material"),
    choiceOf(Key::lead, "lead", "none|suspect|unknown"),
    choiceOf(Key::out, "out", "yes|no"),
    vesselOf(Key::to, "to"),
    vesselOf(Key::from, "from"),
    plainOf(Key::taps, "taps", Unit::none, 0, 1e7, "120"),
    plainOf(Key::brix, "brix", Unit::brix, 0, 0.85, "2.1"),
    wordsOf(Key::with, "with"),
    heatOf(Key::cal, "cal", T::temperature, zero, zero + 105, "38degF"),
    heatOf(Key::temp, "temp", T::temperature, coldest, hottest, "41degF"),
    choiceOf(Key::clear, "clear", "clear|cloudy|ropy"),
    vesselOf(Key::in, "in"),
    plainOf(Key::brix_in, "brix_in", Unit::brix, 0, 0.85, "2.1"),
    plainOf(Key::hours, "hours", Unit::none, 0, 1000, "2.5"),
    wordsOf(Key::washed, "washed"),
    choiceOf(Key::what, "what", "sap|concentrate|syrup"),
    vesselOf(Key::vessel, "vessel"),
    wordsOf(Key::price, "price"),
    wordsOf(Key::why, "why"),
    wordsOf(Key::chased, "chased"),
    wordsOf(Key::aid, "aid"),
    wordsOf(Key::papers, "papers"),
    amountOf(Key::heel, "heel", Unit::L, 0, 1, "2L"),
    wordsOf(Key::result, "result"),
    wordsOf(Key::lot, "lot"),
    wordsOf(Key::light_class, "class"),
    wordsOf(Key::flavour, "flavour"),
    wordsOf(Key::off, "off"),
    wordsOf(Key::sample, "sample"),
    amountOf(Key::size, "size", Unit::L, 1e-6, 2, "1pt"),
    {Key::of, "of", T::gear, "", Unit::none, 0, 0, "drum 7"},
    heatOf(Key::filler, "filler", T::temperature, zero, hottest, "185degF"),
    heatOf(Key::capped, "capped", T::temperature, zero, hottest, "182degF"),
    plainOf(Key::broken, "broken", Unit::none, 0, 1e7, "2"),
    plainOf(Key::laid, "laid", Unit::min, 0, 86400, "10"),
    wordsOf(Key::rinsed, "rinsed"),
    wordsOf(Key::checked, "checked"),
    wordsOf(Key::tested_for, "for"),
}};

static_assert(hasCount<Deed, deedCount>());
static_assert(hasCount<Key, keyCount>());
static_assert(inOrder(deeds, &DayDeedRow::deed) && inOrder(keys, &DayKeyRow::key));

bool isTrade(Deed deed) {
    return deed == Deed::bought || deed == Deed::sold || deed == Deed::shipped || deed == Deed::came_back ||
           deed == Deed::destroyed;
}

} // namespace

const DayDeedRow& rowOf(Deed deed) { return deeds[static_cast<std::size_t>(deed)]; }
std::span<const DayDeedRow> allDeeds() { return deeds; }

std::optional<Deed> deedNamed(std::string_view name) {
    for (const DayDeedRow& row : deeds)
        if (row.name == name)
            return row.deed;
    return std::nullopt;
}

DayKeyRow keyOf(Deed deed, Key key) {
    DayKeyRow row = keys[static_cast<std::size_t>(key)];
    if ((key == Key::from && deed == Deed::gathered) || ((key == Key::from || key == Key::to) && isTrade(deed)))
        return wordsOf(key, row.name);
    if (key == Key::temp && deed == Deed::gathered) {
        row.text = T::sapTemperature;
        row.lowest = sapColdest;
        row.highest = sapWarmest;
    }
    if (key == Key::of && deed == Deed::packed)
        return choiceOf(key, row.name, "glass|plastic|tin|drum");
    if (key == Key::vessel && deed == Deed::cleaned)
        row.text = T::gear;
    return row;
}

std::string_view nameOf(Key key) { return keys[static_cast<std::size_t>(key)].name; }

bool isChoice(std::string_view choices, std::string_view word) {
    while (!choices.empty()) {
        const auto end = std::min(choices.find('|'), choices.size());
        if (choices.substr(0, end) == word)
            return true;
        choices.remove_prefix(std::min(end + 1, choices.size()));
    }
    return false;
}

std::string nameKey(std::string_view name) {
    std::string key;
    key.reserve(name.size());
    for (std::size_t i = 0; i < name.size(); ++i) {
        const char c = name[i];
        if (c == ' ' || c == '\t')
            continue;
        const auto next = i + 1 < name.size() ? static_cast<unsigned char>(name[i + 1]) : 0U;
        if (c == '\xC2' && next == 0xA0) { // a blank that does not break
            ++i;
        } else if (c == '\xC3' && next >= 0x80 && next <= 0x9E && next != 0x97) { // À to Þ
            key += c;
            key += static_cast<char>(next + 0x20);
            ++i;
        } else {
            key += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    return key;
}

std::size_t lettersBetween(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t corner = row[0];
        row[0] = i;
        for (std::size_t k = 1; k <= b.size(); ++k) {
            const std::size_t over = row[k];
            row[k] = std::min({row[k] + 1, row[k - 1] + 1, corner + (a[i - 1] != b[k - 1])});
            corner = over;
        }
    }
    return row.back();
}

} // namespace panside
