#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

#include <array>

namespace panside {

struct State;

// One reading as it comes in: freed of spikes and noise, and how far it can be believed.
class Sensor {
public:
    struct Filtered {
        double si;      // the believed value
        double noise;   // standard deviation of what was taken away, SI
        Instant at;     // of the last believed sample
    };
    // The last believed value; nullopt if there was none, or it is gone.
    std::optional<Filtered> value(Instant now) const;
    Trust trust(Instant now) const;
    Reason reason(Instant now) const;
    std::optional<Instant> lastRead() const { return last_; }

private:
    std::optional<Instant> last_;
    double si_ = 0;
};

class Sensors {
public:
    void take(const State& state, const Fact& fact);
    void show(const State& state, Instant now, Picture& picture) const;
    const Sensor& of(Series series) const { return sensors_[static_cast<std::size_t>(series)]; }

private:
    std::array<Sensor, seriesCount> sensors_;
};

}  // namespace panside
