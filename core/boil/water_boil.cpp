#include "core/boil/water_boil.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double longestWatch = 120; // s, of a probe that reads so seldom that 30 s hold too few
constexpr std::size_t fewest = 6;    // readings that a verdict rests on
constexpr double still = 0.15;       // K a minute: slower is standing still
constexpr double rolling = 0.15;     // K of scatter in a rolling boil
constexpr double coarsest = 0.6;     // K: the widest last digit that is allowed for (1 degF)
constexpr double spike = 1.5;        // K off the middle: left out
constexpr double slightlyOff = 1.0;  // K that a fair probe may read wrong
constexpr double sure = 3;           // standard deviations
constexpr double shallowest = 5;     // K under boiling that a probe half in the steam may read; under it no boil

double middle(std::vector<double> numbers) {
    const auto half = numbers.begin() + static_cast<std::ptrdiff_t>(numbers.size() / 2);
    std::nth_element(numbers.begin(), half, numbers.end());
    return *half;
}

// The newest samples that make up the watch, without spikes.
std::vector<WaterSample> watched(std::span<const WaterSample> samples, Instant now) {
    auto from = samples.size();
    const auto age = [&](std::size_t i) { return secondsBetween(samples[i].at, now); };
    while (from > 0 && age(from - 1) <= longestWatch &&
           (age(from - 1) <= waterWatch.count() || samples.size() - from < fewest))
        --from;
    std::vector<WaterSample> last{samples.begin() + static_cast<std::ptrdiff_t>(from), samples.end()};
    std::vector<double> numbers;
    numbers.reserve(last.size());
    for (const auto& sample : last)
        numbers.push_back(sample.read.kelvin());
    if (numbers.empty())
        return last;
    const double centre = middle(numbers);
    std::vector<WaterSample> whole;
    std::ranges::copy_if(last, std::back_inserter(whole),
                         [&](const WaterSample& s) { return std::abs(s.read.kelvin() - centre) < spike; });
    // Many that stand apart are no spikes.
    return whole.size() * 10 >= last.size() * 9 ? whole : last;
}

struct WaterLine {
    double mean = 0, slope = 0, scatter = 0; // K, K a second, K
};
WaterLine lineThrough(std::span<const WaterSample> samples) {
    const auto n = static_cast<double>(samples.size());
    double t = 0, y = 0;
    for (const auto& s : samples) {
        t += secondsBetween(samples.front().at, s.at) / n;
        y += s.read.kelvin() / n;
    }
    double tt = 0, ty = 0, yy = 0;
    for (const auto& s : samples) {
        const double dt = secondsBetween(samples.front().at, s.at) - t, dy = s.read.kelvin() - y;
        tt += dt * dt;
        ty += dt * dy;
        yy += dy * dy;
    }
    const double slope = tt > 0 ? ty / tt : 0;
    return {y, slope, std::sqrt(std::max(0.0, yy - slope * ty) / std::max(1.0, n - 2))};
}

// The probe's last digit, as far as it shows: between two of its digits a reading may flicker.
double digit(std::span<const WaterSample> samples) {
    double step = coarsest;
    for (std::size_t i = 1; i < samples.size(); ++i)
        if (const double by = std::abs((samples[i].read - samples[i - 1].read).kelvin()); by > 1e-6)
            step = std::min(step, by);
    return step;
}

WaterVerdict judge(double off, double limit) {
    if (std::abs(off) <= limit)
        return WaterVerdict::fits;
    return off > 0 ? WaterVerdict::tooHot : off > -shallowest ? WaterVerdict::tooShallow : WaterVerdict::notBoiling;
}

WaterVerdict judgeAlone(double at) {
    return at < coldestBoil.kelvin()   ? WaterVerdict::notBoiling
           : at > hottestBoil.kelvin() ? WaterVerdict::tooHot
                                       : WaterVerdict::givesBoiling;
}

} // namespace

std::vector<WaterSample> waterSamples(const Facts& facts, const std::string& probe, Instant since) {
    std::vector<WaterSample> samples;
    Fact scratch{};
    for (std::size_t i = facts.before(since); i < facts.size(); ++i)
        if (const auto* reading = std::get_if<Reading>(&facts.fact(i, scratch).what))
            if (reading->series == Series::syrup_pan && reading->probe == probe)
                samples.push_back({facts.at(i), reading->temperature()});
    return samples;
}

WaterLook lookAtWater(std::span<const WaterSample> samples, Instant now, const std::optional<ExpectedBoil>& expected) {
    const auto last = watched(samples, now);
    if (last.empty())
        return {};
    WaterLook look{.verdict = WaterVerdict::watching};
    const WaterLine line = lineThrough(last);
    look.at = Temperature::kelvin(line.mean);
    look.scatter = TemperatureDifference::kelvin(line.scatter);
    look.eachMinute = TemperatureDifference::kelvin(line.slope * 60);
    look.watched = Duration{std::min(waterWatch.count(), secondsBetween(last.front().at, now))};
    if (expected)
        look.off = *look.at - expected->at;
    // A watch that begins with a reading 2 s late is a whole one.
    if (last.size() < fewest || look.watched.count() < 0.9 * waterWatch.count())
        return look;
    if (std::abs(look.eachMinute.kelvin()) > still && std::abs(line.slope) * waterWatch.count() > 1.5 * line.scatter)
        look.verdict = WaterVerdict::stillWarming;
    else if (line.scatter > std::max(rolling, 0.55 * digit(last)))
        look.verdict = WaterVerdict::restless;
    else if (expected && expected->byHeight) {
        const auto verdict = judge(look.off->kelvin(), sure * expected->sd.kelvin());
        look.verdict = verdict == WaterVerdict::fits ? WaterVerdict::givesBoiling : verdict;
    } else if (expected)
        look.verdict = judge(look.off->kelvin(), std::max(slightlyOff, sure * expected->sd.kelvin()));
    else
        look.verdict = judgeAlone(line.mean);
    return look;
}

} // namespace panside
