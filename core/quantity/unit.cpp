#include "core/quantity/unit.h"

#include "core/quantity/conversion.h"
#include "core/quantity/enum_count.h"
#include "core/quantity/quantity.h"

#include <array>
#include <charconv>
#include <cmath>

namespace panside {
namespace {

struct Row {
    Unit unit;
    std::string_view name;
    Dimension dimension;
    Conversion conversion;
};

constexpr std::array<Row, unitCount> table{{
    {Unit::none, "", Dimension::none, {1}},
    {Unit::degC, "degC", Dimension::temperature, {1, 1, 273.15}},
    {Unit::degF, "degF", Dimension::temperature, {1, 1.8, 459.67}},
    {Unit::K, "K", Dimension::temperatureDifference, {1}},
    {Unit::kPa, "kPa", Dimension::pressure, {1e3}},
    {Unit::hPa, "hPa", Dimension::pressure, {1e2}},
    {Unit::inHg, "inHg", Dimension::pressure, {Pressure::pascalPerInHg}},
    {Unit::psi, "psi", Dimension::pressure, {Pressure::pascalPerPsi}},
    {Unit::mm, "mm", Dimension::length, {1, 1e3}},
    {Unit::in, "in", Dimension::length, {0.0254}},
    {Unit::m, "m", Dimension::length, {1}},
    {Unit::ft, "ft", Dimension::length, {0.3048}},
    {Unit::m2, "m2", Dimension::area, {1}},
    {Unit::ft2, "ft2", Dimension::area, {Area::squareMetrePerSquareFoot}},
    {Unit::L, "L", Dimension::volume, {1, 1e3}},
    {Unit::gal, "gal", Dimension::volume, {Volume::litresPerGallon, 1e3}},
    {Unit::Lph, "L/h", Dimension::volumeFlow, {1, 3.6e6}},
    {Unit::galph, "gal/h", Dimension::volumeFlow, {Volume::litresPerGallon, 3.6e6}},
    {Unit::kg, "kg", Dimension::mass, {1}},
    {Unit::lb, "lb", Dimension::mass, {Mass::kilogramPerPound}},
    {Unit::brix, "brix", Dimension::sugar, {1, 1e2}},
    {Unit::baume, "baume", Dimension::sugar, {1}},
    {Unit::percent, "percent", Dimension::share, {1, 1e2}},
    {Unit::min, "min", Dimension::time, {60}},
    {Unit::s, "s", Dimension::time, {1}},
    {Unit::mV, "mV", Dimension::voltage, {1, 1e3}},
    {Unit::ohm, "ohm", Dimension::resistance, {1}},
    {Unit::impgal, "impgal", Dimension::volume, {Volume::litresPerImperialGallon, 1e3}},
    {Unit::qt, "qt", Dimension::volume, {Volume::litresPerGallon, 4e3}},
    {Unit::pt, "pt", Dimension::volume, {Volume::litresPerGallon, 8e3}},
    {Unit::cup, "cup", Dimension::volume, {Volume::litresPerGallon, 16e3}},
    {Unit::mL, "mL", Dimension::volume, {1, 1e6}},
    {Unit::ppb, "ppb", Dimension::trace, {1, 1e9}},
    {Unit::years, "years", Dimension::age, {31557600}},
}};

constexpr const Row& rowOf(Unit unit) { return table[static_cast<std::size_t>(unit)]; }

static_assert(hasCount<Unit, unitCount>());
static_assert(inOrder(table, &Row::unit));

} // namespace

std::optional<Unit> unitNamed(std::string_view name) {
    for (const Row& row : table)
        if (row.unit != Unit::none && row.name == name)
            return row.unit;
    return std::nullopt;
}

std::string_view nameOf(Unit unit) { return rowOf(unit).name; }
Dimension dimensionOf(Unit unit) { return rowOf(unit).dimension; }
Conversion conversionOf(Unit unit) { return rowOf(unit).conversion; }
double toSi(double number, Unit unit) { return rowOf(unit).conversion.toSi(number); }
double fromSi(double si, Unit unit) { return rowOf(unit).conversion.fromSi(si); }
double differenceToSi(double number, Unit unit) {
    return number * rowOf(unit).conversion.scale / rowOf(unit).conversion.divisor;
}

std::optional<double> numberIn(std::string_view text) {
    if (!text.empty() && text.front() == '+') {
        text.remove_prefix(1);
        if (!text.empty() && text.front() == '-')
            return std::nullopt;
    }
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(number))
        return std::nullopt;
    return number;
}

std::optional<Written> writtenIn(std::string_view text) {
    // The unit begins at the first letter that is not part of an exponent: try the longest number first.
    for (std::size_t split = text.size(); split-- > 1;) {
        const auto unit = unitNamed(text.substr(split));
        if (!unit)
            continue;
        if (const auto number = numberIn(text.substr(0, split)))
            return Written{*number, *unit};
    }
    return std::nullopt;
}

} // namespace panside
