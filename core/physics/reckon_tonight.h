#pragma once
// The sum for tonight, for whoever knows more than its arguments say: the nights of a journal.
#include "core/physics/reckon.h"
#include "core/physics/tonight.h"

namespace panside::sums {

// Arguments of `tonight` but `stand`, put to a rig that is known by its nights, or by `rate`, and to the sap that
// stands.
Outcome reckonTonight(const Arguments& arguments, TonightBasis basis, std::span<const SapStanding> stands);
// `stand` arguments; a refusal where one is no volume and sugar.
std::variant<std::vector<SapStanding>, Refusal> standsIn(const Arguments& arguments);

} // namespace panside::sums
