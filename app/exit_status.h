#pragma once
#include "core/files/text_file.h"
#include "core/journal/journal.h"
#include "core/ledger/ledger.h"

#include <iosfwd>

namespace panside {

// Which exit status belongs to what a journal or a file refused: the input's fault, or the machine's.
int statusOf(JournalTrouble trouble);
int statusOf(FileTrouble trouble);
// A journal to write in; throws JournalError where it could only be read.
Journal journalToWrite(const std::filesystem::path& place);
// The shift that was named, or the only one. nullopt after saying on `err` what there is to choose from.
std::optional<Shift> shiftAsked(const Journal& journal, const std::string& name, bool json, std::ostream& out,
                                std::ostream& err);

// The year of the day book that was named, or the only one where there is no shift.
std::optional<int> bookAsked(const Journal& journal, const std::string& name);

// Says on `err` that nothing in the ledger has this name, and what there is that has one like it.
int refuseName(const Ledger& ledger, const std::string& name, std::string_view why, std::ostream& err);

} // namespace panside
