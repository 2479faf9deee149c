#pragma once
// The person's words for readings, for why a figure is missing and for why a reading is not believed.
#include "core/boil/picture.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

QString readingName(Series series);           // "syrup pan"
Unit readingUnit(Series series, Units units); // that a person reads it in
QString trustWord(Trust trust);               // "good", "in doubt", "gone"
QString reasonWords(const Why& why);          // "stuck for 40 s"
QString reasonWords(const ReadingPicture& reading);
// The reason for a figure of the picture, empty if it gives none.
QString whyNot(const Picture& picture, Shown figure);

} // namespace panside
