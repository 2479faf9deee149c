#include "core/rehearsal/options.h"
#include "core/rehearsal/dice.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {
// From 2 by 4 to 4 by 12 ft; two thirds to three quarters of it flue pan; slow and fast fires.
RehearsalRig anyRig(rehearsal::Dice& dice) {
    struct Size {
        double width, length, gallonsPerFoot;
    };
    static constexpr Size sizes[] = {{2, 4, 2.4}, {2, 6, 2.6}, {2.5, 8, 2.5}, {3, 8, 2.6}, {3, 10, 2.7}, {4, 12, 2.7}};
    const auto& size = sizes[dice.whole(0, 5)];
    RehearsalRig rig;
    const double area = size.width * size.length, front = dice.uniform(0.26, 0.36);
    rig.flueArea = Area::squareFoot(area * (1 - front));
    rig.syrupArea = Area::squareFoot(area * front);
    rig.flueSections = dice.whole(2, 4);
    rig.syrupChannels = dice.whole(3, 5);
    rig.mixes = Duration{dice.uniform(30, 120)};
    rig.depth = Length::inch(dice.uniform(1.1, 2.0));
    rig.flues = Length::inch(dice.uniform(4, 7));
    rig.rate = VolumeFlow::gallonPerHour(area * size.gallonsPerFoot * dice.uniform(0.75, 1.4));
    rig.syrupShare = dice.uniform(0.09, 0.17);
    rig.efficiency = dice.uniform(0.44, 0.64);
    rig.archTime = std::chrono::minutes{dice.whole(25, 50)};
    rig.elevation = Length::metre(std::round(dice.uniform(0, 1000)));
    return rig;
}
} // namespace

RehearsalOptions anyBoil(std::uint64_t seed) {
    rehearsal::Dice dice{seed, 1};
    RehearsalOptions boil;
    boil.rig = anyRig(dice);
    boil.us = dice.chance(0.5);
    boil.sap.sugar = Brix::degrees(std::round(10 * std::clamp(dice.normal(2.3, 0.8), 1.0, 5.0)) / 10);
    boil.sap.sweetLeft = dice.uniform(0.5, 1.0);
    boil.fire.interval = std::chrono::seconds{15 * dice.whole(22, 44)};
    boil.fire.slowness = std::clamp(seconds(boil.fire.interval) / 490 * dice.normal(1, 0.12), 0.6, 1.6);
    boil.fire.intervalScatter = dice.uniform(0.05, 0.15);
    boil.fire.loadScatter = dice.uniform(0.06, 0.18);
    boil.fire.moisture = std::round(dice.uniform(14, 30)) / 100;
    boil.fire.forgets = dice.uniform(0, 0.04);
    boil.probe.bias = TemperatureDifference::kelvin(dice.normal(0, 0.3));
    boil.probe.niterPerHour = dice.uniform(0, 0.04);
    boil.probe.noise = dice.uniform(0.02, 0.10);
    boil.probe.lag = Duration{dice.uniform(4, 15)};
    boil.probe.splashesPerHour = dice.uniform(0, 4);
    boil.probe.foamsPerHour = dice.uniform(0, 0.5);
    switch (dice.whole(0, 4)) {
    case 0:
        boil.probe.step = 0.1;
        break;
    case 1:
        boil.probe.unit = Unit::degF;
        boil.probe.step = 0.1;
        break;
    default:
        break;
    }
    boil.weather.seaLevelHpa = dice.normal(1014, 8);
    boil.weather.frontHpa = dice.chance(0.3) ? dice.uniform(-14, 10) : dice.uniform(-3, 3);
    boil.weather.frontAfter = std::chrono::minutes{dice.whole(60, 180)};
    boil.weather.barometerBiasHpa = dice.normal(0, 0.4);
    boil.weather.air = Temperature::celsius(dice.uniform(-6, 5));
    boil.crew.checks = dice.uniform(0.2, 0.6);
    boil.crew.glassBias = dice.normal(0, 0.12);
    boil.crew.glassScatter = 0.12;
    boil.crew.heavy = dice.uniform(0.08, 0.25);
    boil.crew.slow = Duration{dice.uniform(10, 40)};
    boil.crew.closesUnder = dice.uniform(0.1, 0.7);
    const double rate = boil.rig.rate.litrePerHour();
    boil.sap.atStart = Volume::litre(std::round(rate * 6.5));
    boil.rig.tank = Volume::litre(std::round(rate * 8));
    return boil;
}

} // namespace panside
