// Boils as nobody likes them: each group one kind of unrest that a tidy plant lacks, the last all of them at once.
#include "core/rehearsal/dice.h"
#include "tests/forecast/boils.h"

#include <cmath>

namespace panside::judge {

namespace {
using rehearsal::Dice;

void sticks(RehearsalOptions& boil, Dice& dice) { boil.unrest.floatSticks = Length::millimetre(dice.uniform(6, 18)); }
void heaves(RehearsalOptions& boil, Dice& dice) {
    boil.unrest.heaves = dice.uniform(1.5, 4.0);
    boil.unrest.heaveTakes = Duration{dice.uniform(120, 300)};
}
void wanders(RehearsalOptions& boil, Dice& dice) {
    boil.probe.lag = Duration{dice.uniform(15, 60)};
    boil.probe.wander = dice.uniform(0.06, 0.2);
}
void keysBadly(RehearsalOptions& boil, Dice& dice) {
    boil.crew.keysLate = Duration{dice.uniform(20, 90)};
    boil.crew.drawsTwice = dice.uniform(0, 0.2);
    boil.crew.drawsUnkeyed = dice.uniform(0, 0.2);
    boil.fire.unpressed = dice.uniform(0.1, 0.5);
}
void carriesCups(RehearsalOptions& boil, Dice& dice) {
    boil.crew.tellsDip = false;
    boil.crew.glassBias = dice.normal(0, 0.15);
    boil.crew.heavy = dice.uniform(-0.05, 0.3);
}
void pulls(RehearsalOptions& boil, Dice& dice) { boil.unrest.pullsPerHour = dice.uniform(4, 15); }
void opensDoors(RehearsalOptions& boil, Dice& dice) {
    boil.unrest.doorsPerHour = dice.uniform(0.5, 3);
    boil.fire.forgets = dice.uniform(0.05, 0.2);
    boil.fire.intervalScatter = dice.uniform(0.1, 0.3);
}
void startsCold(RehearsalOptions& boil, Dice& dice) {
    boil.sap.sweetLeft = dice.uniform(0, 0.4);
    boil.sap.sugar = Brix::degrees(dice.uniform(1.6, 3.5));
}
void concentrates(RehearsalOptions& boil, Dice& dice) {
    boil.sap.concentrates = dice.uniform(1.8, 4);
    boil.sap.concentratesAfter = Duration{dice.uniform(1.5, 4) * 3600};
}

using HardChange = void (*)(RehearsalOptions&, Dice&);
struct HardGroup {
    const char* name;
    HardChange change;
};
constexpr HardGroup hardGroups[] = {
    {"sticking float", sticks},
    {"heaving boil", heaves},
    {"slow, wandering probe", wanders},
    {"keys late, twice, never", keysBadly},
    {"cups carried", carriesCups},
    {"thin sap pulled forward", pulls},
    {"doors and gaps", opensDoors},
    {"cold start, thin sap", startsCold},
    {"concentrate switched on", concentrates},
    {"all of it",
     [](RehearsalOptions& boil, Dice& dice) {
         for (const HardChange change : {sticks, heaves, wanders, keysBadly, carriesCups, opensDoors})
             change(boil, dice);
     }},
};
} // namespace

std::vector<Boiling> hardBoils(int inEachGroup) {
    std::vector<Boiling> all;
    for (std::size_t g = 0; g < std::size(hardGroups); ++g)
        for (int i = 1; i <= inEachGroup; ++i) {
            const std::uint64_t seed = 80'000 + 1000 * g + static_cast<std::uint64_t>(i);
            Boiling boiling{hardGroups[g].name, seed, anyBoil(seed)};
            Dice dice{seed, 4};
            hardGroups[g].change(boiling.options, dice);
            all.push_back(std::move(boiling));
        }
    return all;
}

} // namespace panside::judge
