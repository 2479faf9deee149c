// One row of the day book, by the table of day_vocabulary.h.
#include "core/boil/row_reader.h"

#include <cmath>

namespace panside {
namespace {

constexpr double mostVolume = 1000, mostMass = 1e6, deepest = 20, mostCount = 1e7; // m3, kg, m: beyond any house
constexpr std::array<Unit, 9> volumeOrMassUnits{Unit::L,  Unit::gal, Unit::kg,  Unit::lb, Unit::impgal,
                                                Unit::qt, Unit::pt,  Unit::cup, Unit::mL};
constexpr std::array<Unit, 9> volumeOrDepthUnits{Unit::L,  Unit::gal, Unit::mm,  Unit::in, Unit::impgal,
                                                 Unit::qt, Unit::pt,  Unit::cup, Unit::mL};
constexpr std::array<Unit, 2> degrees{Unit::degC, Unit::degF};

std::string exampleOf(const DayDeedRow& row, Key key) {
    const DayKeyRow its = keyOf(row.deed, key);
    const bool vessel = its.text == DayText::vessel || its.text == DayText::gear;
    const std::string_view kind = vessel ? "VESSEL" : key == Key::lot ? "CODE" : its.example;
    return std::string{its.name} + "=" + std::string{kind};
}

} // namespace

void RowReader::checkWhole(std::string_view field, std::string_view given, double value) {
    if (value != std::floor(value))
        fail(Slip::notWhole, field, given);
}

std::optional<DayAmount> RowReader::dayValue(const DayDeedRow& row, std::string& words) {
    std::optional<Written> written;
    switch (row.value) {
    case DayValue::none:
        noValue();
        return std::nullopt;
    case DayValue::volume:
        written = value({volumeUnits, 0, mostVolume}, row.valueNeeded);
        break;
    case DayValue::volumeOrMass:
        written = value({volumeOrMassUnits, 0, mostMass}, row.valueNeeded);
        break;
    case DayValue::volumeOrDepth: {
        const bool depth = row_.unit == "mm" || row_.unit == "in";
        written = value({volumeOrDepthUnits, 0, depth ? deepest : mostVolume}, row.valueNeeded);
        break;
    }
    case DayValue::count:
        if (row.valueNeeded && row_.value.empty())
            fail(Slip::valueMissing, "value", "", say("a whole number"));
        written = value({only(Unit::none), 0, mostCount}, row.valueNeeded);
        if (written)
            checkWhole("value", row_.value, written->number);
        break;
    case DayValue::percent:
        written = value({only(Unit::percent), 0, 1}, row.valueNeeded);
        break;
    case DayValue::traceOrWords:
        if (numberIn(row_.value)) {
            written = value({only(Unit::ppb), 0, 1}, false);
        } else {
            words = row_.value;
            if (!row_.unit.empty())
                fail(Slip::unitWrong, "unit", row_.unit);
        }
        break;
    }
    return written ? std::optional{DayAmount{written->si(), written->unit}} : std::nullopt;
}

// SI of a key that is a number; nullopt with a fault where it cannot be read, and for words.
std::optional<double> RowReader::dayNumber(const DayKeyRow& key, const std::string& given) {
    if (key.text == DayText::plain) {
        auto plain = numberIn(given);
        if (const auto written = writtenIn(given); !plain && written && written->unit == key.unit)
            plain = written->number;
        if (!plain)
            fail(Slip::detailValue, key.name, given,
                 key.unit == Unit::none ? say("a number") : say("a number of %1", {std::string{nameOf(key.unit)}}));
        else
            checkRange(key.name, given, *plain, key.unit, Form{only(key.unit), key.lowest, key.highest});
        if (plain && key.key == Key::broken)
            checkWhole(key.name, given, *plain);
        return plain ? std::optional{toSi(*plain, key.unit)} : std::nullopt;
    }
    const auto written = writtenIn(given);
    if (!written || dimensionOf(written->unit) != dimensionOf(key.unit)) {
        const bool heat = dimensionOf(key.unit) == Dimension::temperature;
        fail(numberIn(given) ? Slip::unitMissing : Slip::detailValue, key.name, given,
             heat ? aTemperature() : asWritten(std::string{key.example}));
        return std::nullopt;
    }
    const bool heat = dimensionOf(key.unit) == Dimension::temperature;
    checkRange(key.name, given, written->number, written->unit,
               Form{heat ? std::span<const Unit>{degrees} : std::span<const Unit>{&written->unit, 1}, key.lowest,
                    key.highest});
    return written->si();
}

void RowReader::dayPair(const DayDeedRow& row, Key key, DayRow& day) {
    const DayKeyRow its = keyOf(row.deed, key);
    auto given = detail_.use(its.name);
    if (!given || given->empty())
        return;
    DayPair pair{key, std::move(*given)};
    switch (its.text) {
    case DayText::words:
    case DayText::vessel:
    case DayText::gear:
    case DayText::choice: // another word is warned of by who reads the file
        break;
    case DayText::amount:
    case DayText::plain:
    case DayText::sapTemperature:
    case DayText::temperature:
        pair.si = dayNumber(its, pair.text).value_or(0);
        break;
    }
    day.pairs.push_back(std::move(pair));
}

What RowReader::day(Deed deed) {
    const DayDeedRow& row = panside::rowOf(deed);
    DayRow day{deed, {}, {}, {}};
    day.value = dayValue(row, day.words);
    for (const Key key : row.taken)
        dayPair(row, key, day);
    for (const Key key : row.needed)
        if (!day.of(key))
            fail(Slip::detailMissing, nameOf(key), "", asWritten(exampleOf(row, key)));
    if (!row.either.empty() &&
        std::none_of(row.either.begin(), row.either.end(), [&day](Key key) { return day.of(key); }))
        fail(Slip::detailMissing, nameOf(row.either[0]), "",
             say("%1 or %2", {exampleOf(row, row.either[0]), exampleOf(row, row.either[1])}));
    if ((deed == Deed::moved || deed == Deed::concentrated) && !fault_ &&
        nameKey(day.text(Key::from)) == nameKey(day.text(Key::to)))
        fail(Slip::intoItself, "to", day.text(Key::to));
    return day;
}

} // namespace panside
