#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

#include <array>

namespace panside {

struct State;

// What stands in the feed tank: since when, how warm it came in, and when it runs over if it goes on filling.
class SapStore {
public:
    void take(const State& state, const Fact& fact);
    // store
    void show(const State& state, Instant now, Picture& picture) const;

private:
    struct Came {
        Instant at{};
        double litre = 0;
        double kelvin = 0; // 0: nobody measured it
    };
    struct Level {
        Instant at{};
        double litre = 0;
    };
    static constexpr std::size_t cameKept = 16, levelsKept = 32;

    void showAge(double litre, Instant now, SapPicture& store) const;
    // Litres a second; nullopt where it does not surely fill.
    std::optional<double> filling(Instant now) const;
    // By the last so many levels.
    std::optional<double> rising(std::size_t n) const;
    const Level& level(std::size_t back) const; // 0: the last

    std::array<Came, cameKept> came_{};
    std::array<Level, levelsKept> levels_{};
    std::size_t cameCount_ = 0, levelCount_ = 0;
};

} // namespace panside
