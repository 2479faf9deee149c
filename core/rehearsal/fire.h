#pragma once
// The rehearsal's firebox: loads dry, gas off and burn down to char; the arch stores heat and gives it back.
#include "core/rehearsal/options.h"

namespace panside::rehearsal {

class Firebox {
public:
    Firebox(const RehearsalRig& rig, const RehearsalFire& fire);

    // The load which, every interval, keeps up the heat that the pans take when fired as meant, kg.
    double nominalLoad() const { return load_; }

    void load(double kilogram, double moisture);
    void openDoor(double seconds) { doorFor_ = seconds; }
    void step(double seconds, double airCelsius);

    double intoPans() const { return intoPans_; } // W
    double released() const { return released_; } // W, after drying the wood
    double stackCelsius() const { return stack_; }
    double bed() const { return drying_ + gassing_ + char_; } // kg of dry wood not yet burnt
    bool doorOpen() const { return doorFor_ > 0; }

private:
    RehearsalFire fire_;
    double nominal_, efficiency_, load_, fuelRate_, archTime_;
    double drying_ = 0, water_ = 0, gassing_ = 0, char_ = 0; // kg
    double arch_ = 0;                                        // J stored
    double flame_ = 0;                                       // W, released as felt by the pans
    double released_ = 0, intoPans_ = 0, stack_ = 5;
    double doorFor_ = 0;
};

} // namespace panside::rehearsal
