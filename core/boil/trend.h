#pragma once
// Straight lines through the latest readings: how fast something really moves, and how surely. Plain numbers where the
// same line serves every series: SI of its dimension.
#include "core/boil/fact.h"

#include <array>
#include <optional>

namespace panside {

struct State;

// A least-squares line with exponentially fading weights. Value and slope are SI and SI a second.
class Trend {
public:
    void addSample(double value, Instant at, double fadeSeconds);
    void reset() { *this = {}; }

    struct Line {
        double value; // at `at`
        double slope;
        double slopeSd; // standard deviation of the slope, from the scatter about the line
        double span;    // seconds from the first reading to the last
        Instant at;
    };
    // nullopt below four readings or where they all stand at one moment.
    std::optional<Line> line() const;

private:
    // Weighted sums over (t, x), t in seconds before the last reading, x from the first value on.
    double w_ = 0, wt_ = 0, wx_ = 0, wtt_ = 0, wtx_ = 0, wxx_ = 0, ww_ = 0;
    double base_ = 0;
    Instant first_{}, last_{};
    int count_ = 0;
};

// What the scorch and heat watches need of the past, beyond the readings themselves.
class Trends {
public:
    void absorb(const State& state, const Fact& fact);

    // How a series moves now; nullopt where its line is older than its own span and than `after` seconds.
    static constexpr double patience = 60;
    std::optional<Trend::Line> of(Series series, Instant now, double after = patience) const;
    // What the level usually is, from the shift so far; the set running depth is for the caller to prefer.
    std::optional<Length> usualLevel(Series series) const;
    // Sap running in, over the last minutes; from feed_flow, else from the tank. nullopt: not
    // known.
    struct Inflow {
        VolumeFlow usual;   // over the last half hour
        Instant stoodSince; // since when next to nothing runs in; Instant::max(): it runs
        Instant readAt;     // by the last reading of it
    };
    std::optional<Inflow> inflow() const;
    // The hottest that the stack ran for half a minute, up to ten or twenty minutes ago, once it has been watched for
    // an hour.
    std::optional<Temperature> hottestStack() const;
    // The syrup pan stands far over its running depth, and has for minutes while it boils: more runs in than boils off.
    bool overfull(Instant now) const;
    // The highest that the syrup pan read in the last minutes, the last half minute left out.
    std::optional<Temperature> panHighBefore() const;

private:
    void takeFeed(double flow, Instant at);
    void takeTank(const Trend::Line& line, double fade, Instant at);
    void resetTank() {
        lines_[3].reset();
        tankLately_.reset();
    }
    void standsOrRuns(bool stands, Instant since);
    void takeStack(double si, Instant at);
    void takePan(double si, Instant at);
    void takeDepth(const State& state, double si, Instant at);

    std::array<Trend, 4> lines_;      // syrup_pan, pan_level, flue_level, tank_level
    Trend tankLately_;                // tank_level, forgotten sooner: for a probe that is fine enough
    std::array<double, 2> usual_{};   // pan_level, flue_level: slow means
    std::array<float, 2> usualFor_{}; // seconds that they rest on
    std::array<Instant, 2> usualAt_{};
    double feedUsual_ = 0, feedFor_ = 0;
    Instant feedAt_{}, filledAt_{};
    bool feedIsRead_ = false;
    Instant stoodSince_ = Instant::max();
    double hottest_ = 0, hottestBefore_ = 0, hottestLately_ = 0, stackMean_ = 0; // of all, of the last whole block, now
    std::array<double, 10> panHighs_{}; // of half minutes, the first the latest
    Instant panBlockFrom_{};
    std::optional<Instant> overfullFrom_;
    std::optional<Instant> stackFrom_;
    Instant stackAt_{}, blockFrom_{};
};

} // namespace panside
