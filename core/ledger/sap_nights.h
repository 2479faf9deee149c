#pragma once
// What the plan for tonight rests on, out of the ledger: the nights as they were boiled, and the sap that stands.
#include "core/ledger/ledger.h"
#include "core/physics/tonight.h"

namespace panside {

// Nights with a fire of which it is known what left the tank meanwhile, the oldest first; those before `before` only.
std::vector<NightBoiled> nightsBoiled(const Ledger& ledger, std::optional<Instant> before = {});

// Sap and concentrate in every tank that is not retired. `vessel` is into the ledger's vessels.
struct StandingIn {
    std::size_t vessel;
    SapStanding what;
};
std::vector<StandingIn> standingIn(const Ledger& ledger);
std::vector<SapStanding> standing(const Ledger& ledger);

// The rig as its nights and its settings know it; what is kept back is reckoned from the pans where they are known.
TonightBasis tonightBasis(const Ledger& ledger);

} // namespace panside
