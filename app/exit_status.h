#pragma once
#include "core/files/text_file.h"
#include "core/journal/journal.h"
#include "core/ledger/ledger.h"
#include "core/probe/probe_file.h"

#include <ostream>

namespace panside {

// To the file that was named, or where none was to `out`. Throws FileFault.
void writeOut(const std::string& place, const std::string& text, std::ostream& out);
// Each fault in a line of its own, as it stands in `place`.
template <class Faults>
void tell(const Faults& faults, const std::string& place, std::ostream& out) {
    for (const auto& fault : faults)
        out << sentence(fault, place) << '\n';
}
// What the ports and their fields are; nullopt after saying on `err` what is wrong with the file.
std::optional<ProbeFile> probeIn(const std::filesystem::path& place, std::ostream& err);
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
int refuseName(const std::vector<std::string>& like, const std::string& name, std::string_view why, std::ostream& err);

} // namespace panside
