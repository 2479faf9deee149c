#include "core/rehearsal/dice.h"

#include <cmath>
#include <numbers>

namespace panside::rehearsal {
namespace {
std::uint64_t splitmix(std::uint64_t& x) {
    x += 0x9e3779b97f4a7c15U;
    std::uint64_t z = x;
    z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9U;
    z = (z ^ (z >> 27U)) * 0x94d049bb133111ebU;
    return z ^ (z >> 31U);
}
} // namespace

Dice::Dice(std::uint64_t seed, std::uint64_t stream) : state_{} {
    std::uint64_t x = seed * 0x2545f4914f6cdd1dU + stream;
    for (auto& word : state_)
        word = splitmix(x);
}

std::uint64_t Dice::next() {
    const std::uint64_t result = std::rotl(state_[1] * 5U, 7) * 9U;
    const std::uint64_t shifted = state_[1] << 17U;
    state_[2] ^= state_[0];
    state_[3] ^= state_[1];
    state_[1] ^= state_[2];
    state_[0] ^= state_[3];
    state_[2] ^= shifted;
    state_[3] = std::rotl(state_[3], 45);
    return result;
}

double Dice::uniform() { return static_cast<double>(next() >> 11U) * 0x1.0p-53; }

double Dice::uniform(double low, double high) { return low + (high - low) * uniform(); }

int Dice::whole(int low, int high) { return low + static_cast<int>(uniform() * (high - low + 1)); }

double Dice::normal(double mean, double sd) {
    const double radius = std::sqrt(-2.0 * std::log(1.0 - uniform()));
    return mean + sd * radius * std::cos(2.0 * std::numbers::pi * uniform());
}

bool Dice::chance(double share) { return uniform() < share; }

} // namespace panside::rehearsal
