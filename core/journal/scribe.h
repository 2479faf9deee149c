#pragma once
#include "core/boil/boil.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace panside {

// What can be added to a journal. Nothing in it is ever changed or taken away: a fact is withdrawn by a later row.
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

// Where the journal stands: what a scribe must know to go on.
struct Standing {
    struct Setting {
        Instant at;
        FactId id;
        Set set;
    };
    std::optional<ShiftId> shift; // the latest shift begun here
    bool open = false;
    FactId next = 1;               // number of the shift's next fact
    FactId endedBy = 0;            // its shift_end, 0 if none
    std::vector<Setting> settings; // of that shift
    std::vector<Setting> carried;  // for shifts to come, since it began
    std::vector<ShiftId> taken;    // shifts there are
};

// Turns facts as they come into changes to the journal: begins and ends shifts, numbers the facts, and gives a new
// shift the settings in force. Pure: no file, no clock. The first fact begins a shift; shift_end, or close(), ends it.
class Scribe {
public:
    explicit Scribe(Standing standing) : now_{std::move(standing)} {}

    struct Kept {
        ShiftId shift;
        FactId id;
        std::vector<Boil::Entry> opening; // of a shift that this fact began: to be folded before it
    };
    Kept keep(Fact fact, std::vector<Change>& changes);
    // A fact of the latest shift; false if there is none of that number. Withdrawing its shift_end opens it again.
    bool withdraw(FactId fact, Instant at, std::string by, std::vector<Change>& changes);
    // The same in any shift, also one that has ended, which stays ended; 0: the journal will number it.
    FactId keepIn(ShiftId shift, Fact fact, std::vector<Change>& changes);
    void withdrawFrom(ShiftId shift, FactId fact, Instant at, std::string by, std::vector<Change>& changes);
    void close(std::vector<Change>& changes);
    // A setting made between shifts, or an offset learned: the next shift begins with it.
    void carry(Fact setting, std::vector<Change>& changes);

    // A name that no shift has, also none that is begun and not in the journal yet; taken from now on.
    ShiftId name(Instant first);

    std::optional<ShiftId> openShift() const { return now_.open ? now_.shift : std::nullopt; }
    // The settings a shift would begin with now, by key.
    std::vector<Set> inForce() const;

private:
    std::vector<Boil::Entry> begin(Instant at, std::vector<Change>& changes);
    Standing now_;
};

} // namespace panside
