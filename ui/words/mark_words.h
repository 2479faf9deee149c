#pragma once
// What the ledger finds odd in a row, in the person's language and units.
#include "core/ledger/marks.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

QString markWords(const LedgerMark& mark, Units units);

} // namespace panside
