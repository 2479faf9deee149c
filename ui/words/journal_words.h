#pragma once
// What is wrong with the journal, in a person's words: what, where, what to do.
#include "core/journal/journal_error.h"

#include <QString>

namespace panside {

QString journalWords(const JournalError& error);
// What the journal says beside it: which shift, which process, what a check found.
QString foundWords(const Sentence& found);

} // namespace panside
