#pragma once
// The rehearsal's other instruments: each reading with its noise, its last digit and the unit it is written in.
#include "core/rehearsal/plant.h"

namespace panside::rehearsal {

class Instruments {
public:
    Instruments(const RehearsalOptions& options, std::uint64_t seed);
    // The readings due at this second. `shown`: what the pan probe sends.
    void read(double since, Instant at, std::optional<double> shown, const Plant& plant, std::vector<Fact>& facts);

private:
    struct Written {
        Unit unit;
        double step;
    };
    Written writes(Series series) const;
    std::optional<double> value(Series series, std::optional<double> shown, const Plant& plant);
    bool due(Series series, double since) const;

    RehearsalOptions options_;
    Dice dice_;
    double stack_ = 5, froth_ = 0; // lagging and wandering parts
    double barometerBias_;
};

} // namespace panside::rehearsal
