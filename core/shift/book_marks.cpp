#include "core/shift/book_marks.h"

#include "core/boil/day_vocabulary.h"
#include "core/shift/house_ledger.h"

#include <algorithm>

namespace panside {

BookJudged judgedBook(const ReadLog& book, const Journal* journal) {
    BookJudged judged;
    judged.faults = book.faults;
    for (Fault& fault : bookFaults(book, bookKnown(journal)))
        judged.faults.push_back(std::move(fault));
    std::stable_sort(judged.faults.begin(), judged.faults.end(),
                     [](const Fault& a, const Fault& b) { return a.line < b.line; });
    if (!judged.faults.empty())
        return judged;
    const HouseLedger house{journal, book.facts};
    for (const LedgerMark& mark : house.ledger().marks())
        if (const auto which = house.moreOf(mark.row))
            judged.marks.push_back({book.lines[*which], sentence(mark)});
    std::stable_sort(judged.marks.begin(), judged.marks.end(),
                     [](const LineMark& a, const LineMark& b) { return a.line < b.line; });
    return judged;
}

bool beginsAsBook(std::string_view text) {
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        const auto first = line.find(',');
        if (first == std::string_view::npos)
            continue;
        const auto second = line.find(',', first + 1);
        const std::string_view what = line.substr(first + 1, second - first - 1);
        if (deedNamed(what))
            return true;
        if (what != "what" && what != "note" && what != "set")
            return false;
    }
    return false;
}

} // namespace panside
