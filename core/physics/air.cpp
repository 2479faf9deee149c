#include "core/physics/air.h"

#include "core/physics/range.h"

#include <cmath>

namespace panside {
namespace {

// ISO 2533:1975, table 1 and clause 2.
constexpr double gravity = 9.80665;       // m/s2
constexpr double gasConstant = 287.05287; // J/(kg K), dry air
constexpr double seaTemperature = 288.15; // K
constexpr double seaPressure = 101325;    // Pa
constexpr double lapse = 0.0065;          // K/m
constexpr double exponent = gasConstant * lapse / gravity;

constexpr double withAir = 4;       // K, how well the column's temperature is known
constexpr double withoutAir = 10;   // K
constexpr double reportSpread = 50; // Pa

bool reachable(Length elevation) { return within(elevation.metre(), -500, 5000); }
bool plausibleAtSeaLevel(Pressure p) { return within(p.kilopascal(), 85, 110); }
bool breathable(Temperature t) { return within(t.celsius(), -50, 50); }

double columnTemperature(Length elevation, std::optional<Temperature> air) {
    return air.value_or(Temperature::celsius(0)).kelvin() + lapse / 2 * elevation.metre();
}

} // namespace

std::optional<Pressure> standardAtmosphere(Length elevation) {
    if (!reachable(elevation))
        return std::nullopt;
    return Pressure::pascal(seaPressure * std::pow(1 - lapse * elevation.metre() / seaTemperature, 1 / exponent));
}

std::optional<Pressure> stationFromSeaLevel(Pressure seaLevel, Length elevation, std::optional<Temperature> air) {
    if (!plausibleAtSeaLevel(seaLevel) || !reachable(elevation) || (air && !breathable(*air)))
        return std::nullopt;
    return seaLevel * std::exp(-gravity * elevation.metre() / (gasConstant * columnTemperature(elevation, air)));
}

std::optional<Pressure> stationFromSeaLevelUncertainty(Pressure seaLevel, Length elevation,
                                                       std::optional<Temperature> air) {
    const auto station = stationFromSeaLevel(seaLevel, elevation, air);
    if (!station)
        return std::nullopt;
    const double column = columnTemperature(elevation, air);
    const double perKelvin = station->pascal() * gravity * elevation.metre() / (gasConstant * column * column);
    return Pressure::pascal(std::hypot(perKelvin * (air ? withAir : withoutAir), reportSpread));
}

std::optional<Pressure> stationFromAltimeter(Pressure setting, Length elevation) {
    if (!plausibleAtSeaLevel(setting) || !reachable(elevation))
        return std::nullopt;
    const double reduced =
        std::pow(setting.pascal() / seaPressure, exponent) - lapse * elevation.metre() / seaTemperature;
    return Pressure::pascal(seaPressure * std::pow(reduced, 1 / exponent));
}

} // namespace panside
