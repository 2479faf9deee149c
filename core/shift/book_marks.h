#pragma once
// A day book's file on its way in: its faults, and the marks that the ledger makes at its rows, each with its line.
#include "core/boil/shift_log.h"
#include "core/journal/journal.h"

#include <string>
#include <vector>

namespace panside {

struct LineMark {
    std::size_t line;
    std::string says; // without file and line
};
struct BookJudged {
    std::vector<Fault> faults;
    std::vector<LineMark> marks; // none where there are faults
};
// `journal` is what it is judged with; none: by itself.
BookJudged judgedBook(const ReadLog& book, const Journal* journal);

// Does what begins so look like a day book? Its rows decide; notes and settings are of either.
bool beginsAsBook(std::string_view text);

} // namespace panside
