#include "core/probe/mapping.h"

#include "core/boil/log_limits.h"
#include "core/boil/vocabulary.h"
#include "core/physics/platinum.h"
#include "core/quantity/enum_count.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

static_assert(hasCount<NoReading, noReadingCount>());

const std::string* junctionField(const FieldRule& rule) {
    return rule.junction ? std::get_if<std::string>(&*rule.junction) : nullptr;
}

// A raw voltage or resistance is written down as the temperature it means.
Unit writtenUnit(const FieldRule& rule) {
    return rule.unit == Unit::mV || rule.unit == Unit::ohm ? rowOf(*rule.reads).exported : rule.unit;
}

} // namespace

std::size_t columnIn(std::string_view is) {
    const auto number = numberIn(is);
    const bool isColumn =
        number && *number >= 1 && *number <= static_cast<double>(LineFields::most) && *number == std::floor(*number);
    return isColumn ? static_cast<std::size_t>(*number) : 0;
}

std::string_view noReadingText(NoReading why) {
    switch (why) {
    case NoReading::none:
        return "";
    case NoReading::fieldMissing:
        return "the line has no such field";
    case NoReading::notNumber:
        return "the probe gives no number for it";
    case NoReading::noAnswer:
        return "the instrument did not answer";
    case NoReading::junctionMissing:
        return "the thermocouple's junction temperature is missing";
    case NoReading::outsideTable:
        return "outside what this sensor can give: open, shorted or reversed?";
    case NoReading::impossible:
        return "colder than anything can be: wrong unit or field?";
    }
    return "";
}

std::string probeNameOf(const PortRule& port, std::size_t field) {
    const auto& fields = port.fields;
    const auto sameReading = [&](const FieldRule& other) { return other.reads && other.reads == fields[field].reads; };
    const auto before = std::count_if(fields.begin(), fields.begin() + static_cast<std::ptrdiff_t>(field), sameReading);
    return before == 0 ? port.name : port.name + ' ' + std::to_string(before + 1);
}

Mapping::Mapping(PortRule port) : port_{std::move(port)} {
    for (std::size_t i = 0; i < port_.fields.size(); ++i)
        places_.push_back({columnIn(port_.fields[i].is), probeNameOf(port_, i)});
}

void Mapping::map(const ProbeLine& line, const Sink& sink) const {
    const auto numberOf = [](const Field* field) { return field ? field->number : std::nullopt; };
    for (std::size_t i = 0; i < port_.fields.size(); ++i) {
        const auto& rule = port_.fields[i];
        if (!rule.reads)
            continue;
        const Field* field = find(line, rule.is, places_[i].column);
        if (!field) {
            sink({i, std::nullopt, NoReading::fieldMissing});
            continue;
        }
        const auto* other = junctionField(rule);
        sink(outcome(i, field->number, other ? numberOf(find(line, *other, columnIn(*other))) : std::nullopt));
    }
}

std::size_t Mapping::lastColumn() const {
    std::size_t last = 0;
    for (std::size_t i = 0; i < port_.fields.size(); ++i)
        if (port_.fields[i].reads)
            last = std::max(last, places_[i].column);
    return last;
}

const Field* Mapping::find(const ProbeLine& line, std::string_view is, std::size_t column) const {
    if (line.encoding == Encoding::columns)
        return column >= 1 && column <= line.fields.size() ? &line.fields[column - 1] : nullptr;
    const auto found = std::ranges::find(line.fields, is, &Field::name);
    return found == line.fields.end() ? nullptr : &*found;
}

std::optional<std::size_t> Mapping::junctionOf(std::size_t rule) const {
    const auto* name = junctionField(port_.fields[rule]);
    if (!name)
        return std::nullopt;
    const auto found = std::ranges::find(port_.fields, *name, &FieldRule::is);
    return found == port_.fields.end() ? std::nullopt
                                       : std::optional{static_cast<std::size_t>(found - port_.fields.begin())};
}

FieldOutcome Mapping::outcome(std::size_t index, std::optional<double> number, std::optional<double> junction) const {
    const auto& rule = port_.fields[index];
    if (!number || !std::isfinite(*number))
        return {index, std::nullopt, NoReading::notNumber};
    const auto without = [&](NoReading why) { return FieldOutcome{index, std::nullopt, why, number}; };
    if (junctionField(rule)) {
        // The junction's own field says in which unit it is, and may be a raw sensor too, though not a thermocouple.
        const auto other = junctionOf(index);
        const FieldRule plain{.is = {}, .unit = Unit::degC};
        double at = 0;
        if (!junction || toSeries(other ? port_.fields[*other] : plain, *junction, {}, at) != NoReading::none)
            return without(NoReading::junctionMissing);
        junction = at;
    }
    double si = 0;
    if (const auto why = toSeries(rule, *number, junction, si); why != NoReading::none)
        return without(why);
    return {index, Reading{*rule.reads, si, writtenUnit(rule), places_[index].probe}, NoReading::none, number};
}

NoReading Mapping::toSeries(const FieldRule& rule, double number, std::optional<double> junction, double& si) const {
    const double said = number + rule.offset;
    if (rule.unit == Unit::mV)
        return thermocouple(rule, said, junction, si);
    if (rule.unit == Unit::ohm) {
        const auto temperature = platinumTemperature(Resistance::ohm(said));
        if (!temperature)
            return NoReading::outsideTable;
        si = temperature->kelvin();
        return NoReading::none;
    }
    si = toSi(said, rule.unit);
    if (std::fabs(said) > largestNumber || (dimensionOf(rule.unit) == Dimension::temperature && si < 0))
        return NoReading::impossible;
    return NoReading::none;
}

NoReading Mapping::thermocouple(const FieldRule& rule, double millivolts, std::optional<double> junction,
                                double& si) const {
    const auto* fixed = rule.junction ? std::get_if<Said<Temperature>>(&*rule.junction) : nullptr;
    if (!rule.thermocouple || (!fixed && !junction))
        return NoReading::junctionMissing;
    const auto otherEnd = fixed ? fixed->value : Temperature::kelvin(*junction);
    const auto temperature = thermocoupleTemperature(*rule.thermocouple, Voltage::millivolt(millivolts), otherEnd);
    if (!temperature)
        return NoReading::outsideTable;
    si = temperature->kelvin();
    return NoReading::none;
}

} // namespace panside
