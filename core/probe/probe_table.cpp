#include "core/probe/probe_table.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <sstream>

namespace panside {
namespace {

// The value as it stands in the file, in short.
std::string shown(const toml::node& node) {
    if (const auto* text = node.as_string())
        return text->get();
    std::ostringstream out;
    node.visit([&](const auto& value) { out << value; });
    constexpr std::size_t enough = 60;
    auto line = out.str().substr(0, enough);
    std::ranges::replace(line, '\n', ' ');
    return line;
}

} // namespace

const toml::node* ProbeTable::node(std::string_view key) {
    asked_.emplace(key);
    return table_.get(key);
}

std::optional<std::string> ProbeTable::text(std::string_view key) {
    const auto* value = node(key);
    if (!value)
        return std::nullopt;
    if (const auto* text = value->as_string())
        return text->get();
    fault(ProbeSlip::wrongKind, key, say("a text in quotes"));
    return std::nullopt;
}

std::optional<std::string> ProbeTable::textOrNumber(std::string_view key) {
    const auto* value = node(key);
    if (value && value->is_integer())
        return fmt::format("{}", value->as_integer()->get());
    return text(key);
}

std::optional<double> ProbeTable::number(std::string_view key, double lowest, double highest) {
    const auto* value = node(key);
    if (!value)
        return std::nullopt;
    if (!value->is_number()) {
        fault(ProbeSlip::wrongKind, key, say("a number without quotes"));
        return std::nullopt;
    }
    const auto number = *value->value<double>();
    if (!std::isfinite(number) || number < lowest || number > highest) {
        fault(ProbeSlip::outOfRange, key,
              say("a number from %1 to %2", {fmt::format("{}", lowest), fmt::format("{}", highest)}));
        return std::nullopt;
    }
    return number;
}

std::optional<int> ProbeTable::whole(std::string_view key, int lowest, int highest) {
    const auto* value = node(key);
    if (!value)
        return std::nullopt;
    const Sentence wanted = say("a whole number from %1 to %2", {std::to_string(lowest), std::to_string(highest)});
    if (!value->is_integer()) {
        fault(ProbeSlip::wrongKind, key, wanted);
        return std::nullopt;
    }
    const auto number = value->as_integer()->get();
    if (number < lowest || number > highest) {
        fault(ProbeSlip::outOfRange, key, wanted);
        return std::nullopt;
    }
    return static_cast<int>(number);
}

std::optional<bool> ProbeTable::flag(std::string_view key) {
    const auto* value = node(key);
    if (!value)
        return std::nullopt;
    if (const auto* flag = value->as_boolean())
        return flag->get();
    fault(ProbeSlip::wrongKind, key, say("true or false, without quotes"));
    return std::nullopt;
}

std::vector<const toml::table*> ProbeTable::tables(std::string_view key) {
    std::vector<const toml::table*> found;
    const auto* value = node(key);
    if (!value)
        return found;
    const auto* array = value->as_array();
    if (!array || !array->is_array_of_tables()) {
        fault(ProbeSlip::wrongKind, key,
              say("a heading [[%1]] before each of them", {key == "field" ? "port.field" : std::string{key}}));
        return found;
    }
    for (const auto& element : *array)
        found.push_back(element.as_table());
    return found;
}

void ProbeTable::missing(std::string_view key, Sentence wanted) {
    at(table_.source(), ProbeSlip::missingKey, key, {}, std::move(wanted));
}

void ProbeTable::fault(ProbeSlip slip, std::string_view key, Sentence wanted) {
    const auto& value = *table_.get(key);
    at(value.source(), slip, key, shown(value), std::move(wanted));
}

void ProbeTable::unfit(std::initializer_list<std::string_view> keys, std::string_view belongsTo) {
    for (const auto key : keys)
        if (node(key))
            fault(ProbeSlip::notFor, key, asWritten(std::string{belongsTo}));
}

void ProbeTable::finish(std::string_view known) {
    for (const auto& [key, value] : table_)
        if (asked_.find(key.str()) == asked_.end())
            at(key.source(), ProbeSlip::unknownKey, key.str(), {}, asWritten(std::string{known}));
}

void ProbeTable::at(const toml::source_region& place, ProbeSlip slip, std::string_view key, std::string given,
                    Sentence wanted) {
    faults_.push_back(
        {slip, place.begin.line, place.begin.column, std::string{key}, std::move(given), std::move(wanted)});
}

} // namespace panside
