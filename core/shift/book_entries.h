#pragma once
// What a person enters in the day book: in the journal at once, or in memory until a disk takes it; and taken back in
// the order in which it was entered.
#include "core/boil/boil.h"
#include "core/shift/keeper.h"

#include <optional>
#include <utility>
#include <vector>

namespace panside {

class BookEntries {
public:
    struct Entry {
        FactId id;
        Fact fact;
        long long order;             // of entry
        std::optional<ShiftId> book; // the day book that it is in
        bool held = false;           // in memory only
    };
    struct Entered {
        FactId id;
        bool kept; // false: it is tried again by keepHeld
    };
    // `patience`: for the disk to take what waits for it.
    Entered enter(Keeper& keeper, Fact fact, long long order, std::chrono::milliseconds patience);
    // Tries again what no disk took yet; how many rows it took.
    int keepHeld(Keeper& keeper);

    // What undo() would take back; none: nothing.
    const Entry* last() const { return entries_.empty() ? nullptr : &entries_.back(); }
    Fact undo(Keeper& keeper, Instant now);
    // Put right elsewhere, or of a journal that was let go: undo() knows it no more.
    void forget(ShiftId book, FactId id);
    void forgetAll() { entries_.clear(); }

    // In memory only, by time: all of them where nothing is kept, else those that no disk took yet.
    const std::vector<Boil::Entry>& held() const { return held_; }

private:
    std::optional<std::pair<ShiftId, FactId>> keepIn(Keeper& keeper, const Fact& fact);

    std::vector<Entry> entries_; // what undo() walks back through
    std::vector<Boil::Entry> held_;
    FactId heldNumber_ = 0;
    bool refused_ = false; // by the disk, the last time
};

} // namespace panside
