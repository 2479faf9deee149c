#pragma once
// Each sum: its arguments read, its answer put together.
#include "core/physics/reckon_reader.h"

namespace panside::sums {

Answer reckonBoiling(Reader& in);
Answer reckonTarget(Reader& in);
Answer reckonDensity(Reader& in);
Answer reckonRefraction(Reader& in);
Answer reckonBaume(Reader& in);
Answer reckonCup(Reader& in);
Answer reckonSap(Reader& in);
Answer reckonBlend(Reader& in);
Answer reckonThermocouple(Reader& in);
Answer reckonPlatinum(Reader& in);
Answer reckonWood(Reader& in);
Answer reckonShutdown(Reader& in);
Answer reckonFill(Reader& in);
Answer reckonContainers(Reader& in);
Answer reckonColour(Reader& in);
Answer reckonConcentrate(Reader& in);
Answer reckonSapScale(Reader& in);
Answer reckonTonight(Reader& in);
Answer reckonRun(Reader& in);

} // namespace panside::sums
