#pragma once
// A water check as it goes on: the probe stands in plain water, and the console waits until it truly boils, which shows
// as a reading that stands still. Then it is compared with the day's boiling point. Pure. Limits without a source are
// common practice.
#include "core/boil/boil.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace panside {

enum class WaterVerdict : std::uint8_t {
    nothingRead,  // no reading of this probe since it began
    watching,     // too short to say
    stillWarming, // or cooling: `eachMinute` has the sign
    restless,     // scatters too much for a rolling boil around the whole probe
    fits,
    notBoiling,   // stands still, far under the boiling point
    tooShallow,   // stands still, somewhat under it
    tooHot,       // over it: no plain water, or the probe touches the metal
    givesBoiling, // no barometer: the check says where water boils today
};

struct WaterLook {
    WaterVerdict verdict = WaterVerdict::nothingRead;
    std::optional<Temperature> at = {}; // what is read, the middle of the last readings, on the probe's own scale
    TemperatureDifference scatter{};    // standard deviation about their line
    TemperatureDifference eachMinute{}; // slope of that line
    Duration watched{0};                // of the waterWatch that it needs
    std::optional<TemperatureDifference> off = {}; // at, less what was to be expected of this probe
    bool settled() const { return verdict >= WaterVerdict::fits; }
    bool operator==(const WaterLook&) const = default;
};
inline constexpr Duration waterWatch{30}; // how long the reading must stand still

// Plain water boils between these wherever maples grow: from 2200 m up a mountain to 107 kPa at the sea, which no
// weather brings there.
inline constexpr Temperature coldestBoil = Temperature::celsius(92), hottestBoil = Temperature::celsius(101.5);

// Where this probe would read in boiling water, and how well that is known; nullopt without barometer or report.
struct ExpectedBoil {
    Temperature at;
    TemperatureDifference sd;
    bool byHeight = false; // no barometer: only the height tells, and weather moves it
};

struct WaterSample {
    Instant at;
    Temperature read;
};
// The readings of one probe from `since` on, oldest first; a long shift before it costs nothing.
std::vector<WaterSample> waterSamples(const Facts& facts, const std::string& probe, Instant since);

WaterLook lookAtWater(std::span<const WaterSample> samples, Instant now, const std::optional<ExpectedBoil>& expected);

} // namespace panside
