#pragma once
// The day books of a journal: kept as shifts are, each file that came in as one, so that facts are appended, corrected
// and withdrawn in them by the same calls (appendTo, withdrawFrom), and told apart from shifts by how they were begun.
#include "core/journal/journal.h"

#include <functional>

namespace panside {

// A day book is named by its year, that of its first row (UTC).
int yearOf(Instant at);

struct BookImported {
    ShiftId book{};        // where its rows are now, if any were new
    std::size_t rows = 0;  // in the file
    std::size_t added = 0; // the others were there already: the same row twice counts once
};
// All or nothing. A row that was withdrawn from a book does not come back with its file. Throws JournalError.
BookImported importBook(Journal& journal, const std::vector<Fact>& facts);

// A fact of the day book that was made here: into the year's latest book, which is begun if there is none. `name` gives
// that one a name that no shift has which is not in the journal yet; none: there is no such shift.
std::pair<ShiftId, FactId> appendToBook(Journal& journal, Fact fact, const std::function<ShiftId(Instant)>& name = {});

// The rows of all books, or of one year's, by time, each once.
std::vector<Boil::Entry> bookFacts(const Journal& journal, std::optional<int> year = {});
// The years there are books of.
std::vector<int> bookYears(const Journal& journal);

} // namespace panside
