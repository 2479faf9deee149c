#include "core/ledger/cake.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace panside {
namespace {

constexpr double gaugeSd = 2500;             // Pa: a gauge is read to half a psi or so (our judgement)
constexpr double gaugeWeight = 2;            // as many readings as that judgement is worth
constexpr std::array powers{0.0, 0.15, 0.3}; // how steeply a cake packs under pressure: diatomite, from memory
constexpr double flat = 0.35;                // of the climb before: under it the climb has stopped

// Of Student's distribution, 80 percent between (standard tables).
double quantile80(double freedom) {
    static constexpr std::array<std::pair<double, double>, 8> table{
        {{1, 3.078}, {2, 1.886}, {3, 1.638}, {4, 1.533}, {6, 1.440}, {10, 1.372}, {20, 1.325}, {1e9, 1.282}}};
    for (std::size_t i = 1; i < table.size(); ++i)
        if (freedom < table[i].first)
            return table[i - 1].second;
    return table.back().second;
}

struct Line {
    double begin = 0, slope = 0, variance = 0, mean = 0, spread = 0, count = 0;
    // Where it reaches a height, and how well that is known.
    double at(double height) const { return (height - begin) / slope; }
    double sdAt(double where) const {
        return std::sqrt(variance * (1 / count + (where - mean) * (where - mean) / spread)) / slope;
    }
    double slopeSd() const { return std::sqrt(variance / spread); }
};

// Through what the gauge showed, to the power that makes a straight line of it.
Line fitted(std::span<const CakeReading> readings, double power) {
    Line line;
    line.count = static_cast<double>(readings.size());
    double sum = 0, top = 0;
    for (const CakeReading& one : readings) {
        line.mean += one.through / line.count;
        sum += std::pow(one.pressure.pascal(), 1 - power) / line.count;
        top = std::max(top, one.pressure.pascal());
    }
    double cross = 0;
    for (const CakeReading& one : readings) {
        const double x = one.through - line.mean;
        line.spread += x * x;
        cross += x * (std::pow(one.pressure.pascal(), 1 - power) - sum);
    }
    line.slope = line.spread > 0 ? cross / line.spread : 0;
    line.begin = sum - line.slope * line.mean;
    double residue = 0;
    for (const CakeReading& one : readings) {
        const double off = std::pow(one.pressure.pascal(), 1 - power) - line.begin - line.slope * one.through;
        residue += off * off;
    }
    const double gauge = gaugeSd * (1 - power) * std::pow(std::max(top, gaugeSd), -power);
    line.variance = (gaugeWeight * gauge * gauge + residue) / (gaugeWeight + line.count - 2);
    return line;
}

double climb(const CakeReading& a, const CakeReading& b) {
    return b.through > a.through ? (b.pressure.pascal() - a.pressure.pascal()) / (b.through - a.through) : 0;
}

// It climbed, and now it does not: twice in a row, and by more than the gauge could be misread.
bool hasStopped(std::span<const CakeReading> readings) {
    if (readings.size() < 4)
        return false;
    const auto last = readings.last(3);
    const auto before = readings.first(readings.size() - 2);
    const double was = climb(before.front(), before.back());
    const double expected = was * (last[2].through - last[0].through);
    return was > 0 && expected > 3 * gaugeSd && climb(last[0], last[2]) < flat * was;
}

} // namespace

std::variant<CakeForecast, CakeSilence> cakeForecast(std::span<const CakeReading> readings, Pressure limit) {
    if (readings.size() < 3)
        return CakeSilence::tooFew;
    if (readings.back().pressure >= limit)
        return CakeSilence::atLimit;
    if (hasStopped(readings))
        return CakeSilence::bypass;
    CakeForecast forecast{};
    std::array<double, powers.size()> middle{};
    bool mayNever = false;
    for (std::size_t i = 0; i < powers.size(); ++i) {
        const Line line = fitted(readings, powers[i]);
        const double t = quantile80(gaugeWeight + line.count - 2);
        if (line.slope <= 0 || line.spread <= 0)
            return CakeSilence::notClimbing;
        const double at = line.at(std::pow(limit.pascal(), 1 - powers[i]));
        const double off = t * line.sdAt(at);
        middle[i] = at;
        forecast.p10 = i == 0 ? at - off : std::min(forecast.p10, at - off);
        forecast.p90 = i == 0 ? at + off : std::max(*forecast.p90, at + off);
        mayNever = mayNever || line.slope < t * line.slopeSd();
    }
    // It stands under the limit now.
    forecast.p50 = std::max(middle[1], readings.back().through);
    forecast.p10 = std::max(forecast.p10, readings.back().through);
    if (mayNever)
        forecast.p90.reset();
    return forecast;
}

} // namespace panside
