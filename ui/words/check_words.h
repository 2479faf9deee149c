#pragma once
// What a density check that was just kept came to, in words: how dense the syrup is, light or heavy, what it moved.
#include "core/boil/picture.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

// "66.4 °Brix, right. Open at 104.3 °C now, by this check 0.1 more."; empty once the check is some minutes old.
QString checkWords(const Picture& picture, Units units);

} // namespace panside
