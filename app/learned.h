#pragma once
#include "core/boil/boil.h"

#include <vector>

namespace panside {

// What a shift taught about the syrup-pan probe, as settings for the next: its offset, and how well that is known.
// Empty if it taught nothing.
std::vector<Set> learnedIn(const std::vector<Boil::Entry>& facts);

} // namespace panside
