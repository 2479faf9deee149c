#pragma once
// Each sum: its arguments read, its answer put together.
#include "core/physics/reckon_reader.h"

namespace panside::sums {

Outcome reckonBoiling(Reader& in);
Outcome reckonTarget(Reader& in);
Outcome reckonDensity(Reader& in);
Outcome reckonRefraction(Reader& in);
Outcome reckonBaume(Reader& in);
Outcome reckonCup(Reader& in);
Outcome reckonSap(Reader& in);
Outcome reckonBlend(Reader& in);
Outcome reckonThermocouple(Reader& in);
Outcome reckonPlatinum(Reader& in);
Outcome reckonWood(Reader& in);
Outcome reckonShutdown(Reader& in);
Outcome reckonFill(Reader& in);
Outcome reckonContainers(Reader& in);
Outcome reckonColour(Reader& in);
Outcome reckonConcentrate(Reader& in);
Outcome reckonSapScale(Reader& in);
Outcome reckonTonight(Reader& in);
Outcome reckonRun(Reader& in);

} // namespace panside::sums
