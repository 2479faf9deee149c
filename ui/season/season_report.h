#pragma once
// A season on paper and as files.
#include "core/boil/boil.h"
#include "core/season/season.h"
#include "ui/season/season_view.h"

#include <functional>
#include <string>

namespace panside {

// A row a shift, for other programs: names in English, units in the headings, a hole is an empty field; `at_least`
// names the figures of which only a part was measured. The last row is the season's.
std::string seasonAsCsv(const std::vector<SeasonShift>& shifts, Units units);

using FactsOf = std::function<Facts(Instant shift)>;
// The table with its totals, the curve, what pays and how the forecast kept its word; then a page a shift. Needs a
// QApplication; throws FileFault.
void seasonAsPdf(const std::vector<SeasonShift>& shifts, const SeasonChoice& choice, Units units,
                 const FactsOf& factsOf, const std::string& place);

// Spreadsheet files, in the person's units and language; numbers stay numbers. Throw FileFault.
void seasonAsSheet(const std::vector<SeasonShift>& shifts, Units units, const std::string& place);
void shiftAsSheet(const SeasonShift& shift, const Facts& facts, Units units, const std::string& place);

} // namespace panside
