#pragma once
// The sap page as rows. Pure: the list page shows it, tests read it.
#include "core/ledger/sap_page.h"
#include "ui/ledger/list_page.h"
#include "ui/look/units.h"

namespace panside {

// `ledger` none: not read yet. Its keys are the desk's.
ListView tanksView(const Ledger* ledger, Instant now, Units units);
// "The pans hold about 6 lb of sugar since Tuesday …"
QString sweetWords(const SweetInPans& sweet, Instant now, Units units);
// The tank of each row, into the ledger's vessels, in the order to boil.
std::vector<std::size_t> tanksShown(const Ledger& ledger, Instant now);

} // namespace panside
