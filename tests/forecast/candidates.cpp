#include "tests/forecast/candidates.h"

#include "core/boil/boil.h"
#include "core/boil/state.h"

#include <algorithm>
#include <cmath>

namespace panside::judge {

namespace {
Range rangeOf(const Quantiles& q) {
    return {Duration{q.p10}, Duration{q.p50}, q.p90 ? std::optional{Duration{*q.p90}} : std::nullopt};
}

// One of the engine's two sources alone, uncorrected.
class Source : public Forecaster {
public:
    using Ask = std::optional<Quantiles> (*)(const State&, Instant);
    explicit Source(Ask ask) : ask_{ask} {}
    void add(const Fact& fact) override { absorb(state_, fact); }
    std::optional<Range> eta(Instant now) override {
        const auto q = ask_(state_, now);
        return q ? std::optional{rangeOf(*q)} : std::nullopt;
    }

protected:
    State state_;

private:
    Ask ask_;
};

// Level and slope with their variances, the slope walking.
struct LocalTrend {
    static constexpr double bend = 3e-9; // K^2/s^3
    Instant at{};
    double level = 0, slope = 0;
    double ofLevel = 0.01, ofBoth = 0, ofSlope = 1e-6;

    void passTo(Instant time) {
        const double dt = secondsBetween(at, time);
        at = time;
        level += slope * dt;
        ofLevel += 2 * dt * ofBoth + dt * dt * ofSlope + bend * dt * dt * dt / 3;
        ofBoth += dt * ofSlope + bend * dt * dt / 2;
        ofSlope += bend * dt;
    }
    void read(double seen, double variance) {
        const double spread = ofLevel + variance, off = seen - level, byLevel = ofLevel / spread,
                     bySlope = ofBoth / spread;
        level += byLevel * off;
        slope += bySlope * off;
        ofSlope -= bySlope * ofBoth;
        ofBoth -= byLevel * ofBoth;
        ofLevel -= byLevel * ofLevel;
    }
    std::optional<double> until(double target, double targetVariance, double deviate) const {
        for (double t = 0; t < 4 * 3600; t += 15) {
            const double variance = ofLevel + 2 * t * ofBoth + t * t * ofSlope + bend * t * t * t / 3 + targetVariance;
            if (level + slope * t - deviate * std::sqrt(variance) >= target)
                return t;
        }
        return std::nullopt;
    }
};

// The textbook's local trend in the rise itself: a Kalman filter with no physics, no fire and no past.
class Trend : public Forecaster {
public:
    void add(const Fact& fact) override {
        absorb(state_, fact);
        if (std::holds_alternative<DrawClosed>(fact.what)) {
            trend_.reset();
            from_ = fact.at + Duration{60};
        }
        const auto* reading = std::get_if<Reading>(&fact.what);
        if (reading && reading->series == Series::syrup_pan && fact.at >= from_ && !state_.course.drawing())
            follow(fact.at);
    }
    std::optional<Range> eta(Instant now) override {
        const auto target = panside::picture(state_, now);
        if (!trend_ || !target.targetRise)
            return std::nullopt;
        LocalTrend trend = *trend_;
        trend.passTo(now);
        const double variance = std::pow(target.targetUncertainty->kelvin(), 2);
        const auto until = [&](double deviate) { return trend.until(target.targetRise->kelvin(), variance, deviate); };
        const auto p10 = until(-1.2816), p50 = until(0), p90 = until(1.2816);
        if (!p10 || !p50)
            return std::nullopt;
        return rangeOf({*p10, *p50, p90});
    }

private:
    void follow(Instant at) {
        const auto pan = state_.sensors.of(Series::syrup_pan).value(at);
        const auto water = state_.weather.boiling(at);
        if (!pan || !water || pan->at != at || (trend_ && secondsBetween(trend_->at, at) < 10))
            return;
        const double rise = pan->si - state_.mark.offset(at).kelvin() - water->waterBoils.kelvin();
        if (!trend_) {
            trend_.emplace();
            trend_->at = at;
            trend_->level = rise;
            return;
        }
        trend_->passTo(at);
        trend_->read(rise, std::max(4e-4, 0.1 * pan->noise * pan->noise));
    }

    State state_;
    std::optional<LocalTrend> trend_;
    Instant from_{};
};
} // namespace

std::vector<Entrant> candidates() {
    return {{"pan model",
             [] {
                 return std::make_unique<Source>(
                     [](const State& state, Instant now) { return state.forecast.byPan(state, now); });
             }},
            {"waits, given",
             [] {
                 return std::make_unique<Source>(
                     [](const State& state, Instant now) { return state.forecast.byWaits(now); });
             }},
            {"trend of rise", [] { return std::make_unique<Trend>(); }}};
}

} // namespace panside::judge
