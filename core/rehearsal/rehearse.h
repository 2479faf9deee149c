#pragma once
// `panside rehearse`: a made-up boil as a shift log.
#include "core/rehearsal/options.h"

#include <cstdint>
#include <optional>
#include <string>

namespace panside {

// An evening at one invented sugarhouse, Larkspur Hollow: its rig, probe and glass are always the same; sap, weather,
// wood, hands and luck are the seed's.
RehearsalOptions anEvening(std::uint64_t seed);

// Such an evening, lit cold and `length` long in all (its last hour and a quarter are the shutdown; at least half an
// hour is boiled), a reading of each kind every `spacing`, on the seed's own day unless its beginning is said. The same
// seed, length, spacing and beginning give the same bytes.
std::string rehearsedLog(Duration length, std::uint64_t seed, Duration spacing = Duration{1},
                         std::optional<Instant> begins = {});

} // namespace panside
