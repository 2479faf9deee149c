#pragma once
// What the ledger finds odd in a row. A mark never refuses anything: the row is kept as it stands.
#include "core/quantity/quantity.h"

#include <cstdint>
#include <optional>
#include <string>

namespace panside {

enum class MarkKind : std::uint8_t {
    belowEmpty,    // more was taken out than the book had in it
    overRim,       // more was put in than it holds
    vesselOut,     // it was retired
    vesselUnknown, // nobody named it
    packedTooCool,
    underDensity,   // packed under the least of the place
    overDensity,    // packed over the most
    shippedTooMany, // more than were made
    backTooMany,    // more came back than had left
    sizeUnknown,    // of a lot that was never packed in it; `more` is the size
    lotUnknown,     // shipped, graded or destroyed, and nobody packed it
    codeTwice,
    drawTwice,         // told by two, counted once
    noVessel,          // a draw with nowhere to go
    noVolume,          // a press run of which nobody said how much went through
    thinner,           // a concentrate thinner than what went in
    sugarOdd,          // sap of a sugar that no tree gives
    milk,              // in a lot: butter, cream or milk was used against foam
    lead,              // over the limit of the place
    ropy,              // sap that was ropy is in it
    offFlavour,        // went into good syrup, or into a small container
    depthNoShape,      // a depth of a vessel whose shape nobody told
    shapeUnread,       // `more` is no shape
    pressNotOpen,      // a run ended that nobody began
    pressNotEnded,     // a run began while another was going on: nobody said what went through that one
    heelTooMuch,       // a press is said to hold back more than was in it
    pressureWithoutRun // the gauge of the press shows pressure, and no run goes on
};

struct LedgerMark {
    MarkKind kind;
    std::size_t row = 0;               // in the ledger's rows
    std::string name = {};             // of the vessel or lot
    std::optional<double> amount = {}; // litres, degC or brix by kind: by how much, or how much it is
    std::optional<double> limit = {};
    std::optional<Instant> before = {}; // the entry before it that does not fit
    std::string more = {};
    bool operator==(const LedgerMark&) const = default;
};

// One English sentence without a place: `drum 7: 3.2 L more were taken out than the book had in it …`
std::string sentence(const LedgerMark& mark);

} // namespace panside
