#include "core/probe/rehearse.h"
#include "core/boil/shift_log.h"
#include "core/probe/rehearsal.h"

#include <algorithm>

namespace panside {

std::string rehearsedLog(Duration length, std::uint64_t seed, Duration spacing) {
    auto options = anyBoil(seed);
    options.spacing = spacing;
    options.crew.boilFor = std::max<Duration>(std::chrono::minutes{30}, length - Duration{4500});
    // The first of a season's evenings at six; each seed a later one.
    options.begins += std::chrono::hours{24} * static_cast<int>(seed % 30);
    const double hours = seconds(options.crew.boilFor) / 3600;
    const double litres = options.rig.rate.litrePerHour() * (hours + 1.5);
    options.sap.atStart = Volume::litre(litres);
    options.rig.tank = Volume::litre(std::max(options.rig.tank.litre(), 1.2 * litres));
    Rehearsal boil{options, seed};
    auto facts = boil.advance(options.begins + length);
    if (!boil.ended())
        facts.push_back({options.begins + length, ShiftEnd{}, options.crew.names.front()});
    return writeLog(facts);
}

} // namespace panside
