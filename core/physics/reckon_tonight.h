#pragma once
// The sum for tonight, for whoever knows more than its arguments say: the nights of a journal.
#include "core/physics/reckon.h"
#include "core/physics/tonight.h"

namespace panside::sums {

// Arguments of `tonight`, put to a rig that is known by its nights, or by `rate`, and to the sap that stands; none:
// what its `stand` arguments say.
Outcome reckonTonight(const Arguments& arguments, TonightBasis basis,
                      std::optional<std::span<const SapStanding>> stands);

} // namespace panside::sums
