#pragma once
// Vessels that the ledger knows, offered on the sheets of the boil. Pure.
#include "core/ledger/ledger.h"
#include "ui/entry/entry_form.h"

namespace panside {

// What a draw may go into, the one that was filled last first and full ones left out; where sap may come from.
void offerVessels(EntryForm& form, const Ledger& ledger);
// Draws opened and shut, by time.
std::vector<Fact> drawsIn(const Facts& facts);

} // namespace panside
