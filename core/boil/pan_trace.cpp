#include "core/boil/pan_trace.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double spacing = 10, furthest = 300, before = 60, after = 10;
constexpr double turnedBefore = 25; // s: so long after the turn what came before it is another line
constexpr double falls = 0.3;       // K: so far off the line it is another liquid
constexpr double bentOver = PanTrace::bendsOver.count(), bentAfter = 12, bentFewest = 5; // s; s; means
constexpr double breaks = 0.25;  // K that one of them may lie off
constexpr double slopeOver = 30; // s, on both sides

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

// While hands draw, the reading bends: it was climbing, and thins as what stands behind flows in. What was read on both
// sides of that time tells how; nullopt where too little was, or where it did not bend but break: then it is another
// liquid on the other side.
std::optional<double> PanTrace::bent(double when) const {
    double sums[5] = {}, x[3] = {}; // of powers of the time off; of those times the reading
    double first = bentOver, last = -bentOver;
    const auto each = [&](const auto& take) {
        for (std::size_t back = 0; back < count_ && mean(back).seconds >= when - bentOver; ++back)
            if (const double off = mean(back).seconds - when; off <= bentOver)
                take(off, double{mean(back).kelvin});
    };
    each([&](double off, double kelvin) {
        first = std::min(first, off);
        last = std::max(last, off);
        double power = 1;
        for (int i = 0; i < 5; ++i, power *= off / bentOver) {
            sums[i] += power;
            if (i < 3)
                x[i] += power * kelvin;
        }
    });
    if (sums[0] < bentFewest || last < bentAfter || first > -bentAfter)
        return std::nullopt;
    const auto& [n, t, tt, ttt, tttt] = sums;
    const double whole = n * (tt * tttt - ttt * ttt) - t * (t * tttt - tt * ttt) + tt * (t * ttt - tt * tt);
    const double now =
        (x[0] * (tt * tttt - ttt * ttt) + x[1] * (tt * ttt - t * tttt) + x[2] * (t * ttt - tt * tt)) / whole;
    const double slope =
        (x[0] * (tt * ttt - t * tttt) + x[1] * (n * tttt - tt * tt) + x[2] * (t * tt - n * ttt)) / whole;
    const double bend = (x[0] * (t * ttt - tt * tt) + x[1] * (t * tt - n * ttt) + x[2] * (n * tt - t * t)) / whole;
    double furthestOff = 0;
    each([&](double off, double kelvin) {
        const double u = off / bentOver;
        furthestOff = std::max(furthestOff, std::abs(kelvin - now - slope * u - bend * u * u));
    });
    return furthestOff < breaks ? std::optional{now} : std::nullopt;
}

std::optional<double> PanTrace::smooth(Instant time, std::optional<Instant> turned) const {
    const double when = start_ ? secondsBetween(*start_, time) : 0;
    const double turn = turned ? secondsBetween(*turned, time) : before;
    if (turn > turnedBefore)
        if (const auto through = bent(when))
            return through;
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

double PanTrace::slope(Instant time) const {
    if (count_ < 2)
        return 0;
    const double when = secondsBetween(*start_, time);
    std::size_t later = 0;
    while (later + 2 < count_ && mean(later + 1U).seconds >= when + slopeOver)
        ++later;
    std::size_t earlier = later + 1U;
    while (earlier + 1U < count_ && mean(earlier).seconds > when - slopeOver)
        ++earlier;
    const double over = mean(later).seconds - mean(earlier).seconds;
    return over > 0 && when - mean(later).seconds < furthest ? (mean(later).kelvin - mean(earlier).kelvin) / over : 0;
}

} // namespace panside
