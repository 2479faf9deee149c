#pragma once
// The heat of the fire as the pan feels it, from the times of the loads alone: each load's gas burns off within about
// an interval, its coals over a quarter of an hour, and the pan follows some minute later. Relative to its own steady
// mean, so that it needs no masses and no rig: 0 is a fire fed as usual, -1 no fire.
#include "core/quantity/quantity.h"

#include <algorithm>
#include <array>
#include <optional>

namespace panside {

class FireHeat {
public:
    void fired(Instant at);
    void passTo(Instant at);
    void stopFiring() { stopped_ = true; }
    void light() { stopped_ = false; }

    bool known() const { return loads_ >= 3; }
    // now; 0 while not known
    double excess() const { return known() ? std::clamp(pan_ - 1, -1.0, 1.0) : 0; }
    Duration interval() const { return Duration{interval_}; } // between loads, learned; 8 min until then
    Duration overdue(Instant now) const;                      // negative before the next is due

    // The integral of the excess over what is to come, in seconds, at steps of `step` seconds (plain numbers: the
    // forecast's equations hold sugar and seconds in one vector); the next load goes in after `delay` and those after
    // it by the interval, or none at all once firing has stopped.
    static constexpr double step = 30;
    static constexpr std::size_t steps = 60;
    using Ahead = std::array<double, steps>;
    Ahead ahead(Duration delay) const;
    bool stopped() const { return stopped_; }

private:
    void burn(double seconds);
    void burnFor(double seconds); // at most a step
    void learnGap(double gap);

    static constexpr std::size_t gapCount = 9;
    std::optional<Instant> at_, last_;
    int loads_ = 0;
    std::array<float, gapCount> gaps_{};
    std::size_t known_ = 0;
    double interval_ = 480;
    double gas_ = 0, coals_ = 0, pan_ = 0; // seconds of usual heat still to come; heat at the pan
    bool stopped_ = false;
};

// What of it will have come after so many seconds, with what the stack says beside the loads, which fades.
struct HeatAhead {
    FireHeat::Ahead sum{};
    double beside = 0;
    double after = 0; // excess when `sum` has come to its end
    double scale = 1;
    // What the stack says fades so: the share of it that is left after so many seconds.
    static double left(double seconds);
    double operator()(double seconds, double left) const;
    double operator()(double seconds) const { return (*this)(seconds, beside == 0 ? 0 : left(seconds)); }
};

} // namespace panside
