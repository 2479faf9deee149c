#pragma once
// What the ledger asks of a row of the day book before it folds it.
#include "core/boil/fact.h"

#include <string>

namespace panside {

// Does it concern the feed tank, whose name's key is `feed`? Then the pans are brought up to it first.
bool touches(const DayRow& day, const std::string& feed);
// 1: its volume comes into the feed tank; -1: it is taken out of it; 0: neither.
int wayOf(const DayRow& day, const std::string& feed);
// A name is the same however it is written, and a row that is written down again later is the same row.
bool isSameRow(const Fact& one, const Fact& other);

} // namespace panside
