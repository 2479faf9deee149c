#pragma once
// The sap page: what stands in each tank, how warm and how old it is, when it runs over, and what to boil first. No
// countdown to sour: no published law of growth fits a sugarhouse tank. Hours stand beside the published limits, and
// nose and eye decide.
#include "core/ledger/ledger.h"

namespace panside {

enum class BoilReason : std::uint8_t {
    onlyOne,     // nothing else stands that is to be boiled
    concentrate, // microbes were concentrated too
    warm,        // more hours over 50, or over 40 degF
    old,         // its oldest part came in first
    like,        // no different from any other
    ropy         // not to be boiled unlooked at
};

struct TankPicture {
    std::size_t vessel; // into the ledger's
    Volume volume;      // at 20 degC
    Brix sugar, sugarSd;
    bool sugarAssumed = false, concentrate = false;
    std::optional<Volume> room; // to the rim; less than nothing: over it by the book
    std::optional<Duration> oldest;
    std::optional<Temperature> now, coldest, warmest; // as told; `now` the last told, of the blend
    std::optional<Duration> toldAgo;                  // since that temperature was told
    Duration over40F{0}, over50F{0};                  // by what was told: nothing is known between
    bool atFreezing = false; // ice may be in it: what is left is sweeter, and less than it looks
    bool ropy = false;
    struct Filling {
        VolumeFlow rate;
        Duration soonest, likely; // until the rim
        int deliveries;           // that it rests on, of the last day
    };
    std::optional<Filling> filling; // none: it does not surely fill, or nobody told its size
};

struct BoilFirst {
    std::size_t tank; // into SapPage::tanks
    BoilReason reason;
};

struct SapPage {
    std::vector<TankPicture> tanks; // that hold anything, in the order of the ledger
    std::vector<BoilFirst> order;   // the first to boil first
    Volume sap, concentrate;
    Mass sugar;
};
SapPage sapPage(const Ledger& ledger, Instant now);

// A tank that runs over or soon may, by the book: over its rim; less room than `overflow_rim`; where that was never
// set, within a quarter of an hour at the rate at which it fills. Only one that something came into within the last
// day: a tank that was left full yesterday is told by the page.
struct RimCall {
    std::size_t vessel; // into the ledger's
    Volume room;        // less than nothing: over it
    std::optional<Volume> rim;
    std::optional<Duration> fullIn;
};
std::vector<RimCall> rimCalls(const Ledger& ledger, Instant now);

// The sweet that the pans hold since a night.
struct SweetInPans {
    Mass sugar, sd;
    bool unknown = false; // more was drawn than the book had in them, or a long silence lies between
    std::optional<Duration> since, oldest;
};
std::optional<SweetInPans> sweetInPans(const Ledger& ledger, Instant now); // none: drained, or never filled

} // namespace panside
