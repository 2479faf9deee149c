#include "core/shift/book_marks.h"

#include "core/boil/day_vocabulary.h"
#include "core/boil/vocabulary.h"
#include "core/journal/day_books.h"
#include "core/ledger/touched.h"
#include "core/shift/house_ledger.h"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace panside {
namespace {

// Which row of the file a row of the house is, or is told again by: one that stands in the journal too counts once.
std::optional<std::size_t> rowOfFile(const ReadLog& book, const HouseLedger& house, std::size_t row) {
    if (const auto mine = house.moreOf(row))
        return mine;
    const Fact& kept = *house.rows()[row].fact;
    if (!std::holds_alternative<DayRow>(kept.what))
        return std::nullopt;
    auto at = std::lower_bound(book.facts.begin(), book.facts.end(), kept.at,
                               [](const Fact& fact, Instant t) { return fact.at < t; });
    for (; at != book.facts.end() && at->at == kept.at; ++at)
        if (at->what == kept.what)
            return static_cast<std::size_t>(at - book.facts.begin());
    return std::nullopt;
}

} // namespace

BookJudged judgedBook(const ReadLog& book, const Journal* journal) {
    BookJudged judged;
    judged.faults = book.faults;
    for (Fault& fault : bookFaults(book, bookKnown(journal)))
        judged.faults.push_back(std::move(fault));
    std::ranges::stable_sort(judged.faults, {}, &Fault::line);
    if (!judged.faults.empty())
        return judged;
    const HouseLedger house{journal, book.facts};
    for (const LedgerMark& mark : house.ledger().marks())
        if (const auto which = rowOfFile(book, house, mark.row))
            judged.marks.push_back({book.lines[*which], sentence(mark)});
    std::ranges::stable_sort(judged.marks, {}, &LineMark::line);
    return judged;
}

std::vector<LineMark> shiftMarks(const HouseLedger& house, ShiftId shift,
                                 const std::function<std::size_t(FactId)>& lineOf) {
    const auto& shifts = house.parts().shifts;
    const auto own = std::ranges::find_if(shifts, [&](const auto& one) { return one->id == shift; });
    const bool keepsBook = house.parts().book && !house.parts().book->empty();
    std::vector<LineMark> marks;
    for (const LedgerMark& mark : house.ledger().marks()) {
        const LedgerRow& row = house.rows()[mark.row];
        const bool said = mark.kind == MarkKind::drawTwice; // by the reader of the log
        if (row.shift == own - shifts.begin() && !said && (keepsBook || mark.kind == MarkKind::sugarOdd))
            marks.push_back({lineOf(row.id), sentence(mark)});
    }
    std::ranges::stable_sort(marks, {}, &LineMark::line);
    return marks;
}

std::vector<LineMark> shiftMarks(const ReadLog& log, const Journal* journal) {
    if (log.facts.empty())
        return {};
    HouseLedger::Parts parts = journal ? HouseLedger{journal}.parts() : HouseLedger::Parts{};
    const bool keepsBook = parts.book && !parts.book->empty();
    Facts facts;
    for (std::size_t i = 0; i < log.facts.size(); ++i)
        if (keepsBook || isOfTheHouse(log.facts[i]))
            facts.add(static_cast<FactId>(i), log.facts[i]);
    // As it is read once it is in the journal: the same marks at the same rows.
    const auto shift = std::make_shared<const HouseShift>(houseShift(log.facts.front().at, facts));
    std::erase_if(parts.shifts, [&](const auto& one) { return one->id == shift->id; }); // the same, imported before
    parts.shifts.push_back(shift);
    return shiftMarks(HouseLedger{std::move(parts), {}}, shift->id,
                      [&log](FactId id) -> std::size_t { return log.lines[static_cast<std::size_t>(id)]; });
}

std::vector<std::string> newlyMarked(const HouseLedger& before, const HouseLedger& after) {
    std::vector<std::string> says;
    for (const TouchedLot& lot : lotsChanged(before.ledger(), after.ledger()))
        says.push_back(sentence(lot));
    std::set<Instant> rows;
    for (const LedgerRow& row : before.rows())
        rows.insert(row.fact->at);
    const auto marksOf = [](const HouseLedger& house) {
        std::vector<std::pair<Instant, std::string>> all;
        for (const LedgerMark& mark : house.ledger().marks())
            all.emplace_back(house.rows()[mark.row].fact->at, sentence(mark));
        return all;
    };
    const auto was = marksOf(before);
    const std::set<std::pair<Instant, std::string>> known(was.begin(), was.end());
    for (const auto& mark : marksOf(after))
        if (rows.contains(mark.first) && !known.contains(mark))
            says.push_back(fmt::format("the row of {}: {}", textOf(mark.first), mark.second));
    return says;
}

bool anyPacked(const Journal& journal) {
    const auto book = bookFacts(journal);
    return std::ranges::any_of(book, [](const Boil::Entry& entry) {
        const auto* row = std::get_if<DayRow>(&entry.fact.what);
        return row && row->deed == Deed::packed;
    });
}

bool beginsAsBook(std::string_view text) {
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        const std::string_view line = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        const auto first = line.find(',');
        if (first == std::string_view::npos)
            continue;
        std::string_view what = line.substr(first + 1, line.find(',', first + 1) - first - 1);
        if (what.size() > 1 && what.front() == '"' && what.back() == '"')
            what = what.substr(1, what.size() - 2);
        if (deedNamed(what))
            return true;
        // A row of either, one that nobody knows, or the heading says nothing.
        const auto row = factOfLine(line.ends_with('\r') ? line.substr(0, line.size() - 1) : line);
        const auto* fact = std::get_if<Fact>(&row);
        if (const auto* unknown = fact ? std::get_if<Unknown>(&fact->what) : nullptr; unknown)
            fact = seriesNamed(unknown->what) ? fact : nullptr;
        if (fact && !std::holds_alternative<Note>(fact->what) && !std::holds_alternative<Set>(fact->what))
            return false;
    }
    return false;
}

BookKnown knownWith(const Journal* journal, const std::vector<std::string>& books) {
    BookKnown known = bookKnown(journal), named;
    for (const std::string& text : books)
        for (const Fact& fact : readLog(text).facts)
            named.add(fact);
    known.vessels.merge(named.vessels);
    return known;
}

} // namespace panside
