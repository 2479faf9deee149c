#include "core/boil/pan_trace.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double spacing = 10, furthest = 300, before = 60, after = 10;
constexpr double turnedBefore = 25; // s: so long after the turn what came before it is another line
constexpr double falls = 0.3;       // K: so far off the line it is another liquid

} // namespace

void PanTrace::add(Instant at, double kelvin) {
    if (!start_)
        start_ = at;
    const double now = secondsBetween(*start_, at);
    if (count_ > 0 && now - begun_ < spacing) {
        Mean& last = ring_[(next_ + size - 1) % size];
        ++inLast_;
        last.seconds += (static_cast<float>(now) - last.seconds) / static_cast<float>(inLast_);
        last.kelvin += (static_cast<float>(kelvin) - last.kelvin) / static_cast<float>(inLast_);
        return;
    }
    begun_ = static_cast<float>(now);
    inLast_ = 1;
    ring_[next_] = {static_cast<float>(now), static_cast<float>(kelvin)};
    next_ = static_cast<std::uint16_t>((next_ + 1) % size);
    count_ = static_cast<std::uint16_t>(std::min<std::size_t>(count_ + 1U, size));
}

std::optional<double> PanTrace::at(Instant time) const {
    if (count_ == 0)
        return std::nullopt;
    const double when = secondsBetween(*start_, time);
    std::size_t back = 0;
    while (back < count_ && mean(back).seconds > when)
        ++back;
    if (back == count_)
        return mean(count_ - 1U).seconds - when <= furthest ? std::optional{double{mean(count_ - 1U).kelvin}}
                                                            : std::nullopt;
    const Mean& before = mean(back);
    if (back == 0)
        return when - before.seconds <= furthest ? std::optional{double{before.kelvin}} : std::nullopt;
    const Mean& after = mean(back - 1);
    if (std::min(when - before.seconds, after.seconds - when) > furthest)
        return std::nullopt;
    const double share = (when - before.seconds) / (after.seconds - before.seconds);
    return before.kelvin + share * (after.kelvin - before.kelvin);
}

std::optional<double> PanTrace::smooth(Instant time, std::optional<Instant> turned) const {
    const double when = start_ ? secondsBetween(*start_, time) : 0;
    const double turn = turned ? secondsBetween(*turned, time) : before;
    const double from = turn > turnedBefore ? std::min(before, turn) : before;
    struct Line {
        double n = 0, t = 0, x = 0, tt = 0, tx = 0;
        void add(double off, double kelvin) {
            n += 1;
            t += off;
            x += kelvin;
            tt += off * off;
            tx += off * kelvin;
        }
        double slope() const { return (n * tx - t * x) / (n * tt - t * t); }
        double now() const { return (x * tt - t * tx) / (n * tt - t * t); }
    } line;
    std::optional<Mean> next;
    for (std::size_t back = 0; back < count_ && mean(back).seconds > when - from; ++back) {
        const double off = mean(back).seconds - when;
        if (off <= 0)
            line.add(off, mean(back).kelvin);
        else if (off <= after)
            next = mean(back);
    }
    if (line.n < 3)
        return at(time);
    if (next) {
        const double off = next->seconds - when;
        if (std::abs(next->kelvin - line.now() - off * line.slope()) < falls)
            line.add(off, next->kelvin);
    }
    return line.now();
}

double PanTrace::away(Instant time) const {
    const double when = start_ ? secondsBetween(*start_, time) : 0;
    double nearest = furthest;
    for (std::size_t back = 0; back < count_; ++back)
        nearest = std::min(nearest, std::abs(mean(back).seconds - when));
    return nearest;
}

double PanTrace::moved(Instant time) const {
    const auto now = at(time), before = at(time + Duration{-60});
    return now && before ? std::abs(*now - *before) : 0;
}

} // namespace panside
