#include "core/ledger/rig_tells.h"

#include "core/physics/sap.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr int fewestTrendNights = 5;

// Student's t that 95 percent of belief lie within, two-sided, by degrees of freedom (standard tables).
double studentsT(int freedom) {
    static constexpr double table[] = {12.71, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228};
    return freedom <= 10 ? table[std::max(1, freedom) - 1] : 1.96 + 2.72 / freedom;
}

RigTrend trendOf(const Ledger& ledger) {
    // Like wood only: the kind that was fired on most nights.
    std::map<std::string, int> kinds;
    for (const Night& night : ledger.nights())
        if (night.wood > 0 && night.fired)
            ++kinds[night.woodKind];
    RigTrend trend;
    const auto most = std::ranges::max_element(kinds, [](const auto& a, const auto& b) { return a.second < b.second; });
    if (most == kinds.end())
        return trend;
    trend.wood = most->first;
    std::vector<double> days, logs;
    for (const Night& night : ledger.nights()) {
        if (night.wood <= 0 || !night.fired || night.woodKind != trend.wood)
            continue;
        const double syrupShare = 1 / sapPerSyrup(night.fired->brix(), Brix::degrees(66.9)).value_or(1e9);
        const double water = night.fired->volume().litre() * (1 - syrupShare);
        if (water < 50)
            continue;
        days.push_back(secondsBetween(ledger.nights().front().first, night.first) / 86400);
        logs.push_back(std::log(water / night.wood));
    }
    trend.nights = static_cast<int>(days.size());
    if (trend.nights < fewestTrendNights)
        return trend;
    const auto n = static_cast<double>(days.size());
    double meanDay = 0, meanLog = 0;
    for (std::size_t i = 0; i < days.size(); ++i) {
        meanDay += days[i] / n;
        meanLog += logs[i] / n;
    }
    double sxx = 0, sxy = 0;
    for (std::size_t i = 0; i < days.size(); ++i) {
        sxx += (days[i] - meanDay) * (days[i] - meanDay);
        sxy += (days[i] - meanDay) * (logs[i] - meanLog);
    }
    if (sxx <= 0)
        return trend;
    const double slope = sxy / sxx, span = days.back() - days.front();
    double rest = 0;
    for (std::size_t i = 0; i < days.size(); ++i)
        rest += std::pow(logs[i] - meanLog - slope * (days[i] - meanDay), 2);
    const double doubt = studentsT(trend.nights - 2) * std::sqrt(rest / (n - 2) / sxx);
    trend.first = std::exp(meanLog + slope * (days.front() - meanDay));
    trend.last = std::exp(meanLog + slope * (days.back() - meanDay));
    trend.changeLow = std::expm1((slope - doubt) * span);
    trend.changeHigh = std::expm1((slope + doubt) * span);
    constexpr double matters = 0.10; // less than that no brush brings back (our judgement)
    if (trend.changeHigh < 0 && trend.last / trend.first - 1 <= -matters)
        trend.verdict = RigVerdict::falling;
    else if (trend.changeLow > 0 && trend.last / trend.first - 1 >= matters)
        trend.verdict = RigVerdict::rising;
    else if (trend.changeLow > -matters && trend.changeHigh < matters)
        trend.verdict = RigVerdict::steady;
    return trend;
}

NiterTell niterOf(const Ledger& ledger) {
    NiterTell tell;
    double fire = 0;
    std::vector<double> between;
    bool counting = false;
    for (const Night& night : ledger.nights()) {
        if (!night.lit || !night.lastLoad)
            continue;
        Instant from = *night.lit;
        for (const Instant swapped : night.swapped) {
            const Instant at = std::clamp(swapped, from, std::max(from, *night.lastLoad));
            fire += secondsBetween(from, at);
            if (counting)
                between.push_back(fire);
            counting = true;
            ++tell.switches;
            fire = 0;
            from = at;
        }
        fire += std::max(0.0, secondsBetween(from, *night.lastLoad));
    }
    if (between.size() >= 2) {
        std::ranges::sort(between);
        tell.usual = Duration{between[between.size() / 2]};
        tell.shortest = Duration{between.front()};
        tell.longest = Duration{between.back()};
    }
    if (counting)
        tell.since = Duration{fire};
    return tell;
}

// How far each draw's check lay from physics, pan by pan. On one pan it may be niter or the pan; the same amount on
// every pan points to the glass, or to the probe.
GlassTell glassOf(const Ledger& ledger) {
    GlassTell tell;
    struct Sum {
        double weight = 0, sum = 0;
        void add(double value, double variance) {
            weight += 1 / variance;
            sum += value / variance;
        }
        double mean() const { return sum / weight; }
    };
    std::map<int, Sum> pans;
    Sum all;
    for (const CheckRow& check : ledger.tables().checks) {
        if (!check.apart || !check.apartSd)
            continue;
        const double variance = std::pow(std::max(0.03, check.apartSd->kelvin()), 2);
        pans[check.pan].add(check.apart->kelvin(), variance);
        all.add(check.apart->kelvin(), variance);
        ++tell.draws;
    }
    tell.pans = static_cast<int>(pans.size());
    if (tell.draws < leastGlassDraws || tell.pans < leastGlassPans)
        return tell;
    double chi = 0, spread = 0;
    for (const auto& [pan, sum] : pans) {
        const double off = sum.mean() - all.mean();
        chi += off * off * sum.weight;
        spread = std::max(spread, std::abs(off) - 1 / std::sqrt(sum.weight));
    }
    const double mean = all.mean();
    tell.apart = TemperatureDifference::kelvin(mean);
    tell.sd =
        TemperatureDifference::kelvin(std::sqrt(1 / all.weight) * std::max(1.0, std::sqrt(chi / (tell.pans - 1))));
    constexpr double brixAKelvin = 4.4; // near the finish (boiling rise of sucrose at 66.9 brix)
    tell.brix = mean * brixAKelvin;
    if (std::abs(mean) > 2 * tell.sd.kelvin() && spread < 0.5 * std::abs(mean))
        tell.verdict = RigVerdict::steady;
    return tell;
}

} // namespace

RigTells rigTells(const Ledger& ledger) { return {trendOf(ledger), niterOf(ledger), glassOf(ledger)}; }

} // namespace panside
