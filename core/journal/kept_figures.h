#pragma once
// Figures that others worked out from a shift's facts, kept so that they need not be worked out again. The journal does
// not know what they mean: each is a name and a number, one that is not known has no row. Like the summaries they are
// derived: they count only as long as no fact was added or withdrawn since, and nobody altered them.
#include "core/journal/journal.h"

#include <map>
#include <string>

namespace panside {

using Figures = std::map<std::string, double>;

// Those of every shift that still hold. `form` names the rule they were worked out by: of another one none is given.
std::map<ShiftId, Figures> keptFigures(const Journal& journal, int form);
// Keeps a shift's figures; `seen` is what factsSeen gave before its facts were read. False where the journal may not be
// written, or another is writing: then they are worked out again next time.
bool keepFigures(Journal& journal, ShiftId shift, int form, FactId seen, const Figures& figures);
// The same for figures of another family, beside those and apart from them: kept, and out of date, by themselves.
std::map<ShiftId, Figures> keptFiguresOf(const Journal& journal, const std::string& family, int form);
bool keepFiguresOf(Journal& journal, ShiftId shift, const std::string& family, int form, FactId seen,
                   const Figures& figures);
// Moves whenever a fact of the shift is added or withdrawn.
FactId factsSeen(const Journal& journal, ShiftId shift);

} // namespace panside
