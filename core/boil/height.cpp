#include "core/boil/height.h"

#include "core/physics/air.h"
#include "core/physics/water.h"

#include <cmath>

namespace panside {
namespace {

// No mostWeather moves the pressure further from the standard atmosphere: core/physics/air.h.
constexpr Pressure mostWeather = Pressure::kilopascal(4);

Pressure gapBetween(Pressure a, Pressure b) { return Pressure::pascal(std::abs(a.pascal() - b.pascal())); }

bool isOther(Pressure pressure, std::optional<Pressure> usual, std::optional<Pressure> elsewhere, Pressure far) {
    if (!usual || !elsewhere)
        return false;
    const Pressure from = gapBetween(pressure, *usual), fromOther = gapBetween(pressure, *elsewhere);
    return from >= far && fromOther <= mostWeather && fromOther <= from;
}

} // namespace

bool isNoWeather(Pressure station, std::optional<Length> elevation) {
    // The deepest lows and highest highs over land in the middle latitudes, and a height that is a little wrong; no
    // maple is tapped higher. Common practice, no source.
    constexpr Pressure furthest = Pressure::kilopascal(6);
    constexpr Length highest = Length::metre(1500);
    const auto most = standardAtmosphere(elevation.value_or(Length::metre(0))),
               least = standardAtmosphere(elevation.value_or(highest));
    return most && least && (station > *most + furthest || station < *least - furthest);
}

bool looksReduced(Pressure station, Length elevation, Pressure far) {
    return isOther(station, standardAtmosphere(elevation), standardAtmosphere(Length::metre(0)), far);
}

bool looksUnreduced(Pressure seaLevel, Length elevation, Pressure far) {
    return isOther(seaLevel, standardAtmosphere(Length::metre(0)), standardAtmosphere(elevation), far);
}

std::optional<BoilingBand> boilingBand(Length elevation) {
    const auto usual = standardAtmosphere(elevation);
    if (!usual)
        return std::nullopt;
    const auto low = waterBoilingPoint(*usual - doubtedFrom), middle = waterBoilingPoint(*usual),
               high = waterBoilingPoint(*usual + doubtedFrom);
    return low && middle && high ? std::optional{BoilingBand{*low, *middle, *high}} : std::nullopt;
}

} // namespace panside
