#include "core/ledger/book_check.h"

#include "core/boil/day_vocabulary.h"

#include <algorithm>

namespace panside {
namespace {

std::string nearest(const BookKnown& known, const std::string& key) {
    std::string best;
    std::size_t least = std::max<std::size_t>(2, key.size() / 2) + 1;
    for (const auto& [its, name] : known.vessels)
        if (const auto letters = lettersBetween(its, key);
            letters < least || (letters == least && name < best && !best.empty())) {
            least = letters;
            best = name;
        }
    return best;
}

// Which keys of a row must name a vessel that is known.
void eachVessel(const DayRow& row, const auto& visit) {
    if (row.deed == Deed::vessel)
        return;
    for (const DayPair& pair : row.pairs) {
        if (keyOf(row.deed, pair.key).text != DayText::vessel)
            continue;
        const std::string key = nameKey(pair.text);
        // What is drained from the pans fills pails that are named by it; pans and press are gear.
        const bool drained = row.deed == Deed::pans_emptied;
        const bool pans = row.deed == Deed::lost && key == "pans";
        if (!drained && !pans)
            visit(pair, key);
    }
}

} // namespace

void BookKnown::add(const Fact& fact) {
    const auto name = [this](std::string_view text) {
        if (!text.empty())
            vessels.emplace(nameKey(text), std::string{text});
    };
    if (const auto* draw = std::get_if<DrawClosed>(&fact.what))
        name(draw->to);
    const auto* row = std::get_if<DayRow>(&fact.what);
    if (!row)
        return;
    if (row->deed == Deed::vessel)
        name(row->text(Key::name));
    if (row->deed == Deed::pans_emptied && nameKey(row->text(Key::to)) != "gone")
        name(row->text(Key::to));
    if (row->deed == Deed::packed)
        lots.emplace(nameKey(row->text(Key::lot)),
                     Packing{nameKey(row->text(Key::from)),
                             dateOf ? dateOf(fact.at)
                                    : std::chrono::year_month_day{std::chrono::floor<std::chrono::days>(fact.at)}});
}

std::string nextFree(const BookKnown& known, std::string_view code) {
    for (int i = 2;; ++i)
        if (std::string free = std::string{code} + "-" + std::to_string(i); !known.lots.contains(nameKey(free)))
            return free;
}

std::vector<Fault> bookFaults(const ReadLog& book, BookKnown known) {
    std::vector<Fault> faults;
    BookKnown before = known; // lots of other files
    for (const Fact& fact : book.facts)
        known.add(fact);
    std::vector<std::pair<std::uint32_t, Fault>> found;
    for (std::size_t i = 0; i < book.facts.size(); ++i) {
        const auto* row = std::get_if<DayRow>(&book.facts[i].what);
        if (!row)
            continue;
        const std::uint32_t line = i < book.lines.size() ? book.lines[i] : 0;
        eachVessel(*row, [&](const DayPair& pair, const std::string& key) {
            if (!known.vessels.contains(key))
                found.emplace_back(line, Fault{Slip::vesselUnknown, line, 0, std::string{nameOf(pair.key)}, pair.text,
                                               asWritten(nearest(known, key))});
        });
        if (row->deed != Deed::packed)
            continue;
        BookKnown one;
        one.dateOf = known.dateOf;
        one.add(book.facts[i]);
        const auto& [code, packing] = *one.lots.begin();
        const auto there = before.lots.find(code);
        if (there == before.lots.end())
            before.lots.emplace(code, packing);
        else if (!(there->second == packing))
            found.emplace_back(line, Fault{Slip::codeTwice, line, 0, "lot", std::string{row->text(Key::lot)},
                                           asWritten(nextFree(known, row->text(Key::lot)))});
    }
    std::ranges::stable_sort(found, [](const auto& a, const auto& b) { return a.first < b.first; });
    faults.reserve(faults.size() + found.size());
    for (auto& [line, fault] : found)
        faults.push_back(std::move(fault));
    return faults;
}

} // namespace panside
