#pragma once
#include "core/boil/place.h"
#include "ui/ledger/book_form.h"

namespace panside {

// The form of a vessel's grade by the rule of the place: its words, and the class that the typed light makes.
BookForm gradeForm(BookForm form, const PlaceLaw& law, const QString& vessel);

} // namespace panside
