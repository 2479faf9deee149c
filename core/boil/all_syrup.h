#pragma once
// Syrup from end to end: how long until the whole syrup pan has turned, if nobody draws.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

struct AllSyrupBasis {
    Area flue, syrup; // of the pans; flue 0: there is one pan
    Length depth;     // in the syrup pan
    VolumeFlow feed;  // sap that leaves the tank
    Brix now, coming; // of the sap whose sugar reaches the syrup pan: now, and a third of an hour on
    Brix wanted;      // syrup
};

// Range      areas to 100 m2, depth to 0.5 m, feed 1 to 10 000 L/h, sap 0.2 to 30 brix, syrup over 50
// Outside    nullopt
// Accuracy   a third, on made-up rigs with 2 and with 8 brix (feed_jump_test.cpp); longer where they go on drawing
// Source     mass balance: what sugar the pan takes up until it is all syrup, over the sugar that comes in. The pan's
//            sugar is the logarithmic mean of its two ends, as in a chain of stirred sections; that a square metre of
//            flues boils off twice what a flat one does is common practice, no source
[[nodiscard]] std::optional<Duration> untilAllSyrup(const AllSyrupBasis& basis);

} // namespace panside
