#pragma once
// The house's account and what the rig tells, as rows. Pure: the list page shows them, tests read them.
#include "core/ledger/house_account.h"
#include "ui/ledger/list_page.h"
#include "ui/look/units.h"

namespace panside {

ListView accountView(const Ledger* ledger, Units units);
ListView tellsView(const Ledger* ledger, Units units);

} // namespace panside
