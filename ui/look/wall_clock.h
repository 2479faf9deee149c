#pragma once
// What the clock on the wall said. Facts are timed by a clock that never jumps; people read the other one.
#include "core/boil/fact.h"

#include <QDateTime>
#include <vector>

namespace panside {

class WallClock {
public:
    void moved(Instant at, Duration by) { steps_.push_back({at, by}); }
    void forget() { steps_.clear(); }
    // Local time as it was shown at that moment.
    QDateTime at(Instant when) const;
    QString hourAndMinute(Instant when) const; // "21:14"
    bool operator==(const WallClock&) const = default;

private:
    struct Step {
        Instant at;
        Duration by;
        bool operator==(const Step&) const = default;
    };
    std::vector<Step> steps_;
};

} // namespace panside
