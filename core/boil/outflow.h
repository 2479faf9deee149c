#pragma once
#include "core/quantity/quantity.h"

#include <array>
#include <cstdint>
#include <optional>

namespace panside {

// How fast a level falls, from its readings of the last while in bins of two minutes (longer where they come seldom). A
// rise is sap coming in, and so is what was entered: the gaps in which it happened tell nothing of the outflow and are
// left out. Where a tank is dipped so seldom that every gap has its sap, what was entered is reckoned in instead.
// Its rates are plain numbers, litres an hour: they and their variances go on into least squares.
class Outflow {
public:
    struct Rate {
        double litrePerHour;
        double sd;
        Instant from; // begin of what it rests on
    };
    void addSample(Instant at, Volume level);
    void came(Volume sap); // entered as poured in, since the last level
    // Nothing before this counts any more.
    void forget();
    // Over the last `window` seconds, at most `longestWindow`. nullopt where less than ten minutes have been seen, or
    // no level came for far longer than usual.
    static constexpr double halfHour = 1800, longestWindow = 9000;
    std::optional<Rate> rate(Instant now, double window = halfHour) const;
    std::optional<Instant> last() const { return last_; }

private:
    struct Bin {
        Instant at;       // mean time
        double litre = 0; // mean level
        float came = 0;   // litres entered as poured in between the bin before and this one
        std::uint16_t samples = 0;
        bool jumped = false; // it stands higher than the bin before, or lower than any boil makes it
    };
    struct Fall {
        Rate rate;
        int gaps; // that it rests on
    };
    static constexpr std::size_t kept = 84;
    static constexpr Duration width{120};

    std::optional<Fall> fall(Instant now, double window, bool reckonIn) const;
    bool stale(Instant now) const;
    bool plunged(double litre, Instant at) const;
    const Bin& back(std::size_t i) const { return bins_[(count_ - 1 - i) % kept]; }

    std::array<Bin, kept> bins_{};
    std::size_t count_ = 0;
    std::optional<Instant> begun_, last_;
    double came_ = 0;
};

} // namespace panside
