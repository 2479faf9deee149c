#pragma once
// What an entry that was taken back, or put right, changes for lots that are packed: which of them rest on it, what
// went to whom, and how each is judged now.
#include "core/ledger/ledger.h"

namespace panside {

struct TouchedLot {
    std::string code;
    std::optional<double> share; // of its sugar that came by the entry; none: nobody knows how much
    bool gone = false;           // it is no lot any more
    std::vector<std::pair<std::string, long long>> sizes;  // as written, and how many were made
    std::vector<std::pair<std::string, long long>> buyers; // and how many they have
    Brix was{}, is{};
    bool heldWas = false, heldIs = false;
    Taint taintWas, taintIs;
};
// `before` still has the entry, `after` has not. By the time they were packed; empty: no lot rests on it.
std::vector<TouchedLot> lotsTouched(const Ledger& before, const Fact& entry, const Ledger& after);

// The same of anything that came to be known: the lots of `before` whose density by the book, judgement or taint is
// another in `after`. `share` is none.
std::vector<TouchedLot> lotsChanged(const Ledger& before, const Ledger& after);
// One English sentence: `lot 27-092-A (12 × 4L; Brook Street Market 12): held from now on; milk in it.`
std::string sentence(const TouchedLot& lot);

} // namespace panside
