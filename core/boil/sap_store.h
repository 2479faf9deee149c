#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

#include <array>

namespace panside {

struct State;

// What stands in the feed tank: since when, how warm it came in, and when it runs over if it goes on filling.
class SapStore {
public:
    void absorb(const State& state, const Fact& fact);
    // store
    void show(const State& state, Instant now, Picture& picture) const;

    // Of a tank whose size and level are known: what is left to its rim now (less than nothing: over it), how fast it
    // surely fills, and whether it surely falls.
    struct Rim {
        Volume room;
        std::optional<VolumeFlow> filling = {};
        bool falls = false;
    };
    std::optional<Rim> rim(const State& state, Instant now) const;

private:
    struct Came {
        Instant at{};
        double litre = 0;
        std::optional<Temperature> temperature;
    };
    struct Level {
        Instant at{};
        double litre = 0;
    };
    static constexpr std::size_t cameKept = 16, levelsKept = 32;

    void showAge(double litre, Instant now, SapPicture& store) const;
    // By the levels as they stand: litres a second, nullopt where it does not surely fill; and whether it surely falls.
    void judge();
    std::optional<double> filling(Instant now) const;
    // By the last so many levels.
    std::optional<double> rising(std::size_t n) const;
    // The straight line through them; nullopt for fewer than three, or all of one moment.
    struct Slope {
        double perSecond, error, span; // litres a second; seconds
    };
    std::optional<Slope> slope(std::size_t n) const;
    std::size_t within(double seconds) const;   // so many levels reach back so far
    const Level& level(std::size_t back) const; // 0: the last

    std::array<Came, cameKept> came_{};
    std::array<Level, levelsKept> levels_{};
    std::size_t cameCount_ = 0, levelCount_ = 0;
    std::optional<double> filling_;
    bool falls_ = false;
};

} // namespace panside
