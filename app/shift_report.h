#pragma once
#include "core/journal/shift_summary.h"

#include <string>

namespace panside {

// A shift on paper, in SI units with their names, as the journal has it: what went in, what came out, what was done.
std::string reportAsCsv(const ShiftSummary& summary, const std::vector<Boil::Entry>& facts);
// The same as a page with the rise chart on it. Needs a QApplication; throws FileFault.
void reportAsPdf(const ShiftSummary& summary, const std::vector<Boil::Entry>& facts, const std::string& place);

} // namespace panside
