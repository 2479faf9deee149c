#pragma once
// What can be added to a journal. Nothing in it is ever changed or taken away: a fact is withdrawn by a later row.
#include "core/boil/boil.h"

#include <string>
#include <variant>
#include <vector>

namespace panside {

// A shift is named by the time of its first row when it began; people type it as RFC 3339 (textOf, instantIn).
using ShiftId = Instant;

struct BeginShift {
    ShiftId shift;
    bool live;         // begun here, not imported: the next one goes on from its settings
    int opening;       // how many of its first facts are the settings that were in force when it began
    bool book = false; // a day book: kept like a shift that is over, and no shift
};
struct KeepFact {
    ShiftId shift;
    FactId id; // 0: the journal numbers it, and writes the number here
    Fact fact;
};
struct WithdrawFact {
    ShiftId shift;
    FactId id;   // of the withdrawal itself; 0 as above
    FactId fact; // what is withdrawn
    Instant at;
    std::string by;
};
struct TurnShift { // closed, or opened again because its end was withdrawn
    ShiftId shift;
    bool open;
};
struct CarrySetting { // a setting made, or an offset learned, for the shifts to come
    Fact fact;
};
using Change = std::variant<BeginShift, KeepFact, WithdrawFact, TurnShift, CarrySetting>;

} // namespace panside
