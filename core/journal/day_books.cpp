#include "core/journal/day_books.h"

#include "core/boil/shift_log.h"
#include "core/journal/inside.h"

#include <algorithm>
#include <unordered_set>

namespace panside {
namespace {

// Every row that any book has or had.
std::unordered_set<std::string> rowsThere(const Journal& journal) {
    std::unordered_set<std::string> rows;
    for (const Shift& book : journal.books()) {
        for (const auto& entry : journal.facts(book.id))
            rows.insert(rowOf(entry.fact));
        for (const auto& gone : journal.withdrawn(book.id))
            rows.insert(rowOf(gone.entry.fact));
    }
    return rows;
}

} // namespace

int yearOf(Instant at) {
    return static_cast<int>(std::chrono::year_month_day{std::chrono::floor<std::chrono::days>(at)}.year());
}

BookImported importBook(Journal& journal, const std::vector<Fact>& facts) {
    requireRight(journal.inside());
    BookImported imported;
    imported.rows = facts.size();
    auto there = rowsThere(journal);
    std::vector<Change> changes;
    for (const Fact& fact : facts) {
        if (!there.insert(rowOf(fact)).second)
            continue;
        if (changes.empty()) {
            imported.book = freeName(journal, fact.at);
            changes.emplace_back(BeginShift{imported.book, false, 0, true});
        }
        changes.emplace_back(KeepFact{imported.book, static_cast<FactId>(++imported.added), fact});
    }
    if (changes.empty())
        return imported;
    changes.emplace_back(TurnShift{imported.book, false});
    journal.commit(changes);
    return imported;
}

std::pair<ShiftId, FactId> appendToBook(Journal& journal, Fact fact, const std::function<ShiftId(Instant)>& name) {
    std::optional<ShiftId> latest;
    for (const Shift& book : journal.books())
        if (yearOf(book.id) == yearOf(fact.at))
            latest = book.id;
    if (latest)
        return {*latest, journal.appendTo(*latest, std::move(fact))};
    ShiftId made = name ? name(fact.at) : freeName(journal, fact.at);
    while (name && freeName(journal, made) != made)
        made = name(made);
    std::vector<Change> changes{BeginShift{made, false, 0, true}, KeepFact{made, 1, std::move(fact)},
                                TurnShift{made, false}};
    journal.commit(changes);
    return {made, 1};
}

std::vector<Boil::Entry> bookFacts(const Journal& journal, std::optional<int> year) {
    std::vector<Boil::Entry> all;
    for (const Shift& book : journal.books()) {
        if (year && yearOf(book.id) != *year)
            continue;
        for (auto entry : journal.facts(book.id))
            all.push_back(std::move(entry));
    }
    std::ranges::stable_sort(all, [](const auto& a, const auto& b) { return a.fact.at < b.fact.at; });
    return all;
}

std::vector<int> bookYears(const Journal& journal) {
    std::vector<int> years;
    for (const Shift& book : journal.books())
        if (years.empty() || years.back() != yearOf(book.id))
            years.push_back(yearOf(book.id));
    return years;
}

} // namespace panside
