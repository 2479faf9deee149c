#pragma once
// Chance for the rehearsal, written out: the standard library's distributions differ between libraries, and the same
// seed must give the same bytes everywhere.
#include <array>
#include <cstdint>

namespace panside::rehearsal {

// xoshiro256** seeded by splitmix64 (both published to the public domain, 2018 and 2015).
class Dice {
public:
    // Streams of one seed are independent, so that one more throw in one part of the rehearsal shifts no other part.
    Dice(std::uint64_t seed, std::uint64_t stream);
    double uniform(); // 0 to 1, 1 excluded
    double uniform(double low, double high);
    int whole(int low, int high);          // both included
    double normal(double mean, double sd); // Box and Muller
    bool chance(double share);

private:
    std::uint64_t next();
    std::array<std::uint64_t, 4> state_;
};

} // namespace panside::rehearsal
