#pragma once
// What the chart draws of a shift: the thinned readings, and what was done and said. Grows as facts arrive.
#include "core/boil/boil.h"
#include "ui/chart/thinned.h"
#include "ui/look/wall_clock.h"

#include <optional>
#include <vector>

namespace panside {

// The moment of a shift that others are laid over from.
enum class LaidFrom { lit, boil, lastDraw };

class ShiftTrace {
public:
    struct Draw {
        Instant opened;
        std::optional<Instant> closed;
    };

    // Takes what is new in the boil since the last time; everything, when what was drawn may have changed.
    // True if there was anything.
    bool follow(const Boil& boil);
    // The same by hand: in the order of time.
    void add(const Fact& fact);
    void add(const RisePoint& point);
    void add(const SteamPoint& point);
    void clear();
    void setColumn(std::chrono::microseconds span);

    const Thinned& rise() const { return rise_; }               // kelvin
    const Thinned& stack() const { return stack_; }             // kelvin
    const Thinned& evaporation() const { return evaporation_; } // cubic metre a second
    const std::vector<Fact>& events() const { return events_; } // all that are not readings, by time
    const std::vector<Draw>& draws() const { return draws_; }
    std::optional<Instant> litAt() const { return litAt_; }
    std::optional<Instant> begun() const { return begun_; }
    // The fire lit (or the first fact, where nobody said it), the first believed reading of a boiling pan, the last
    // draw opened; none where there was no such moment.
    std::optional<Instant> momentOf(LaidFrom from) const;
    const WallClock& clock() const { return clock_; }
    // How often all of it was taken anew: what was drawn of it counts no more.
    std::uint64_t takenAnew() const { return takenAnew_; }

private:
    void takeStack(Instant at, const Reading& reading);
    void forgetFacts();

    Thinned rise_, stack_, evaporation_;
    std::vector<Fact> events_;
    std::vector<Draw> draws_;
    std::optional<Instant> begun_, litAt_, boiledAt_, lastStack_;
    double stackSpacing_ = 0; // seconds, usual
    WallClock clock_;
    std::size_t factsTaken_ = 0, risesTaken_ = 0, steamTaken_ = 0;
    std::optional<std::uint64_t> rewritten_;
    std::uint64_t takenAnew_ = 0;
};

} // namespace panside
