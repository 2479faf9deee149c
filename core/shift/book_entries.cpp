#include "core/shift/book_entries.h"

#include "core/journal/day_books.h"

#include <algorithm>

namespace panside {

// Where it is kept now; nullopt where no disk takes it.
std::optional<std::pair<ShiftId, FactId>> BookEntries::keepIn(Keeper& keeper, const Fact& fact) {
    try {
        if (auto journal = keeper.beside())
            return appendToBook(*journal, fact, [&keeper](Instant first) { return keeper.name(first); });
    } catch (const JournalError&) { // it is held, and tried again each second
        refused_ = true;
    }
    return std::nullopt;
}

BookEntries::Entered BookEntries::enter(Keeper& keeper, Fact fact, long long order,
                                        std::chrono::milliseconds patience) {
    refused_ = false;
    if (const auto kept = keepIn(keeper, fact)) {
        entries_.push_back({kept->second, std::move(fact), order, kept->first});
        return {kept->second, true};
    }
    const FactId number = ++heldNumber_;
    const auto place = std::upper_bound(held_.begin(), held_.end(), fact.at,
                                        [](Instant at, const Boil::Entry& one) { return at < one.fact.at; });
    held_.insert(place, {number, fact});
    entries_.push_back({number, std::move(fact), order, {}, true});
    // A rehearsal keeps nothing, and that is no trouble.
    return {number, !refused_ && keeper.flush(patience)};
}

int BookEntries::keepHeld(Keeper& keeper) {
    int count = 0;
    for (; !held_.empty(); ++count) {
        const auto kept = keepIn(keeper, held_.front().fact);
        if (!kept)
            break;
        for (Entry& one : entries_)
            if (one.held && one.id == held_.front().id) {
                one.held = false;
                one.id = kept->second;
                one.book = kept->first;
            }
        held_.erase(held_.begin());
    }
    return count;
}

Fact BookEntries::undo(Keeper& keeper, Instant now) {
    Entry last = std::move(entries_.back());
    entries_.pop_back();
    if (last.held)
        std::erase_if(held_, [&](const Boil::Entry& one) { return one.id == last.id; });
    else if (last.book)
        keeper.withdrawFrom(*last.book, last.id, now);
    return std::move(last.fact);
}

void BookEntries::forget(ShiftId book, FactId id) {
    std::erase_if(entries_, [&](const Entry& one) { return one.book == book && one.id == id; });
}

} // namespace panside
