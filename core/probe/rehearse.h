#pragma once
// `panside rehearse`: a made-up boil as a shift log.
#include "core/quantity/quantity.h"

#include <cstdint>
#include <string>

namespace panside {

// The rig, sap and crew that this seed draws, lit cold, boiled for `length` in all (its last hour and a quarter are the
// shutdown; at least half an hour is boiled), a reading of each kind every `spacing`. The same seed and length give the
// same bytes.
std::string rehearsedLog(Duration length, std::uint64_t seed, Duration spacing = Duration{1});

} // namespace panside
