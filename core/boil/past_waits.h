#pragma once
// What the last waits of this shift say of the one that lasts: a lognormal with slow forgetting, given how long it has
// lasted already. It looks at no thermometer. Plain numbers, in seconds: sums of their logarithms.
#include <array>
#include <optional>

namespace panside {

// Seconds from now: one in ten, one in two, nine in ten come sooner. A ninth that is missing: more than one future in
// ten never gets there.
struct Quantiles {
    double p10, p50;
    std::optional<double> p90;
};

class PastWaits {
public:
    void add(double seconds);
    // From here on waits are so many times shorter.
    void hasten(double factor);
    // What waits of shifts before were like, until this one has its own.
    void expect(double seconds);
    std::optional<double> usual() const; // their geometric mean, seconds
    bool any() const { return count_ > 0; }
    int seen() const { return seen_; } // of this shift
    std::optional<Quantiles> rest(double lasted) const;

private:
    int seen_ = 0;
    double count_ = 0, mean_ = 0, squares_ = 0; // of the logarithms
};

// Pinball loss of a forecast, all three quantiles; a missing ninth counts as four hours.
double lossOf(const Quantiles& forecast, double came);

} // namespace panside
