#pragma once
#include <algorithm>
#include <cmath>

namespace panside {

// Checks that agree with each other and never with the pan: a jar from yesterday, or a cup that nobody dipped anew. A
// sample from the pan tells the pan's own change too: from draw to draw syrup differs by tenths of a Brix at the least.
class SameSample {
public:
    // The next check tells another sugar than those before: it begins anew.
    bool isOther(double brix) const {
        return count_ == 0 || std::max(highest_, brix) - std::min(lowest_, brix) > alike;
    }
    // What it told in Brix, and what the probe would read too high by it; kelvin.
    void addSample(double brix, double seen, double variance) {
        if (isOther(brix)) {
            *this = {};
            lowest_ = highest_ = brix;
        }
        lowest_ = std::min(lowest_, brix);
        highest_ = std::max(highest_, brix);
        // From one to the next: a probe that creeps moves by little in a draw's time.
        if (count_ > 0) {
            const double moved = (seen - seen_) * (seen - seen_) / (variance + variance_);
            apart_ += moved;
            most_ = std::max(most_, moved);
        }
        seen_ = seen;
        variance_ = variance;
        ++count_;
    }
    // Four or more, and the pan moved by more than a check errs, again and again: one leap is the probe's own, where a
    // crew draws to the line of its glass each time. Careful cups that tell the same figure four times are one in
    // hundreds, and in that the pan moves so far one in twenty.
    bool isNotThePans() const {
        const double pairs = count_ - 2;
        return count_ >= fewest && apart_ - most_ > pairs + rarely * std::sqrt(3 * pairs);
    }

private:
    static constexpr double alike = 0.05; // Brix: the same figure
    static constexpr double rarely = 2;   // standard deviations
    static constexpr int fewest = 4;
    double lowest_ = 0, highest_ = 0; // Brix
    double seen_ = 0, variance_ = 0;  // K, K^2
    double apart_ = 0, most_ = 0;     // squares of what lies between them, in their variances
    int count_ = 0;
};

} // namespace panside
