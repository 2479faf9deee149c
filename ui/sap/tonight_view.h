#pragma once
// The plan for tonight as rows. Pure: the list page shows it, tests read it.
#include "core/ledger/sap_nights.h"
#include "ui/ledger/list_page.h"
#include "ui/look/units.h"

namespace panside {

// What a person may turn: when it is lit, when the fire is to be cold, concentrated first or not.
struct TonightAsk {
    Instant light{}, cold{};
    std::optional<Brix> concentrate; // first
};
// At the next quarter of an hour, cold by eleven at night by the clock on the wall, or six hours on where that is past.
TonightAsk usualAsk(Instant now);

ListView tonightView(const Ledger* ledger, const TonightAsk& ask, Units units);

} // namespace panside
