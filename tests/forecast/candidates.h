#pragma once
#include "tests/forecast/forecaster.h"

#include <vector>

namespace panside::judge {

// Other ways to forecast, put beside the engine in the table.
std::vector<Entrant> candidates();

} // namespace panside::judge
