#pragma once
// How far the sugar that the ledger keeps may be from the truth: what was read, and what nobody wrote.
#include "core/ledger/ledger_parts.h"

namespace panside {

// Kilograms of sugar, that hold the truth nineteen times in twenty. Where a long silence lies between and nobody has
// measured it since, it may hold anything from nothing to its rim.
// Range      any vessel; where its capacity was never told, its rim is the most that it was known to hold
// Source     twice the standard uncertainty of its sugar's share, of one glass (ISO GUM 6.2); for the silence our
//            judgement
double sugarDoubt(const Vessel& vessel);
// The same of what the pans hold.
double sugarDoubt(const PansNow& pans);

} // namespace panside
