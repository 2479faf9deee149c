#pragma once
// What the concentrator did, run by run: water taken out, and what that saves this rig's boil.
#include "core/ledger/ledger.h"
#include "core/physics/tonight.h"

namespace panside {

struct ConcentratorSaving {
    std::size_t run;                      // into the ledger's table
    Volume water;                         // taken out
    std::optional<Likely<Duration>> boil; // hours of fire saved; none: no night of this rig is known
    std::optional<double> cords;          // full ones; none: not of a single night is all the wood known
};
// Range      every run in which water was taken out; the rate that the last nights boiled off, of `tonightBasis`
// Source     water over rate; cords by the hour of fire, of the nights whose wood is known
std::vector<ConcentratorSaving> concentratorSavings(const Ledger& ledger);

} // namespace panside
