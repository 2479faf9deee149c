#include "core/rehearsal/weather.h"

#include <cmath>

namespace panside::rehearsal {

Sky::Sky(const RehearsalOptions& options, std::uint64_t seed)
    : weather_{options.weather}, elevation_{options.rig.elevation.metre()}, dice_{seed, 11} {
    step(0, 0);
}

double Sky::passed(double since) const {
    const double span = seconds(weather_.frontTakes) / 8;
    const double middle = seconds(weather_.frontAfter) + seconds(weather_.frontTakes) / 2;
    return 1 / (1 + std::exp(-(since - middle) / span));
}

void Sky::meet(const RehearsalWeather& weather, double since) {
    const double before = weather_.seaLevelHpa + weather_.frontHpa * passed(since);
    weather_ = weather;
    weather_.seaLevelHpa = before - weather_.frontHpa * passed(since);
}

void Sky::step(double dt, double since) {
    // A wander of some tenths of a hectopascal that forgets itself in an hour.
    wander_ += -wander_ * dt / 3600 + dice_.normal(0, 0.25) * std::sqrt(2 * dt / 3600);
    const double passed = this->passed(since);
    seaLevel_ = 100 * (weather_.seaLevelHpa + weather_.frontHpa * passed + wander_);
    air_ = weather_.air.celsius() - 4 * std::sin(since / 86400 * 6.2831853) - (weather_.frontHpa > 0 ? 3 * passed : 0);
    // Height of the air column above the sea, at the mean temperature of a winter's column.
    pascal_ = seaLevel_ *
              std::exp(-elevation_ * 9.80665 * 0.0289644 / (8.314462618 * (273.15 + air_ + 0.00325 * elevation_)));
}

} // namespace panside::rehearsal
