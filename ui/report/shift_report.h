#pragma once
#include "core/journal/shift_summary.h"
#include "core/season/season.h"
#include "ui/look/units.h"

#include <string>

class QPainter;
class QRectF;

namespace panside {

// A shift on paper, as the journal has it: what went in, what came out, what was done. In SI units with their names, in
// English, for other programs.
std::string reportAsCsv(const ShiftSummary& summary, const ShiftAccount& account, const Facts& facts);
// The same as one page, in the person's units and language: the account, the rise chart drawn in lines, draws and
// checks, cautions. Needs a QApplication; throws FileFault.
void reportAsPdf(const SeasonShift& shift, const Facts& facts, Units units, const std::string& place);
// That page, for a season's report. `page` is in units of 1/96 inch.
void paintShiftPage(QPainter& painter, const QRectF& page, const SeasonShift& shift, const Facts& facts, Units units);

} // namespace panside
