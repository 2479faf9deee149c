#pragma once
// A day book's file on its way in: its faults, and the marks that the ledger makes at its rows, each with its line.
#include "core/boil/shift_log.h"
#include "core/journal/journal.h"
#include "core/shift/house_ledger.h"

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

// What came in has changed what was known before: the lots that were packed and are judged otherwise now, and the rows
// of before that are marked now and were not. Sentences.
std::vector<std::string> newlyMarked(const HouseLedger& before, const HouseLedger& after);
// Has a lot ever been packed? A journal without any is not folded to compare it.
bool anyPacked(const Journal& journal);

// Does what begins so look like a day book? Its rows decide; notes and settings are of either.
bool beginsAsBook(std::string_view text);

} // namespace panside
