#pragma once
// The story of a night in plain sentences, out of its account and of how its draws were foretold. Pure. What is not
// known is left out, never made up; what was only partly measured says "at least".
#include "core/season/shift_account.h"
#include "ui/look/units.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace panside {

// Each a sentence of its own, in the order of the night: fire, sap, draws, wood, what went wrong.
QStringList nightStory(const ShiftAccount& account, const std::vector<DrawScore>& scores, Units units);

} // namespace panside
