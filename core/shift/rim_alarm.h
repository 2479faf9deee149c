#pragma once
// tank_overflow of the tanks that no gauge reads: what the ledger says of them becomes alarms beside the engine's. The
// feed tank is the engine's own where its gauge and its size are known.
#include "core/boil/picture.h"

#include <map>
#include <memory>

namespace panside {

class HouseLedger;

// May it make a tank call, or be quiet, or change what the pans hold between two shifts?
inline bool fillsTanks(const Fact& fact) {
    return std::holds_alternative<DayRow>(fact.what) || std::holds_alternative<SapIn>(fact.what) ||
           std::holds_alternative<Set>(fact.what) || std::holds_alternative<ShiftEnd>(fact.what);
}

class RimAlarm {
public:
    // The ledger as it was read last; none: it is not known yet.
    void knows(std::shared_ptr<const HouseLedger> house) { house_ = std::move(house); }
    // Somebody said so; of all tanks, as an alarm is named.
    void seen(Instant at) { seenAt_ = at; }
    void shelved(Instant until) { shelvedUntil_ = until; }
    void show(Picture& picture);

private:
    std::shared_ptr<const HouseLedger> house_;
    std::map<std::string, Instant> since_; // by tank
    std::optional<Instant> seenAt_, shelvedUntil_;
};

} // namespace panside
