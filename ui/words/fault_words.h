#pragma once
// What is wrong with a row of a shift log, in the person's language: where, what, what to do.
#include "core/boil/shift_log.h"

#include <QString>

namespace panside {

QString faultWords(const Fault& fault, const QString& file);
QString faultWords(const Fault& fault);      // without the place
QString wantedWords(const Sentence& wanted); // what may stand there

} // namespace panside
