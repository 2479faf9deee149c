#include "tests/forecast/boils.h"
#include "core/rehearsal/dice.h"

#include <cmath>

namespace panside::judge {

namespace {
using rehearsal::Dice;
using Change = void (*)(RehearsalOptions&, Dice&);
struct Group {
    const char* name;
    Change change;
};

void boilOff(RehearsalOptions& boil, double factor) {
    boil.rig.rate = boil.rig.rate * factor;
    boil.sap.atStart = boil.sap.atStart * factor;
    boil.rig.tank = boil.rig.tank * factor;
}

constexpr Group groups[] = {
    {"as drawn", [](RehearsalOptions&, Dice&) {}},
    {"thin sap 1-1.7 %",
     [](RehearsalOptions& boil, Dice& dice) { boil.sap.sugar = Brix::degrees(dice.uniform(1.0, 1.7)); }},
    {"sweet sap 3.5-5 %",
     [](RehearsalOptions& boil, Dice& dice) { boil.sap.sugar = Brix::degrees(dice.uniform(3.5, 5.0)); }},
    {"slow fire",
     [](RehearsalOptions& boil, Dice& dice) {
         boil.fire.interval = Duration{std::round(dice.uniform(600, 840))};
         boilOff(boil, 0.75);
     }},
    {"fast fire",
     [](RehearsalOptions& boil, Dice& dice) {
         boil.fire.interval = Duration{std::round(dice.uniform(280, 380))};
         boilOff(boil, 1.3);
     }},
    {"700-1000 m", [](RehearsalOptions& boil,
                      Dice& dice) { boil.rig.elevation = Length::metre(std::round(dice.uniform(700, 1000))); }},
    {"front passing",
     [](RehearsalOptions& boil, Dice& dice) {
         boil.weather.frontHpa = (dice.chance(0.5) ? 1 : -1) * dice.uniform(8, 18);
         boil.weather.frontTakes = std::chrono::hours{dice.whole(2, 4)};
     }},
    {"forgotten firings", [](RehearsalOptions& boil, Dice& dice) { boil.fire.forgets = dice.uniform(0.08, 0.15); }},
    {"biased probe",
     [](RehearsalOptions& boil, Dice& dice) {
         boil.probe.bias = TemperatureDifference::kelvin((dice.chance(0.5) ? 1 : -1) * dice.uniform(0.5, 0.9));
         boil.crew.waterCheck = dice.chance(0.5);
     }},
    {"cold start",
     [](RehearsalOptions& boil, Dice& dice) {
         boil.sap.sweetLeft = dice.uniform(0, 0.15);
         boil.sap.sugar = Brix::degrees(dice.uniform(2.5, 4));
         boil.crew.boilFor = std::chrono::hours{8};
         boil.sap.atStart = boil.sap.atStart * 1.35;
         boil.rig.tank = boil.rig.tank * 1.35;
     }},
    {"feed and probe faults",
     [](RehearsalOptions& boil, Dice& dice) {
         boil.feedFault = dice.chance(0.5) ? FeedFault::stops : FeedFault::sticksOpen;
         boil.feedFaultAfter = Duration{std::round(dice.uniform(2, 4) * 3600)};
         boil.probeFault = static_cast<ProbeTrouble>(dice.whole(1, 4));
         boil.probeFaultAfter = Duration{std::round(dice.uniform(1.5, 4.5) * 3600)};
         boil.probeFaultLasts = Duration{std::round(dice.uniform(60, 600))};
     }},
    {"pan probe alone", [](RehearsalOptions& boil, Dice&) { boil.readings = {Series::syrup_pan}; }},
    {"pan and stack",
     [](RehearsalOptions& boil, Dice&) {
         boil.readings = {Series::syrup_pan, Series::stack, Series::pressure};
     }},
    {"a reading a minute", [](RehearsalOptions& boil, Dice&) { boil.spacing = std::chrono::minutes{1}; }},
    {"by hand, each 5 min",
     [](RehearsalOptions& boil, Dice&) {
         boil.spacing = std::chrono::minutes{5};
         boil.byHand = true;
         boil.readings = {Series::syrup_pan, Series::pressure, Series::tank_level};
     }},
};
} // namespace

std::vector<Boiling> boils(int inEachGroup) {
    std::vector<Boiling> all;
    std::uint64_t number = 0;
    for (const auto& group : groups) {
        ++number;
        for (int i = 1; i <= inEachGroup; ++i) {
            const std::uint64_t seed = 1000 * number + static_cast<std::uint64_t>(i);
            Boiling boiling{group.name, seed, anyBoil(seed)};
            Dice dice{seed, 2};
            group.change(boiling.options, dice);
            all.push_back(std::move(boiling));
        }
    }
    return all;
}

} // namespace panside::judge
