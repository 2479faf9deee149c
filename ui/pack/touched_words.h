#pragma once
// What was taken back or put right, and the packed lots that rest on it, in words. Pure.
#include "core/ledger/touched.h"

#include <QString>

namespace panside {

// A page of it, as rich text; and one line.
QString touchedPage(const std::vector<TouchedLot>& lots);
QString touchedLine(const std::vector<TouchedLot>& lots);

} // namespace panside
