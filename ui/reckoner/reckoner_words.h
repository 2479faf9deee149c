#pragma once
// The sums' sentences as a person reads them: in their language, with its decimal sign, in their units.
#include "core/physics/reckon_words.h"
#include "ui/look/units.h"

#include <QString>

namespace panside {

QString inWords(const sums::Sentence& sentence, Units units);
// A figure told in two units: whoever thinks in the second has it first.
QString figureInWords(const sums::Sentence& shown, Units units);
// A name, a title or a caution of the sums.
QString inWords(std::string_view text);

} // namespace panside
