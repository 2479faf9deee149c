#pragma once
#include "core/boil/boil.h"

#include <vector>

namespace panside {

// What a shift taught, as settings for the next: the offset of the syrup-pan probe and how well that is known; how long
// the arch burns on after the last load.
// Empty if it taught nothing.
std::vector<Set> learnedIn(const std::vector<Boil::Entry>& facts);

} // namespace panside
