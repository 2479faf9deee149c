#pragma once
#include "core/boil/fact.h"

#include <array>
#include <optional>

namespace panside {

struct State;

// Syrup that leaves the pan with nobody keying it: an automatic valve, or a crew that never touches the key.
class OwnDraw {
public:
    // After the mark has taken the fact.
    void absorb(const State& state, const Fact& fact);

    // How far over the target, in kelvin (a plain number, of a running mean), the pan stood when it last was drawn by
    // itself: the highest of three such draws in a row with none keyed. nullopt: it is not drawn so.
    std::optional<double> opensAt() const;
    // No draw was ever keyed, and a boiling pan has stood still near the mark for so long that it must be drawn from.
    bool hangs(Instant now) const;

private:
    void follow(double over, Instant at);

    static constexpr std::size_t enough = 3;
    std::array<float, enough> crests_{}; // kelvin over the target, of the last ones
    std::uint32_t seen_ = 0;
    bool keyed_ = false; // some draw of this shift was
    std::optional<double> high_;
    Instant highAt_{}, readAt_{};
    double anchor_ = 0; // kelvin over the target, where it stands
    Instant standsFrom_{};
};

} // namespace panside
