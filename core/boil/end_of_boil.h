#pragma once
// How a boil ends: when the last load goes in, what sap covers the pans while the fire burns out, when the tank is
// empty.
#include "core/quantity/quantity.h"

#include <optional>

namespace panside {

// A forecast of a time from now, as quantiles. p90 alone may be missing: more than one future in ten never gets there.
struct Range {
    Duration p10, p50;
    std::optional<Duration> p90;
    bool operator==(const Range&) const = default;
};

// What it rests on, as known at a moment.
struct EndBasis {
    Volume tank;           // sap left
    VolumeFlow use, useSd; // sap that leaves the tank while the fire is fed; how far the time to come may differ
    VolumeFlow steam;      // water boiled off
    Area pans;             // all that the fire stands under
    Length depth;          // running depth: they are raised by it again before the fire burns out
    Duration burnOut;      // after the last load
    bool operator==(const EndBasis&) const = default;
};

// What may come otherwise: sap that arrives, and a fire that boils off by a share more or less than now.
struct EndChange {
    Volume moreSap{};
    double harder = 0;
    bool operator==(const EndChange&) const = default;
};

struct EndPlan {
    Volume tank, keepBack;
    VolumeFlow use;
    Range lastLoad; // from now; zero: it is due, or past
    Range coldFire; // burnt out, after that last load
    Range runsOut;  // the tank, were the fire fed on
    bool operator==(const EndPlan&) const = default;
};

// Range      tank to 1000 m3, use above 1 L/h, and what sapToKeepBack takes; harder from -0.9 to 3
// Outside    nullopt
// Accuracy   that of its basis; the ranges hold eight of ten where `useSd` does
// Source     arithmetic of volumes and rates; sapToKeepBack for what is kept back
[[nodiscard]] std::optional<EndPlan> planEnd(const EndBasis& basis, const EndChange& change = {});

// Sap in the tank at a moment of the plan: it falls evenly until the last load, then with the fire, which dies away
// evenly. What fills the pans up is not in it.
[[nodiscard]] Volume tankAt(const EndPlan& plan, Duration fromNow);

} // namespace panside
