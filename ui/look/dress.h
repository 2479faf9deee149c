#pragma once
// What a widget wears: the sizes of its screen and the colours of the hour.
#include "ui/look/inks.h"
#include "ui/look/lettering.h"
#include "ui/look/measure.h"

namespace panside {

struct Dress {
    Measure measure{};
    Look look = Look::day;
    const Inks& inks() const { return inksOf(look); }
    int px(double millimetres) const { return measure.px(millimetres); }
    bool isLow(int sheet) const { return sheet < px(mm::lowSheet); }
    QFont letters(double millimetres, bool bold = false) const { return lettering(measure, millimetres, bold); }
    bool operator==(const Dress&) const = default;
};

} // namespace panside
