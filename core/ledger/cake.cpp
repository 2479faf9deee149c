#include "core/ledger/cake_law.h"

#include <array>
#include <cmath>
#include <iterator>

namespace panside {
namespace {

constexpr double plausible = 0.15; // of the likeliest: what is less likely bounds no range

// The laws that are tried; `stall` as a share of the limit. A power under 0: the pump slips; 0: a cake that does not
// pack; 1 and more: papers that blind.
constexpr std::array laws{CakeLaw{-0.6, 0},   CakeLaw{-0.3, 0},  CakeLaw{0, 0},    CakeLaw{0.3, 0}, CakeLaw{0.6, 0},
                          CakeLaw{0.9, 0},    CakeLaw{1.2, 0},   CakeLaw{1.5, 0},  CakeLaw{0, 3},   CakeLaw{0, 1.8},
                          CakeLaw{0, 1.35},   CakeLaw{0, 1.1},   CakeLaw{0, 0.9},  CakeLaw{0.3, 3}, CakeLaw{0.3, 1.8},
                          CakeLaw{0.3, 1.35}, CakeLaw{0.3, 1.1}, CakeLaw{0.3, 0.9}};
// No law is quite the run's: what is off it is off for some readings on end. However thick they come, they say no more
// of which law it is than so many would (our judgement).
constexpr double mostSaying = 8;
constexpr std::size_t mostFitted = 40;                   // more cost time and say nothing
constexpr double sameNightSd = 0.2, otherNightSd = 0.45; // of the logarithm of a climb, from run to run (our judgement)
constexpr double pastWeight = 0.3;                       // of what runs before say of the steepness

// The line through what makes one of the gauge that lies nearest to the gauge itself.
struct Line {
    double slope = 0, middle = 0, mean = 0;         // of `middle` at `mean`
    double weight = 0, spread = 0, residue = 1e300; // residue: in bar squared
    double at(double through) const { return middle + slope * (through - mean); }
};

Line weighted(std::span<const CakeReading> readings, const CakeLaw& law, std::span<const double> near) {
    Line line;
    std::vector<double> moved(readings.size());
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const double weight = std::pow(law.steep(near[i]), 2);
        moved[i] = law.straight(near[i]) + (barOf(readings[i]) - near[i]) / law.steep(near[i]);
        line.weight += weight;
        line.mean += weight * readings[i].through;
        line.middle += weight * moved[i];
    }
    line.mean /= line.weight;
    line.middle /= line.weight;
    double cross = 0;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const double x = readings[i].through - line.mean, weight = std::pow(law.steep(near[i]), 2);
        line.spread += weight * x * x;
        cross += weight * x * (moved[i] - line.middle);
    }
    line.slope = line.spread > 0 ? cross / line.spread : 0;
    return line;
}

Line fitted(std::span<const CakeReading> readings, const CakeLaw& law) {
    std::vector<double> near;
    for (const CakeReading& one : readings)
        near.push_back(law.stall > 0 ? std::min(barOf(one), law.stall * 0.98) : barOf(one));
    Line best;
    for (int step = 0; step < 8; ++step) {
        Line line = weighted(readings, law, near);
        line.residue = 0;
        for (std::size_t i = 0; i < readings.size(); ++i) {
            near[i] = law.gauge(line.at(readings[i].through), near[i]);
            line.residue += std::pow(barOf(readings[i]) - near[i], 2);
        }
        if (line.residue >= best.residue * (1 - 1e-6))
            break;
        best = line;
    }
    return best;
}

// Student's distribution by the normal one (Abramowitz and Stegun 26.7.8).
double below(double t, double freedom) {
    const double z = t * (1 - 1 / (4 * freedom)) / std::sqrt(1 + t * t / (2 * freedom));
    return std::erfc(-z / std::sqrt(2.0)) / 2;
}

// What one law says of where the limit is met.
struct Model {
    CakeLaw law;
    std::optional<double> height; // of the limit; none: the pump stalls under it
    double now;                   // has gone through
    Line line;
    double likely = 0;
    double slope = 0, slopeVariance = 0, variance = 0; // as known with the runs before; of the middle
    double reached(double through, double freedom) const {
        if (!height)
            return 0;
        const double x = through - line.mean;
        // Sand and warmth change within a run as they do from run to run: the climb to come is another one.
        const double drift = slope * sameNightSd * std::max(0.0, through - now);
        const double sd = std::sqrt(variance + slopeVariance * x * x + drift * drift);
        return below((line.middle + slope * x - *height) / sd, freedom);
    }
};

// The climbs of runs before, as the logarithm's mean and variance.
struct Past {
    double weight = 0, mean = 0, variance = 0;
};
Past pastOf(std::span<const CakeRun> runs, const CakeLaw& law) {
    Past past;
    bool same = false;
    for (const CakeRun& run : runs) {
        const Line line = fitted(run.readings, law);
        if (line.slope <= 0)
            continue;
        const double sd = run.sameNight ? sameNightSd : otherNightSd;
        past.weight += 1 / (sd * sd);
        past.mean += std::log(line.slope) / (sd * sd);
        same |= run.sameNight;
    }
    if (past.weight > 0) {
        past.mean /= past.weight;
        // The next run differs from their mean as they do from each other.
        past.variance = 1 / past.weight + std::pow(same ? sameNightSd : otherNightSd, 2);
    }
    return past;
}

struct Known {
    std::vector<Model> models;
    double freedom = 1;
};
void takeSlope(Model& model, double variance, std::span<const CakeRun> before) {
    const Past past = pastOf(before, model.law);
    double known = model.line.spread / variance, sum = model.line.slope * known;
    if (past.weight > 0) {
        const double usual = std::exp(past.mean), one = 1 / (usual * usual * past.variance);
        known += one;
        sum += usual * one;
    }
    model.slope = known > 0 ? sum / known : 0;
    model.slopeVariance = known > 0 ? 1 / known : 0;
    model.variance = variance / model.line.weight;
}

// Some of many readings, the last one among them.
std::vector<CakeReading> thinned(std::span<const CakeReading> readings) {
    const std::size_t count = std::min(mostFitted, readings.size());
    std::vector<CakeReading> some;
    for (std::size_t i = 1; i <= count; ++i)
        some.push_back(readings[i * readings.size() / count - 1]);
    return some;
}

Known knownOf(std::span<const CakeReading> readings, Pressure limit, std::span<const CakeRun> before) {
    Known known;
    double least = 1e300;
    const double bar = limit.pascal() / 1e5;
    for (const CakeLaw& one : laws) {
        const CakeLaw law{one.power, one.stall * bar};
        const bool meets = one.stall <= 0 || one.stall > 1;
        known.models.push_back({law, meets ? std::optional{law.straight(bar)} : std::nullopt, readings.back().through,
                                fitted(readings, law)});
        least = std::min(least, known.models.back().line.residue);
    }
    // How the gauge scatters is the same in every run.
    double sum = gaugeWeight * std::pow(gaugeSd / 1e5, 2) + least;
    known.freedom = gaugeWeight + static_cast<double>(readings.size()) - 2;
    std::vector<std::vector<double>> residues;
    for (const CakeRun& run : before) {
        residues.emplace_back();
        for (const Model& model : known.models)
            residues.back().push_back(fitted(run.readings, model.law).residue);
        sum += *std::ranges::min_element(residues.back());
        known.freedom += static_cast<double>(run.readings.size()) - 3;
    }
    const double variance = sum / known.freedom;
    const double saying = std::min(1.0, mostSaying / static_cast<double>(readings.size()));
    known.freedom = std::max(1.0, known.freedom * saying);
    double most = -1e300;
    for (std::size_t i = 0; i < known.models.size(); ++i) {
        Model& model = known.models[i];
        model.likely = saying * (least - model.line.residue) / (2 * variance);
        for (const auto& run : residues)
            model.likely += pastWeight * (*std::ranges::min_element(run) - run[i]) / (2 * variance);
        most = std::max(most, model.likely);
        takeSlope(model, variance / saying, before);
    }
    for (Model& model : known.models)
        model.likely = std::exp(model.likely - most);
    return known;
}

// Where so much of what is possible has met the limit, given that it has not yet; none: it may never.
std::optional<double> quantile(std::span<const Model> models, double freedom, double share, double now, double step) {
    double all = 0;
    for (const Model& model : models)
        all += model.likely;
    const auto reached = [&](double through) {
        double sum = 0;
        for (const Model& model : models)
            sum += model.likely / all * model.reached(through, freedom);
        return sum;
    };
    const double already = reached(now), wanted = already + share * (1 - already);
    double low = now, high = now + step;
    for (int i = 0; reached(high) < wanted; ++i) {
        if (i == 12) // four thousand times as long as the readings
            return std::nullopt;
        low = high;
        high = now + (high - now) * 2;
    }
    for (int i = 0; i < 40; ++i) {
        const double middle = (low + high) / 2;
        (reached(middle) < wanted ? low : high) = middle;
    }
    return high;
}

} // namespace

std::variant<CakeForecast, CakeSilence> cakeForecast(std::span<const CakeReading> all, Pressure limit,
                                                     std::span<const CakeRun> before) {
    if (all.size() < 3)
        return CakeSilence::tooFew;
    if (all.back().pressure >= limit)
        return CakeSilence::atLimit;
    if (hasStopped(all))
        return CakeSilence::bypass;
    const auto readings = thinned(all);
    const double now = readings.back().through, span = now - readings.front().through;
    if (span <= 0)
        return CakeSilence::notClimbing;
    std::vector<CakeRun> runs;
    for (const CakeRun& run : before)
        if (run.readings.size() > 3)
            runs.push_back({thinned(run.readings), run.sameNight});
    const Known known = knownOf(readings, limit, runs);
    const auto p50 = quantile(known.models, known.freedom, 0.5, now, span);
    if (!p50)
        return CakeSilence::notClimbing;
    // Every law that is not ruled out has its say in the range.
    CakeForecast forecast{*p50, *p50, *p50, 0, !runs.empty()};
    double likely = 0;
    for (const Model& model : known.models) {
        likely += model.likely;
        forecast.climb += model.likely * model.slope * model.law.steep(barOf(readings.back())) * 1e5;
        if (model.likely < plausible)
            continue;
        const auto p10 = quantile(std::span{&model, 1}, known.freedom, 0.1, now, span);
        const auto p90 = quantile(std::span{&model, 1}, known.freedom, 0.9, now, span);
        forecast.p10 = std::min(forecast.p10, p10.value_or(forecast.p10));
        forecast.p90 = p90 && forecast.p90 ? std::optional{std::max(*forecast.p90, *p90)} : std::nullopt;
    }
    forecast.climb /= likely;
    return forecast;
}

} // namespace panside
