#pragma once
// A boil written down second by second: what stands at the draw-off is said in brix, and the probe reads what that
// boils at.
#include "core/physics/sugar.h"
#include "core/physics/water.h"
#include "tests/core/boil/logs.h"

#include <cmath>
#include <functional>

namespace panside::test {

// Noise without chance: the same to the last digit on every machine.
inline double noise(double t, double size) { return size * std::sin(t * 12.9898) * std::cos(t * 4.1414); }

// When an alarm first stood and last stood, and how often it began, by pictures a second apart.
struct Stood {
    int first = -1, last = -1, times = 0;
};
inline Stood stood(const Rows& rows, Alarm alarm) {
    Stood stood;
    bool before = false;
    auto facts = rows.facts; // a log's rows may stand in any order; a replay takes them by time
    std::stable_sort(facts.begin(), facts.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    replay(facts, {}, [&](const Picture& picture) {
        const int t = static_cast<int>(secondsBetween(noon, picture.at));
        const bool now = stands(picture, alarm);
        if (now && stood.first < 0)
            stood.first = t;
        if (now)
            stood.last = t;
        stood.times += now && !before;
        before = now;
    });
    return stood;
}

class BoilLog {
public:
    BoilLog() { rows.add(0, "lit,,,"); }

    double boils(double brix) const {
        const Pressure pressure = Pressure::kilopascal(kilopascal);
        return (waterBoilingPoint(pressure).value() + boilingRise(Brix::degrees(brix), pressure).value()).celsius();
    }
    void reads(double celsius) {
        if (now % 30 == 0)
            rows.read(now, "pressure", barometer.value_or(kilopascal), "kPa");
        rows.read(now, "syrup_pan", celsius + probeHigh + noise(now, 0.05), "degC");
        if (stack)
            rows.read(now, "stack", stack(now) + noise(now, 4), "degC");
        if (feeds && now % feeds == 0)
            rows.add(now, "fired,,,");
        ++now;
    }
    void second(double brix) {
        const double there = boils(brix);
        followed = followed && lag > 0 ? *followed + (there - *followed) / lag : there;
        reads(*followed);
    }
    void hold(double brix, int seconds) { climb(brix, brix, seconds); }
    void climb(double from, double to, int seconds) {
        for (int t = 0; t < seconds; ++t)
            second(from + (to - from) * t / seconds);
    }
    // Climbs from `low` past syrup in `wait` seconds, is drawn for 80 and falls back.
    void cycle(double low = 61, int wait = 800, bool keyed = true) {
        climb(low, 67.3, wait);
        if (keyed)
            rows.add(now, "draw_open,,,");
        climb(67.3, low, 80);
        if (keyed)
            rows.add(now, "draw_close,3,L,");
    }
    Picture picture() const { return rows.at(now); }

    Rows rows;
    int now = 0;
    double kilopascal = 101.325, probeHigh = 0; // probeHigh: kelvin
    double lag = 0;                             // seconds that the probe follows the pan behind, to the first order
    std::optional<double> followed;             // degrees Celsius, by a probe with a lag
    std::optional<double> barometer;            // what it reads, where that is another pressure
    int feeds = 480;                            // seconds between loads; 0: nobody fires, or nobody says so
    std::function<double(int)> stack;           // degrees Celsius
};

} // namespace panside::test
