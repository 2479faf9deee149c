#include "core/boil/outflow.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double leastSpan = 10 * 60;
constexpr double longestSpan = 3 * 3600;
// A rise over this is sap coming in: a mark on a tank is read to about a gallon (common practice, no source).
constexpr double leastJump = 4;
constexpr int fewestPlain = 4;        // gaps that tell what is usual
constexpr double longestPlunge = 600; // seconds between two levels
constexpr int fewestGaps = 2;         // without sap in them, that tell the outflow by themselves
// A level that is read or dipped is old when none has come for so many of its usual gaps, and ten minutes.
constexpr double missedDips = 2.5, levelStale = 600;
constexpr double readingError = 2; // litres, of one bin, where the readings themselves cannot tell

} // namespace

void Outflow::addSample(Instant at, Volume level) {
    last_ = at;
    const double litre = level.litre();
    if (count_ > 0 && begun_ && secondsBetween(*begun_, at) < width.count()) {
        Bin& bin = bins_[(count_ - 1) % kept];
        if (litre - bin.litre < leastJump && !plunged(litre, at)) {
            ++bin.samples;
            bin.litre += (litre - bin.litre) / bin.samples;
            bin.at = bin.at + Duration{secondsBetween(bin.at, at) / bin.samples};
            return;
        }
    }
    const bool jumped = count_ > 0 && (litre - back(0).litre > leastJump || plunged(litre, at));
    // Poured in before the last level and entered after it: it made that one rise.
    if (came_ > 0 && !jumped && count_ > 0 && back(0).jumped && back(0).came <= 0) {
        bins_[(count_ - 1) % kept].came = static_cast<float>(came_);
        came_ = 0;
    }
    bins_[count_ % kept] = {
        .at = at, .litre = litre, .came = static_cast<float>(came_), .samples = 1, .jumped = jumped};
    came_ = 0;
    ++count_;
    begun_ = at;
}

// Let out, spilled, or a gauge that slipped: once, it is no boil. What goes on falling so is the new rate.
bool Outflow::plunged(double litre, Instant at) const {
    constexpr double times = 3, surely = 12; // of what is usual; litres
    const double seconds = secondsBetween(back(0).at, at);
    if (back(0).litre - litre < surely)
        return false;
    const auto usual = fall(back(0).at, halfHour, false);
    return usual && usual->gaps >= fewestPlain && !back(0).jumped && seconds < longestPlunge &&
           back(0).litre - litre > times * std::max(0.0, usual->rate.litrePerHour) * seconds / 3600 + surely;
}

void Outflow::came(Volume sap) { came_ += sap.litre(); }

void Outflow::forget() {
    count_ = 0;
    begun_.reset();
    came_ = 0;
}

bool Outflow::stale(Instant now) const {
    const std::size_t gaps = std::min<std::size_t>(count_, 4);
    const double usual = gaps < 2 ? 0 : secondsBetween(back(gaps - 1).at, back(0).at) / static_cast<double>(gaps - 1);
    return !last_ || secondsBetween(*last_, now) > std::max(levelStale, missedDips * usual);
}

std::optional<Outflow::Rate> Outflow::rate(Instant now, double window) const {
    if (stale(now))
        return std::nullopt;
    const auto clear = fall(now, window, false);
    if (clear && clear->gaps >= fewestGaps)
        return clear->rate;
    const auto all = fall(now, window, true);
    return all ? std::optional{all->rate} : std::nullopt;
}

std::optional<Outflow::Fall> Outflow::fall(Instant now, double window, bool reckonIn) const {
    // Sums about each stretch's own mean: a stretch ends where sap came in, all share one slope.
    double xx = 0, xy = 0, yy = 0;
    int bins = 0, stretches = 0;
    Instant from = now;
    const std::size_t reach = std::min(count_, kept);
    std::size_t i = 0, place = count_ % kept; // one past the newest
    while (i < reach) {
        double n = 0, meanX = 0, meanY = 0, sxx = 0, sxy = 0, syy = 0, came = 0;
        bool more = true;
        while (more && i < reach) {
            place = (place == 0 ? kept : place) - 1;
            const Bin& bin = bins_[place];
            const double x = secondsBetween(bin.at, now);
            // Readings by hand come seldom: then three of them reach further back.
            if (x > window && (bins + n >= 3 || x > longestSpan)) {
                i = reach;
                break;
            }
            ++n;
            // As it would have stood with what was poured in later in it already.
            const double litre = bin.litre + came;
            const double dx = x - meanX, dy = litre - meanY;
            meanX += dx / n;
            meanY += dy / n;
            sxx += dx * (x - meanX);
            sxy += dx * (litre - meanY);
            syy += dy * (litre - meanY);
            from = bin.at;
            // Sap that nobody entered ends a stretch, and so does what was entered, unless it is reckoned in.
            more = !(bin.jumped || bin.came > 0) || (reckonIn && bin.came > 0);
            came += bin.came;
            ++i;
        }
        xx += sxx;
        xy += sxy;
        yy += syy;
        bins += static_cast<int>(n);
        ++stretches;
    }
    if (xx <= 0 || secondsBetween(from, now) < leastSpan)
        return std::nullopt;
    const double slope = xy / xx; // litres a second; x counts backwards, so a fall is positive
    const int freedom = bins - stretches - 1;
    const double scatter = freedom > 2 ? std::sqrt(std::max(yy - slope * xy, 0.0) / freedom) : readingError;
    // Neighbouring bins share the float's cycle and the fire's, so they are not independent: twice the plain error.
    const double sd = 2 * std::max(scatter, 0.2) / std::sqrt(xx);
    return Fall{{.litrePerHour = slope * 3600, .sd = sd * 3600, .from = from}, bins - stretches};
}

} // namespace panside
