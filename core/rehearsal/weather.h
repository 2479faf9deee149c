#pragma once
// The rehearsal's weather: pressure at the pan with a front and the small wandering of any day, and the air outside.
#include "core/rehearsal/dice.h"
#include "core/rehearsal/options.h"

namespace panside::rehearsal {

class Sky {
public:
    Sky(const RehearsalOptions& options, std::uint64_t seed);
    void step(double dt, double sinceBegin);
    // Another front than the one that was to come; how far that one had passed stays.
    void meet(const RehearsalWeather& weather, double since);
    double pascal() const { return pascal_; }
    double seaLevelPascal() const { return seaLevel_; }
    double airCelsius() const { return air_; }

private:
    double passed(double since) const; // of the front: 0 to 1
    RehearsalWeather weather_;
    double elevation_;
    Dice dice_;
    double wander_ = 0, pascal_ = 101325, seaLevel_ = 101325, air_ = 0;
};

} // namespace panside::rehearsal
