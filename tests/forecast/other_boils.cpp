// Plants that nothing was tuned on: wider than any rehearsal draws them, in every respect at once.
#include "core/rehearsal/dice.h"
#include "tests/forecast/boils.h"

#include <cmath>

namespace panside::judge {

namespace {
using rehearsal::Dice;

void otherRig(RehearsalOptions& boil, Dice& dice) {
    boil.rig.syrupChannels = dice.whole(2, 6);
    boil.rig.flueSections = dice.whole(2, 5);
    boil.rig.mixes = Duration{dice.uniform(25, 200)};
    boil.rig.depth = Length::inch(dice.uniform(0.9, 2.8));
    boil.rig.syrupShare = dice.uniform(0.07, 0.2);
    boil.rig.archTime = std::chrono::minutes{dice.whole(12, 70)};
    boil.rig.elevation = Length::metre(std::round(dice.uniform(0, 900)));
}

void otherHabits(RehearsalOptions& boil, Dice& dice) {
    boil.crew.heavy = dice.uniform(-0.05, 0.4);
    boil.crew.slow = Duration{dice.uniform(5, 70)};
    boil.crew.closesUnder = dice.uniform(0.05, 0.9);
    boil.crew.checks = dice.uniform(0.1, 0.9);
    boil.crew.glassBias = dice.normal(0, 0.15);
    boil.crew.cupScatter = dice.uniform(0.3, 2);
    boil.crew.forgetsToClose = dice.uniform(0, 0.05);
    boil.fire.forgets = dice.uniform(0, 0.08);
    boil.fire.intervalScatter = dice.uniform(0.03, 0.25);
    boil.fire.loadScatter = dice.uniform(0.05, 0.3);
    boil.fire.unpressed = dice.uniform(0, 0.1);
}

void otherProbe(RehearsalOptions& boil, Dice& dice) {
    boil.probe.bias = TemperatureDifference::kelvin(dice.normal(0, 0.5));
    boil.probe.noise = dice.uniform(0.01, 0.15);
    boil.probe.lag = Duration{dice.uniform(2, 30)};
    boil.probe.niterPerHour = dice.uniform(-0.01, 0.08);
    boil.probe.splashesPerHour = dice.uniform(0, 8);
    boil.probe.foamsPerHour = dice.uniform(0, 2);
}

void slowly(RehearsalOptions& boil, std::chrono::seconds spacing) { boil.spacing = spacing; }

using OtherChange = void (*)(Boiling&, Dice&);
struct OtherGroup {
    const char* name;
    OtherChange change;
};
constexpr OtherGroup otherGroups[] = {
    {"other rigs", [](Boiling& boil, Dice& dice) { otherRig(boil.options, dice); }},
    {"other habits", [](Boiling& boil, Dice& dice) { otherHabits(boil.options, dice); }},
    {"other probes", [](Boiling& boil, Dice& dice) { otherProbe(boil.options, dice); }},
    {"all of it", [](Boiling&, Dice&) {}},
    {"all, a reading a minute", [](Boiling& boil, Dice&) { slowly(boil.options, std::chrono::minutes{1}); }},
    {"all, by hand each 5 min",
     [](Boiling& boil, Dice&) {
         slowly(boil.options, std::chrono::minutes{5});
         boil.options.byHand = true;
         boil.options.readings = {Series::syrup_pan, Series::pressure};
     }},
    {"0.5 K off, never checked",
     [](Boiling& boil, Dice& dice) {
         boil.options.probe.bias = TemperatureDifference::kelvin(dice.chance(0.5) ? 0.5 : -0.5);
         boil.unchecked = true;
     }},
};
constexpr std::size_t firstOfAll = 3, lastOfAll = 5; // otherGroups in which everything differs
} // namespace

std::vector<Boiling> otherBoils(int inEachGroup) {
    std::vector<Boiling> all;
    for (std::size_t g = 0; g < std::size(otherGroups); ++g)
        for (int i = 1; i <= inEachGroup; ++i) {
            const std::uint64_t seed = 50'000 + 1000 * g + static_cast<std::uint64_t>(i);
            Boiling boiling{otherGroups[g].name, seed, anyBoil(seed)};
            Dice dice{seed, 3};
            if (g >= firstOfAll && g <= lastOfAll) {
                otherRig(boiling.options, dice);
                otherHabits(boiling.options, dice);
                otherProbe(boiling.options, dice);
            }
            otherGroups[g].change(boiling, dice);
            all.push_back(std::move(boiling));
        }
    return all;
}

} // namespace panside::judge
