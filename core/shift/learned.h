#pragma once
#include "core/boil/fact.h"

#include <vector>

namespace panside {

struct State; // core/boil/state.h

// What a shift taught, as settings for the next: the offset of the syrup-pan probe and how well that is known; how long
// the arch burns on after the last load.
// Empty if it taught nothing.
std::vector<Set> learnedIn(const State& state);

} // namespace panside
