#include "core/quantity/unit.h"

#include "core/quantity/quantity.h"

#include <array>
#include <charconv>
#include <cmath>

namespace panside {
namespace {

// SI = (number + shift) * scale / divisor: a divisor where one is exact and its inverse is not, so that 45.4 mm is the
// same double here as by Length::millimetre.
struct Row {
    Unit unit;
    std::string_view name;
    Dimension dimension;
    double scale;
    double divisor = 1;
    double shift = 0;
};

constexpr std::array<Row, 27> table{{
    {Unit::none, "", Dimension::none, 1},
    {Unit::degC, "degC", Dimension::temperature, 1, 1, 273.15},
    {Unit::degF, "degF", Dimension::temperature, 1, 1.8, 459.67},
    {Unit::K, "K", Dimension::temperatureDifference, 1},
    {Unit::kPa, "kPa", Dimension::pressure, 1e3},
    {Unit::hPa, "hPa", Dimension::pressure, 1e2},
    {Unit::inHg, "inHg", Dimension::pressure, Pressure::pascalPerInHg},
    {Unit::psi, "psi", Dimension::pressure, Pressure::pascalPerPsi},
    {Unit::mm, "mm", Dimension::length, 1, 1e3},
    {Unit::in, "in", Dimension::length, 0.0254},
    {Unit::m, "m", Dimension::length, 1},
    {Unit::ft, "ft", Dimension::length, 0.3048},
    {Unit::m2, "m2", Dimension::area, 1},
    {Unit::ft2, "ft2", Dimension::area, Area::squareMetrePerSquareFoot},
    {Unit::L, "L", Dimension::volume, 1, 1e3},
    {Unit::gal, "gal", Dimension::volume, Volume::litresPerGallon, 1e3},
    {Unit::Lph, "L/h", Dimension::volumeFlow, 1, 3.6e6},
    {Unit::galph, "gal/h", Dimension::volumeFlow, Volume::litresPerGallon, 3.6e6},
    {Unit::kg, "kg", Dimension::mass, 1},
    {Unit::lb, "lb", Dimension::mass, Mass::kilogramPerPound},
    {Unit::brix, "brix", Dimension::sugar, 1, 1e2},
    {Unit::baume, "baume", Dimension::sugar, 1},
    {Unit::percent, "percent", Dimension::share, 1, 1e2},
    {Unit::min, "min", Dimension::time, 60},
    {Unit::s, "s", Dimension::time, 1},
    {Unit::mV, "mV", Dimension::voltage, 1, 1e3},
    {Unit::ohm, "ohm", Dimension::resistance, 1},
}};

constexpr const Row& rowOf(Unit unit) { return table[static_cast<std::size_t>(unit)]; }

constexpr bool tableIsInOrder() {
    for (std::size_t i = 0; i < table.size(); ++i)
        if (static_cast<std::size_t>(table[i].unit) != i)
            return false;
    return true;
}
static_assert(tableIsInOrder());

} // namespace

std::optional<Unit> unitNamed(std::string_view name) {
    for (const Row& row : table)
        if (row.unit != Unit::none && row.name == name)
            return row.unit;
    return std::nullopt;
}

std::string_view nameOf(Unit unit) { return rowOf(unit).name; }
Dimension dimensionOf(Unit unit) { return rowOf(unit).dimension; }
double toSi(double number, Unit unit) {
    const Row& row = rowOf(unit);
    return (number + row.shift) * row.scale / row.divisor;
}
double fromSi(double si, Unit unit) {
    const Row& row = rowOf(unit);
    return si * row.divisor / row.scale - row.shift;
}
double differenceToSi(double number, Unit unit) { return number * rowOf(unit).scale / rowOf(unit).divisor; }

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
