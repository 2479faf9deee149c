// The four simple methods. Each knows only the log: readings, draws as they were keyed, the water check; each makes its
// range from its own errors in the cycles of this shift that are over.
#include "core/physics/water.h"
#include "tests/forecast/forecaster.h"

#include <algorithm>
#include <cmath>
#include <deque>

namespace panside::judge {

namespace {
double quantile(std::vector<double> values, double share) {
    std::sort(values.begin(), values.end());
    const double place = share * static_cast<double>(values.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    const auto above = std::min(below + 1, values.size() - 1);
    return values[below] + (place - static_cast<double>(below)) * (values[above] - values[below]);
}

// What they all see: readings thinned to one each 10 s (median), and the draws.
class Simple : public Forecaster {
public:
    void add(const Fact& fact) override {
        if (const auto* reading = std::get_if<Reading>(&fact.what))
            read(fact.at, *reading);
        else if (const auto* check = std::get_if<WaterCheck>(&fact.what))
            check_ = check->boiledAt.value.kelvin();
        else if (std::holds_alternative<DrawOpened>(fact.what))
            opened(fact.at);
        else if (std::holds_alternative<DrawClosed>(fact.what))
            shut_ = fact.at;
    }

    std::optional<Range> eta(Instant now) final {
        const auto middle = guess(now);
        if (!middle)
            return {};
        said_.push_back({now, *middle});
        if (misses_.size() < 30) // five minutes of a cycle that is over
            return {};
        return ranged(*middle);
    }

protected:
    struct Point {
        Instant at;
        double kelvin;
    };
    virtual std::optional<double> guess(Instant now) = 0; // seconds
    // Its error, and the range of a new guess from those errors: in seconds, or as a ratio.
    virtual double miss(double said, double came) const { return came - said; }
    virtual double with(double said, double miss) const { return said + miss; }

    double waterBoils() const {
        if (pressure_)
            if (const auto boils = waterBoilingPoint(Pressure::pascal(*pressure_)))
                return boils->kelvin();
        return check_.value_or(373.12);
    }
    // The reading at which they draw: as at their last openings, before that by the water check and the chart.
    double mark() const {
        if (marks_.empty())
            return check_.value_or(waterBoils()) + 4.06;
        double sum = 0;
        for (const double mark : marks_)
            sum += mark;
        return sum / static_cast<double>(marks_.size());
    }
    double riseMark() const {
        if (riseMarks_.empty())
            return check_ ? 4.06 + *check_ - waterBoils() : 4.06;
        double sum = 0;
        for (const double mark : riseMarks_)
            sum += mark;
        return sum / static_cast<double>(riseMarks_.size());
    }

    std::deque<Point> points_, rises_; // one each 10 s, twelve minutes back
    std::optional<Instant> shut_;
    std::vector<double> waits_;

private:
    void read(Instant at, const Reading& reading) {
        if (reading.series == Series::pressure)
            pressure_ = reading.si;
        if (reading.series != Series::syrup_pan)
            return;
        bin_.push_back(reading.si);
        if (binFrom_ && secondsBetween(*binFrom_, at) < 10)
            return;
        const double kelvin = quantile(bin_, 0.5);
        bin_.clear();
        binFrom_ = at;
        points_.push_back({at, kelvin});
        rises_.push_back({at, kelvin - waterBoils()});
        while (secondsBetween(points_.front().at, at) > 720) {
            points_.pop_front();
            rises_.pop_front();
        }
    }
    void opened(Instant at) {
        for (const auto& [when, said] : said_)
            if (secondsBetween(when, at) > 0)
                misses_.push_back(miss(said, secondsBetween(when, at)));
        said_.clear();
        while (misses_.size() > 2000)
            misses_.erase(misses_.begin(), misses_.begin() + 500);
        if (shut_)
            waits_.push_back(secondsBetween(*shut_, at));
        if (!points_.empty()) {
            marks_.push_back(points_.back().kelvin);
            riseMarks_.push_back(rises_.back().kelvin);
            while (marks_.size() > 3) {
                marks_.pop_front();
                riseMarks_.pop_front();
            }
        }
    }
    Range ranged(double middle) const {
        const auto at = [&](double share) { return Duration{std::max(0.0, with(middle, quantile(misses_, share)))}; };
        return {at(0.1), at(0.5), at(0.9)};
    }

    struct Said {
        Instant when;
        double seconds;
    };
    std::optional<double> pressure_, check_;
    std::vector<double> bin_;
    std::optional<Instant> binFrom_;
    std::deque<double> marks_, riseMarks_;
    std::vector<Said> said_;
    std::vector<double> misses_;
};

class LastGaps : public Simple {
    std::optional<double> guess(Instant now) override {
        if (waits_.empty() || !shut_)
            return {};
        const auto from = waits_.size() > 3 ? waits_.end() - 3 : waits_.begin();
        const double usual = quantile({from, waits_.end()}, 0.5);
        return std::max(0.0, usual - secondsBetween(*shut_, now));
    }
};

class PastWaits : public Forecaster {
public:
    void add(const Fact& fact) override {
        if (std::holds_alternative<DrawClosed>(fact.what))
            shut_ = fact.at;
        else if (std::holds_alternative<DrawOpened>(fact.what) && shut_)
            waits_.push_back(secondsBetween(*shut_, fact.at));
    }
    std::optional<Range> eta(Instant now) override {
        if (!shut_)
            return {};
        const double waited = secondsBetween(*shut_, now);
        std::vector<double> left;
        for (const double wait : waits_)
            if (wait > waited)
                left.push_back(wait - waited);
        if (left.empty())
            return {};
        return Range{Duration{quantile(left, 0.1)}, Duration{quantile(left, 0.5)}, Duration{quantile(left, 0.9)}};
    }

private:
    std::optional<Instant> shut_;
    std::vector<double> waits_;
};

// A slope's errors grow with the time foretold: they are kept as ratios.
class Slope : public Simple {
protected:
    double miss(double said, double came) const override { return std::log((came + 20) / (said + 20)); }
    double with(double said, double miss) const override { return (said + 20) * std::exp(miss) - 20; }
    static std::optional<double> reach(double now, double slope, double mark) {
        if (now >= mark)
            return 0.0;
        if (slope <= 0 || (mark - now) / slope > 4 * 3600)
            return {};
        return (mark - now) / slope;
    }
};

class StraightLine : public Slope {
    std::optional<double> guess(Instant now) override {
        double n = 0, x = 0, y = 0, xx = 0, xy = 0;
        for (const auto& point : points_) {
            const double ago = secondsBetween(now, point.at);
            if (ago < -300 || (shut_ && point.at < *shut_))
                continue;
            n += 1;
            x += ago;
            y += point.kelvin;
            xx += ago * ago;
            xy += ago * point.kelvin;
        }
        const double spread = n * xx - x * x;
        if (n < 2 || spread <= 0)
            return {};
        const double slope = (n * xy - x * y) / spread;
        return reach((y - slope * x) / n, slope, mark());
    }
};

class RobustSlope : public Slope {
    std::optional<double> guess(Instant now) override {
        std::vector<Point> used;
        for (const auto& point : rises_)
            if (secondsBetween(point.at, now) <= 600 && (!shut_ || point.at >= *shut_))
                used.push_back(point);
        if (used.size() < 2)
            return {};
        std::vector<double> slopes, levels;
        for (std::size_t i = 0; i < used.size(); ++i)
            for (std::size_t j = i + 1; j < used.size(); ++j)
                slopes.push_back((used[j].kelvin - used[i].kelvin) / secondsBetween(used[i].at, used[j].at));
        std::nth_element(slopes.begin(), slopes.begin() + static_cast<std::ptrdiff_t>(slopes.size() / 2), slopes.end());
        const double slope = slopes[slopes.size() / 2];
        for (const auto& point : used)
            levels.push_back(point.kelvin + slope * secondsBetween(point.at, now));
        return reach(quantile(levels, 0.5), slope, riseMark());
    }
};

template <class Method>
Entrant entrant(const char* name) {
    return {name, [] { return std::make_unique<Method>(); }};
}
} // namespace

std::vector<Entrant> simpleMethods() {
    return {entrant<LastGaps>("last gaps"), entrant<PastWaits>("past waits"), entrant<StraightLine>("line 5 min"),
            entrant<RobustSlope>("slope 10 min")};
}

} // namespace panside::judge
