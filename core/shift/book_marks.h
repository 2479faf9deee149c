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

// The marks at rows of a shift, each with its line in the log that it came from (`lineOf`; 0: not known). Of a house
// without a day book nothing is said that rests on what stood in its vessels before.
std::vector<LineMark> shiftMarks(const HouseLedger& house, ShiftId shift,
                                 const std::function<std::size_t(FactId)>& lineOf);
// The same of a log that is not in the journal, judged with what is.
std::vector<LineMark> shiftMarks(const ReadLog& log, const Journal* journal);

// What came in has changed what was known before: the lots that were packed and are judged otherwise now, and the rows
// of before that are marked now and were not. Sentences.
std::vector<std::string> newlyMarked(const HouseLedger& before, const HouseLedger& after);
// Has a lot ever been packed? A journal without any is not folded to compare it.
bool anyPacked(const Journal& journal);

// Does what begins so look like a day book? Its rows decide; notes and settings are of either.
bool beginsAsBook(std::string_view text);

// What rows of the day book in a shift's log are judged against: the journal, and vessels of day books (their texts)
// that are still to come in. A lot code of those is judged when they come.
BookKnown knownWith(const Journal* journal, const std::vector<std::string>& books);

} // namespace panside
