#pragma once
#include "core/boil/loads.h"

#include <optional>

namespace panside {

// Full cords (128 cubic feet stacked: a number of them, since no volume of wood is one) in one load by its mass;
// nullopt where that is not known. Wood that nobody named is reckoned as mixed hardwood.
std::optional<double> cordsOf(const Load& load);

// Sums up the weighed loads after a moment, of facts in the order of their times (those that LoadsOfShift asks for);
// settings count from before it.
class CordSum {
public:
    explicit CordSum(Instant after) : after_{after} {}
    void add(const Fact& fact) { loads_.add(fact); }
    double cords() const;

private:
    Instant after_;
    LoadsOfShift loads_;
};

} // namespace panside
