#include "core/physics/tonight.h"

#include "core/physics/sugar_density.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double warmUpPrior = 0.5, warmUpPriorSd = 0.3; // hours, our judgement
constexpr double phase = 0.08;                           // hours: where in the rhythm of firing the last load falls
constexpr double usualScatter = 0.06;                    // of one night about another; half of the prior lies below
constexpr double aging = 1.06;                           // a night counts for so much less with each that came after
constexpr double tenth = 1.2816;
// Of the sugar that goes in: what comes out as syrup, how well readings agree at best, one night about another.
constexpr double usualShare = 0.97, surestSyrup = 0.03, usualSyrupScatter = 0.15, usualWeight = 3;
constexpr double usualKeepScatter = 0.15; // of the sap that is left at the last load (our judgement)
constexpr double usualCordScatter = 0.06; // of the wood an hour
// Of the sugar that the pans hold at a first draw, and of the hours to it, in logarithms (our judgement).
constexpr double usualReadyScatter = 0.1, usualFirstScatter = 0.25;
constexpr double readyTooUnsure = 0.4; // nights that differ by more tell nothing of the next

double weigh(Brix sugar) {
    return sugarDensity(Brix::ofSi(std::clamp(sugar.si(), 0.0, 0.75)), Temperature::celsius(20))->si();
}
double sugarIn(const SapStanding& one) { return one.volume.si() * weigh(one.sugar) * one.sugar.si(); }
// Litres of syrup that hold so many kilograms of sugar.
double syrupLitres(double sugar, Brix syrup) { return sugar / (weigh(syrup) * syrup.si()) * 1e3; }
double normalBelow(double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); }
double hoursOf(Duration span) { return span.count() / 3600; }

// Mean and standard deviation of values about a stated prior that counts for so many of them.
struct Spread {
    double mean, sd;
    int count;
};
Spread spreadOf(std::span<const double> values, double priorMean, double priorSd, double priorCount) {
    double sum = priorMean * priorCount, weight = priorCount;
    for (const double value : values) {
        sum += value;
        weight += 1;
    }
    const double mean = sum / weight;
    double squares = 3 * priorSd * priorSd;
    for (const double value : values)
        squares += (value - mean) * (value - mean);
    const double one = std::sqrt(squares / (3 + static_cast<double>(values.size())));
    return {mean, one * std::sqrt(1 + 1 / std::max(1.0, weight)), static_cast<int>(values.size())};
}

} // namespace

Tonight::Tonight(TonightBasis basis) : basis_{std::move(basis)} {
    for (const NightBoiled& night : basis_.nights) {
        const double hours = hoursOf(night.fired);
        if (hours > 1.0 / 6 && hours < 48 && night.sap.litre() > 1 &&
            night.sap.litre() > syrupLitres(night.sugar.si(), basis_.syrup))
            used_.push_back(night);
    }
    learn();
}

// For each scatter on a grid the warm-up and the rate are Gaussian and exact; how well the nights agree with each other
// weighs the scatters.
void Tonight::learn() {
    if (used_.empty() && !basis_.rate)
        return;
    struct Row {
        double hours, water, weight;
    };
    std::vector<Row> rows;
    double meanHours = 0, meanWater = 0;
    for (std::size_t i = 0; i < used_.size(); ++i) {
        const double water = used_[i].sap.litre() - syrupLitres(used_[i].sugar.si(), basis_.syrup);
        const double hours = hoursOf(used_[i].fired);
        rows.push_back({hours, water, std::pow(aging, -static_cast<double>(used_.size() - 1 - i))});
        meanHours += hours;
        meanWater += water;
    }
    const double perPrior = rows.empty() ? 1 / basis_.rate->litrePerHour() : meanHours / meanWater;
    const double perPriorSd = rows.empty() ? 0.15 * perPrior : 2 * perPrior;
    constexpr int steps = 30;
    double best = -1e300;
    std::vector<double> logs;
    for (int k = 0; k < steps; ++k) {
        const double scatter = 0.01 * std::pow(40.0, (k + 0.5) / steps); // 1 to 40 percent
        double aa = 1 / (warmUpPriorSd * warmUpPriorSd), bb = 1 / (perPriorSd * perPriorSd), ab = 0;
        double a = warmUpPrior * aa, b = perPrior * bb, squares = warmUpPrior * a + perPrior * b, log = 0;
        for (const Row& row : rows) {
            const double variance = (std::pow(scatter * row.hours, 2) + phase * phase) / row.weight;
            aa += 1 / variance;
            ab += row.water / variance;
            bb += row.water * row.water / variance;
            a += row.hours / variance;
            b += row.hours * row.water / variance;
            squares += row.hours * row.hours / variance;
            log -= 0.5 * std::log(variance);
        }
        const double determinant = aa * bb - ab * ab;
        const double warm = (bb * a - ab * b) / determinant, per = (aa * b - ab * a) / determinant;
        log -= 0.5 * std::log(determinant) + 0.5 * std::max(0.0, squares - warm * a - per * b);
        // Half-Cauchy about nought; the grid is even in the logarithm.
        log += std::log(scatter) - std::log(1 + std::pow(scatter / usualScatter, 2));
        logs.push_back(log);
        best = std::max(best, log);
        beliefs_.push_back({0, scatter, warm, per, bb / determinant, aa / determinant, -ab / determinant});
    }
    double sum = 0;
    for (int k = 0; k < steps; ++k)
        sum += beliefs_[static_cast<std::size_t>(k)].weight = std::exp(logs[static_cast<std::size_t>(k)] - best);
    for (Belief& belief : beliefs_)
        belief.weight /= sum;
}

Likely<double> Tonight::hours(double water) const {
    struct Part {
        double weight, mean, sd;
    };
    std::vector<Part> parts;
    double low = 1e300, high = 0;
    for (const Belief& one : beliefs_) {
        const double mean = one.warmUp + one.perLitre * water;
        const double sd = std::sqrt(one.varWarm + 2 * water * one.covariance + water * water * one.varPer +
                                    std::pow(one.scatter * mean, 2) + phase * phase);
        parts.push_back({one.weight, mean, sd});
        low = std::min(low, mean - 5 * sd);
        high = std::max(high, mean + 5 * sd);
    }
    const auto quantile = [&](double p) {
        double from = low, to = high;
        for (int i = 0; i < 60; ++i) {
            const double middle = (from + to) / 2;
            double below = 0;
            for (const Part& part : parts)
                below += part.weight * normalBelow((middle - part.mean) / part.sd);
            (below < p ? from : to) = middle;
        }
        return std::max(0.0, to);
    };
    return {quantile(0.1), quantile(0.5), quantile(0.9)};
}

std::optional<Volume> Tonight::keepBack() const {
    std::vector<double> kept;
    for (const NightBoiled& night : used_)
        if (night.kept && *night.kept < night.sap) // a night that was broken off tells nothing
            kept.push_back(night.kept->litre());
    if (kept.size() < 2 && basis_.keepBack)
        return basis_.keepBack;
    if (kept.empty())
        return std::nullopt;
    std::nth_element(kept.begin(), kept.begin() + static_cast<std::ptrdiff_t>(kept.size() / 2), kept.end());
    return Volume::litre(kept[kept.size() / 2]);
}

// What comes out is what goes in, less what more stays in the pans than stood in them before. The nights say how far
// that was from the mark, and by what share the readings of sap and syrup disagree.
Likely<Volume> Tonight::syrupOf(double sugar, double sugarSd) const {
    double in = 0, drawn = 0;
    std::vector<double> held;
    int known = 0;
    for (const NightBoiled& night : used_) {
        if (night.sugarIn && night.sugarDrawn && night.sugarIn->si() > 0) {
            in += night.sugarIn->si();
            drawn += night.sugarDrawn->si();
            ++known;
        }
        if (night.sugarInPans)
            held.push_back(night.sugarInPans->si());
    }
    const double usual = known > 0 ? in / known : sugar;
    const double share = (drawn + usualShare * usual) / (in + usual);
    // What the pans keep or give matters more in a short night: between a sum and a share of it.
    double squares = usualWeight * usualSyrupScatter * usualSyrupScatter;
    for (const NightBoiled& night : used_)
        if (night.sugarIn && night.sugarDrawn && night.sugarIn->si() > 0)
            squares +=
                std::pow(night.sugarDrawn->si() - share * night.sugarIn->si(), 2) / (usual * night.sugarIn->si());
    const double scatter = std::sqrt(squares / (usualWeight + known) * (1 + 1.0 / (known + 1)));
    double middle = share * sugar;
    double sd = std::hypot(scatter * std::sqrt(usual * sugar), surestSyrup * sugar, sugarSd);
    if (basis_.pansEmpty && !held.empty()) {
        const Spread pans = spreadOf(held, held.back(), 0.3 * held.back(), 1);
        middle -= pans.mean;
        sd = std::hypot(sd, pans.sd);
    }
    const auto litres = [&](double kilograms) {
        return Volume::litre(std::max(0.0, syrupLitres(kilograms, basis_.syrup)));
    };
    return {litres(middle - tenth * sd), litres(middle), litres(middle + tenth * sd)};
}

// The sap that brings what is lacking, boiled off at this rig's rate.
double Tonight::hoursToReady(double before, double ready, double sapSugar) const {
    const double sap = std::max(0.0, ready - before) / sapSugar; // kg, near enough litres
    double hours = 0;
    for (const Belief& one : beliefs_)
        hours += one.weight * (one.warmUp + one.perLitre * sap);
    return std::max(0.1, hours);
}

std::optional<Likely<Duration>> Tonight::firstDraw(double sapSugar) const {
    if (!basis_.sweetInPans || sapSugar <= 0)
        return std::nullopt;
    std::vector<double> ready, ratios;
    for (const NightBoiled& night : used_)
        if (night.firstDraw && night.sugarReady && night.sugarBefore && night.sugar.si() > 0) {
            ready.push_back(night.sugarReady->si());
            const double its = night.sugar.si() / (night.sap.litre());
            ratios.push_back(std::log(hoursOf(*night.firstDraw) /
                                      hoursToReady(night.sugarBefore->si(), night.sugarReady->si(), its)));
        }
    if (ready.size() < 2)
        return std::nullopt;
    const Spread held = spreadOf(ready, ready.front(), usualReadyScatter * ready.front(), 0);
    const Spread late = spreadOf(ratios, 0, usualFirstScatter, 1);
    if (held.sd > readyTooUnsure * held.mean)
        return std::nullopt;
    const auto hours = [&](double more) {
        return hoursToReady(basis_.sweetInPans->si(), held.mean + more * held.sd, sapSugar) * std::exp(late.mean);
    };
    const double middle = hours(0);
    const double under = std::hypot(middle - hours(-tenth), middle * (1 - std::exp(-tenth * late.sd)));
    const double over = std::hypot(hours(tenth) - middle, middle * (std::exp(tenth * late.sd) - 1));
    const auto span = [](double h) { return Duration{std::max(0.1, h) * 3600}; };
    return Likely<Duration>{span(middle - under), span(middle), span(middle + over)};
}

std::optional<Likely<double>> Tonight::cordsOf(const Likely<double>& hours) const {
    std::vector<double> perHour;
    for (const NightBoiled& night : used_)
        if (night.cords && *night.cords > 0)
            perHour.push_back(*night.cords / hoursOf(night.fired));
    if (perHour.empty() || hours.p50 <= 0)
        return std::nullopt;
    double mean = 0;
    for (const double one : perHour)
        mean += one / static_cast<double>(perHour.size());
    for (double& one : perHour)
        one /= mean;
    const double share = spreadOf(perHour, 1, usualCordScatter, 1).sd, middle = mean * hours.p50;
    const double under = std::hypot(tenth * share, 1 - hours.p10 / hours.p50);
    const double over = std::hypot(tenth * share, hours.p90 / hours.p50 - 1);
    return Likely<double>{std::max(0.0, middle * (1 - under)), middle, middle * (1 + over)};
}

TonightLack Tonight::lack(std::span<const SapStanding> stands) const {
    double litres = 0;
    for (const SapStanding& one : stands)
        litres += one.volume.litre();
    if (litres <= 0)
        return TonightLack::noSap;
    if (beliefs_.empty())
        return TonightLack::noNight;
    return litres <= keepBack().value_or(Volume{}).litre() ? TonightLack::allKeptBack : TonightLack::none;
}

std::optional<TonightPlan> Tonight::plan(std::span<const SapStanding> stands) const {
    if (lack(stands) != TonightLack::none)
        return std::nullopt;
    TonightPlan plan;
    double sugar = 0, variance = 0;
    for (const SapStanding& one : stands) {
        plan.sap += one.volume;
        sugar += sugarIn(one);
        variance += one.volume.si() * weigh(one.sugar) * one.sugarSd.si();
    }
    plan.sugar = Mass::ofSi(sugar);
    const auto keep = keepBack();
    plan.keepBack = keep.value_or(Volume{});
    plan.keepKnown = keep.has_value();
    plan.keepLearned = keep && keep != basis_.keepBack;
    const double boiled = (plan.sap - plan.keepBack).litre();
    const double water = boiled - syrupLitres(sugar * boiled / plan.sap.litre(), basis_.syrup);
    plan.water = Volume::litre(std::max(0.0, water));
    Likely<double> fired = hours(plan.water.litre());
    // The nights say how long so much water takes; how much of it is left at the last load differs from night to night.
    std::vector<double> kept;
    for (const NightBoiled& night : used_)
        if (night.kept && *night.kept < night.sap)
            kept.push_back(night.kept->litre());
    const double keepSd = spreadOf(kept, plan.keepBack.litre(), usualKeepScatter * plan.keepBack.litre(), 1).sd;
    const double wider = tenth * keepSd * fired.p50 / std::max(1.0, plan.water.litre());
    fired.p10 = std::max(0.0, fired.p50 - std::hypot(fired.p50 - fired.p10, wider));
    fired.p90 = fired.p50 + std::hypot(fired.p90 - fired.p50, wider);
    const auto span = [](double h) { return Duration{h * 3600}; };
    plan.lastLoad = {span(fired.p10), span(fired.p50), span(fired.p90)};
    // The burn-out, where nobody has seen it, may be a third of an hour longer or shorter.
    const double doubt = basis_.burnOutLearned ? 0.1 : 0.25, burn = hoursOf(basis_.burnOut);
    const auto apart = [&](double edge) { return std::hypot(edge - fired.p50, tenth * doubt); };
    plan.cold = {span(std::max(0.0, fired.p50 + burn - apart(fired.p10))), span(fired.p50 + burn),
                 span(fired.p50 + burn + apart(fired.p90))};
    plan.syrup = syrupOf(sugar, variance);
    plan.firstDraw = firstDraw(sugar / plan.sap.litre());
    plan.cords = cordsOf(fired);
    plan.nights = nights();
    plan.rateSaid = used_.empty();
    return plan;
}

std::optional<Tonight::MayStart> Tonight::mayStart(std::span<const SapStanding> stands, Duration untilCold) const {
    if (lack(stands) == TonightLack::noSap || lack(stands) == TonightLack::noNight)
        return std::nullopt;
    double all = 0;
    for (const SapStanding& one : stands)
        all += one.volume.litre();
    const auto part = [&](double share) {
        std::vector<SapStanding> some{stands.begin(), stands.end()};
        for (SapStanding& one : some)
            one.volume = one.volume * share;
        return some;
    };
    const auto fits = [&](double share, bool surely) {
        const auto some = plan(part(share));
        return some && (surely ? some->cold.p90 : some->cold.p50) <= untilCold;
    };
    const auto most = [&](bool surely) {
        if (fits(1, surely))
            return 1.0;
        double low = std::min(1.0, keepBack().value_or(Volume{}).litre() / all * (1 + 1e-9)), high = 1;
        if (!fits(low + 1e-6, surely))
            return 0.0;
        for (int i = 0; i < 40; ++i) {
            const double middle = (low + high) / 2;
            (fits(middle, surely) ? low : high) = middle;
        }
        return low;
    };
    const double surely = most(true), likely = most(false);
    return MayStart{Volume::litre(all * surely), Volume::litre(all * likely), surely >= 1};
}

std::optional<Likely<VolumeFlow>> Tonight::rate() const {
    if (beliefs_.empty())
        return std::nullopt;
    double per = 0, variance = 0;
    for (const Belief& one : beliefs_)
        per += one.weight * one.perLitre;
    for (const Belief& one : beliefs_)
        variance += one.weight * (one.varPer + std::pow(one.perLitre - per, 2));
    const double sd = std::min(std::sqrt(variance), 0.5 * per);
    const auto flow = [](double hoursALitre) { return VolumeFlow::litrePerHour(1 / hoursALitre); };
    return Likely<VolumeFlow>{flow(per + tenth * sd), flow(per), flow(per - tenth * sd)};
}

std::optional<Duration> Tonight::warmUp() const {
    if (beliefs_.empty())
        return std::nullopt;
    double warm = 0;
    for (const Belief& one : beliefs_)
        warm += one.weight * one.warmUp;
    return Duration{warm * 3600};
}

std::vector<SapStanding> concentratedTo(std::span<const SapStanding> stands, Brix to) {
    std::vector<SapStanding> made;
    for (const SapStanding& one : stands) {
        if (one.sugar >= to || one.sugar.si() <= 0) {
            made.push_back(one);
            continue;
        }
        const double ratio = weigh(one.sugar) * one.sugar.si() / (weigh(to) * to.si());
        made.push_back({one.volume * ratio, to, Brix::ofSi(one.sugarSd.si() * to.si() / one.sugar.si())});
    }
    return made;
}

} // namespace panside
