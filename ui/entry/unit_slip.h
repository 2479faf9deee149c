#pragma once
// A typed number that cannot be meant: what it most likely should have been. It is asked about before it is kept, and
// what cannot be is never kept. Pure.
#include "ui/entry/entry_form.h"

namespace panside {

struct UnitSlip {
    QString field;   // whose number it is
    QString words;   // what is odd about it
    QString asTyped; // the answer that it is so; empty: it cannot be
    QString asMeant; // the answer that it was meant in another unit, or with a point; empty: none makes sense of it
    Unit unit = Unit::none; // that one
    QString digits = {};    // with the point; empty: as typed
};
std::optional<UnitSlip> slipOf(const EntryForm& form);
// The answer that the other was meant: the digits kept in that unit, or with their point.
void takeAsMeant(EntryForm& form, const UnitSlip& slip);

} // namespace panside
