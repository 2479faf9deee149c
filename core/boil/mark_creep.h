#pragma once
#include "core/quantity/quantity.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace panside {

// How far and how fast the mark has climbed since this pan's first checks. Niter grows under the syrup and insulates:
// the probe comes to read more over the same syrup, and the pan beneath scorches. A lead that takes water, or an ageing
// thermocouple, creeps faster still.
class MarkCreep {
public:
    // What a believed hydrometer check said the probe reads too high, and how sure that is; kelvin.
    void addSample(Instant at, double seen, double sd) {
        if (count_ < few)
            first_ += seen / few;
        if (count_ == 0)
            begun_ = at;
        last_[static_cast<std::size_t>(count_) % kept] = {secondsBetween(begun_, at) / 3600, seen, sd};
        ++count_;
        line_ = throughLast();
    }
    // Another pan, or another way to know where water boils.
    void forget() { *this = {}; }

    // From the first three checks to the last three; nullopt below six, or where the difference may be the scatter of
    // careful checks (0.25 K: more than three of its standard deviations).
    std::optional<TemperatureDifference> crept() const {
        if (count_ < 2 * few)
            return std::nullopt;
        double by = -first_;
        for (int i = count_ - few; i < count_; ++i)
            by += last_[static_cast<std::size_t>(i) % kept].seen / few;
        constexpr double surely = 0.25; // kelvin
        return by >= surely ? std::optional{TemperatureDifference::kelvin(by)} : std::nullopt;
    }
    // Kelvin an hour, up or down, by a line through the last checks; nullopt where that may be their scatter (three
    // standard deviations of a careful check's, or of their own about the line).
    std::optional<double> perHour() const {
        constexpr double surely = 3; // standard deviations
        return std::min(count_, static_cast<int>(kept)) >= fewest &&
                       line_.rate * line_.rate > surely * surely * line_.rateVariance
                   ? std::optional{line_.rate}
                   : std::nullopt;
    }
    // By how much more than its own scatter that line lies off what is believed, sure or not; kelvin^2.
    double leaves(double believed, Instant now) const {
        if (count_ < few)
            return 0;
        const double since = secondsBetween(begun_, now) / 3600 - line_.hours;
        const double off = line_.seen + line_.rate * since - believed;
        return std::max(0.0, off * off - (line_.seenVariance + line_.rateVariance * since * since) / 2);
    }

private:
    static constexpr int few = 3, fewest = 5;
    static constexpr std::size_t kept = 8;
    struct Sample {
        double hours = 0, seen = 0, sd = 0; // since the first; kelvin
    };
    struct Line {
        double hours = 0, seen = 0, rate = 0; // at the mean of the checks; K, K/h
        double seenVariance = 0, rateVariance = 0;
    };
    Line throughLast() const {
        const int n = std::min(count_, static_cast<int>(kept));
        Line line;
        double variance = 0;
        for (int i = 0; i < n; ++i) {
            line.hours += last_[static_cast<std::size_t>(i)].hours / n;
            line.seen += last_[static_cast<std::size_t>(i)].seen / n;
            variance += last_[static_cast<std::size_t>(i)].sd * last_[static_cast<std::size_t>(i)].sd / n;
        }
        double tt = 0, tx = 0, xx = 0;
        for (int i = 0; i < n; ++i) {
            const double hours = last_[static_cast<std::size_t>(i)].hours - line.hours;
            const double seen = last_[static_cast<std::size_t>(i)].seen - line.seen;
            tt += hours * hours;
            tx += hours * seen;
            xx += seen * seen;
        }
        if (tt > 0 && n > 2) {
            line.rate = tx / tt;
            variance = std::max(variance, (xx - tx * tx / tt) / (n - 2));
            line.rateVariance = variance / tt;
        }
        line.seenVariance = variance / n;
        return line;
    }
    int count_ = 0;
    double first_ = 0;
    Instant begun_{};
    std::array<Sample, kept> last_{};
    Line line_;
};

} // namespace panside
