#pragma once
// What is wrong with a row of a shift log, the journal or a probe file, in the person's language: where, what, what to
// do.
#include "core/boil/shift_log.h"
#include "core/journal/journal_error.h"
#include "core/probe/probe_fault.h"

#include <QString>

namespace panside {

QString faultWords(const Fault& fault, const QString& file);
QString faultWords(const Fault& fault);      // without the place
QString wantedWords(const Sentence& wanted); // what may stand there

QString journalWords(const JournalError& error);
// What the journal says beside it: which shift, which process, what a check found.
QString foundWords(const Sentence& found);

QString probeFaultWords(const ProbeFault& fault, const QString& file);

} // namespace panside
