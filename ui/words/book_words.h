#pragma once
// The words of the day book's rows, keys and choices, in the person's language.
#include "core/boil/day_vocabulary.h"
#include "core/ledger/ledger_parts.h"
#include "ui/look/units.h"
#include "ui/words/hand_volume.h"

#include <QString>

namespace panside {

QString deedName(Deed deed);                         // "packed"
QString valueLabel(Deed deed);                       // "how many"
QString keyLabel(Deed deed, Key key);                // "capped at"
QString choiceWord(std::string_view word);           // "gather" as a person says it; a word that is none stays as it is
QString dayRowWords(const DayRow& row, Units units); // "packed, 24 × 1pt, lot A12, from drum 7"
// The value of a row and those of its details, as in `dayRowWords`.
QString detailWords(const DayRow& row, Units units, bool value, std::initializer_list<Key> keys);
QString sizeWord(std::string_view written);     // "0.5gal" as it was written, "0,5gal" in French
QString buyerWord(std::string_view name);       // or that nobody was named
QString causeWord(const std::string& cause);    // why something was lost: `sour` is sûr in French
QString unwrittenWords(const Silence& silence); // of a vessel that nobody has measured since

} // namespace panside
