#pragma once
#include "core/boil/fact.h"
#include "core/boil/settings.h"

#include <optional>

namespace panside {

// Full cords (128 cubic feet stacked) in one load by its mass, or by the mass that was set for every load; nullopt
// where it was not weighed or cannot be. Wood that nobody named is reckoned as mixed hardwood.
std::optional<double> cordsOf(const Fired& fired, const Settings& settings);

// Sums up the weighed loads after a moment, of facts in the order of their times; settings count from before it.
class CordSum {
public:
    explicit CordSum(Instant after) : after_{after} {}
    void take(const Fact& fact);
    double cords() const { return cords_; }

private:
    Instant after_;
    Settings settings_;
    double cords_ = 0;
};

} // namespace panside
