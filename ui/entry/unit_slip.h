#pragma once
// A typed number that cannot be meant: what it most likely should have been. It is asked about before it is kept, and
// what cannot be is never kept. Pure.
#include "ui/entry/entry_form.h"

namespace panside {

struct UnitSlip {
    QString field;          // whose number it is
    QString words;          // what is odd about it
    QString asTyped;        // the answer that it is so; empty: it cannot be
    QString asMeant;        // the answer that it was meant in another unit; empty: no unit makes sense of it
    Unit unit = Unit::none; // that one
};
std::optional<UnitSlip> slipOf(const EntryForm& form);
// The answer that the other unit was meant: the same digits, kept in it.
void takeAsMeant(EntryForm& form, const UnitSlip& slip);

} // namespace panside
