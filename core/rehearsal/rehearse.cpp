#include "core/rehearsal/rehearse.h"
#include "core/boil/shift_log.h"
#include "core/rehearsal/rehearsal.h"

#include <algorithm>
#include <cmath>

namespace panside {

RehearsalOptions anEvening(std::uint64_t seed) {
    auto options = anyBoil(seed);
    options.rig = {};
    options.us = true;
    options.fire.interval = std::chrono::minutes{8};
    options.fire.slowness = 1;
    options.probe.bias = TemperatureDifference::kelvin(0.25);
    options.probe.unit = Unit::degF;
    options.probe.step = 0.1;
    options.crew.glassBias = 0.08;
    options.crew.names = {"Maud", "Ansel", "Perrin"};
    // The season begins at the end of February; each seed is a later day, lit at half past five in the east of the US.
    options.begins += std::chrono::hours{24} * static_cast<int>(seed % 40) + std::chrono::minutes{270};
    return options;
}

std::string rehearsedLog(Duration length, std::uint64_t seed, Duration spacing, std::optional<Instant> begins) {
    auto options = anEvening(seed);
    options.begins = begins.value_or(options.begins);
    options.spacing = spacing;
    options.crew.boilFor = std::max<Duration>(std::chrono::minutes{30}, length - Duration{4500});
    const double hours = seconds(options.crew.boilFor) / 3600;
    options.sap.atStart = Volume::litre(std::round(options.rig.rate.litrePerHour() * (hours + 1.5)));
    options.rig.tank = Volume::gallon(100 * std::ceil(options.sap.atStart.gallon() / 100 + 0.5));
    Rehearsal boil{options, seed};
    auto facts = boil.advance(options.begins + length);
    if (!boil.ended())
        facts.push_back({options.begins + length, ShiftEnd{}, options.crew.names.front()});
    return writeLog(facts);
}

} // namespace panside
