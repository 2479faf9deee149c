#include "core/rehearsal/unrest.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace panside::rehearsal {
namespace {
constexpr double tideTakes = 1500, partsASecond = 0.0009; // of a section, where the heaving is 1
}

void Unrest::step(double dt) {
    door_ = 0;
    if (unrest_.heaves > 0) {
        // A pendulum that the boil kicks and that rings for a few of its swings, on a tide of half an hour.
        const double takes = seconds(unrest_.heaveTakes), turns = 2 * std::numbers::pi / takes, rings = 3 * takes;
        swing_ += turns * speed_ * dt;
        speed_ += (-turns * swing_ - 2 * speed_ / rings) * dt + dice_.normal(0, 1) * std::sqrt(4 * dt / rings);
        tide_ += -tide_ * dt / tideTakes + dice_.normal(0, 1) * std::sqrt(2 * dt / tideTakes);
        heaves_ = unrest_.heaves * partsASecond * std::clamp(1 + 1.1 * swing_ + 0.6 * tide_, 0.0, 5.0);
    }
    if (unrest_.pullsPerHour > 0) {
        pullsFor_ = std::max(0.0, pullsFor_ - dt);
        if (pullsFor_ <= 0 && dice_.chance(unrest_.pullsPerHour * dt / 3600)) {
            pullsFor_ = dice_.uniform(10, 60);
            pull_ = dice_.uniform(0.03, 0.35) / pullsFor_;
        }
    }
    if (unrest_.doorsPerHour > 0 && dice_.chance(unrest_.doorsPerHour * dt / 3600))
        door_ = dice_.uniform(60, 300);
}

} // namespace panside::rehearsal
