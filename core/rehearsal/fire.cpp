#include "core/rehearsal/fire.h"

#include <algorithm>
#include <cmath>

namespace panside::rehearsal {
namespace {
// Dry wood: 18.6 MJ/kg lower heating value (handbook figure for hardwood), of which the gas gives 0.78 * 14.9 and the
// char 0.22 * 31.8. Drying a kilogram of its water takes 2.44 MJ.
constexpr double gasShare = 0.78, gasHeat = 14.9e6, charHeat = 31.8e6, dryingHeat = 2.44e6;
constexpr double sapWarming = 4.1e3 * 94; // J/kg, from a cold tank to the boil
constexpr double boiling = 2.257e6;
constexpr double archShare = 0.20; // of the heat released, into brick and iron
constexpr double archLoses = 0.40; // of what they hold, to the house

double wetHeat(double moisture) {
    return (1 - moisture) * (gasShare * gasHeat + (1 - gasShare) * charHeat) - moisture * dryingHeat;
}
} // namespace

Firebox::Firebox(const RehearsalRig& rig, const RehearsalFire& fire)
    : fire_{fire}, nominal_{rig.rate.si() * 1000.0 * (boiling + sapWarming)},
      efficiency_{rig.efficiency}, load_{nominal_ / rig.efficiency * seconds(fire.interval) / wetHeat(fire.moisture)},
      fuelRate_{nominal_ / rig.efficiency}, archTime_{seconds(rig.archTime)} {}

void Firebox::load(double kilogram, double moisture) {
    drying_ += kilogram * (1 - moisture);
    water_ += kilogram * moisture;
}

void Firebox::step(double dt, double airCelsius) {
    // A hot box dries and gasses a load sooner than a cold one.
    const double hot = (0.35 + 0.65 * std::clamp(released_ / fuelRate_, 0.0, 1.3)) / fire_.slowness;
    const double door = doorOpen() ? 1.0 : 0.0;
    const double wet = drying_ > 0 ? water_ / drying_ : 0;
    const double dried = drying_ * std::min(1.0, dt * hot / (70 + 260 * wet));
    const double steamed = wet * dried;
    const double gassed = gassing_ * std::min(1.0, dt * hot / 250);
    const double charred = char_ * std::min(1.0, dt * (0.6 / fire_.slowness + 0.4 * hot) / 1300);
    drying_ -= dried;
    water_ -= steamed;
    gassing_ += dried - gassed;
    char_ += (1 - gasShare) * gassed - charred;

    const double offered = (gasShare * gassed * gasHeat + charred * charHeat) / dt;
    // Air limits the flame: what it cannot burn goes up the stack.
    const double most = 1.9 * fuelRate_;
    const double burnt = most * std::tanh(offered / most);
    released_ = std::max(0.0, burnt * (1 - 0.12 * door) - steamed * dryingHeat / dt);

    flame_ += (released_ - flame_) * std::min(1.0, dt / 22);
    const double over = flame_ / fuelRate_;
    const double reach = efficiency_ * (1.08 - 0.06 * over * over) / (1 - archLoses * archShare);
    const double stored = archShare * flame_;
    const double given = arch_ / archTime_;
    arch_ += (stored - given) * dt;
    intoPans_ = std::max(0.0, reach * ((1 - archShare) * flame_ * (1 - 0.30 * door) + (1 - archLoses) * given));

    // Flue gas at the base: hotter with the fire, thinned by cold air at the door, cooled by the steam of a wet load.
    const double steam = std::clamp(steamed * dryingHeat / dt / fuelRate_, 0.0, 0.5);
    const double aim = airCelsius + (70 * std::min(1.0, arch_ / (archShare * fuelRate_ * archTime_)) +
                                     345 * std::pow(std::max(over, 0.0), 0.75) * (1 - 0.5 * steam)) *
                                        (1 - 0.32 * door);
    stack_ += (aim - stack_) * std::min(1.0, dt / (door > 0 ? 14 : 20));
    doorFor_ = std::max(0.0, doorFor_ - dt);
}

} // namespace panside::rehearsal
