#pragma once
// The person's words for why: what was seen and the limit it is held against, in the person's units.
#include "core/boil/show_ground.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

QString groundWords(const Ground& ground, Units units); // "the syrup pan stands at 0.5 in, half of its …"
// All that the picture rests on, as a page.
QString whyPage(const Picture& picture, Units units);

} // namespace panside
