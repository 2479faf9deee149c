#include "core/boil/forecast_record.h"

#include "core/boil/square.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double aMinute = 60; // seconds added before logarithms are taken: near the event a minute more is no error
constexpr double longestWait = 5400; // a ninth that is missing
// What holds on rigs of any kind before this one has shown its own: tried on four sorts of made-up plant. Near the mark
// the pan alone says when; far off the distance with this shift's pace says more.
constexpr std::array<double, 3> firstWeights = {0, 0.25, 0.55}, firstDoubts = {0.1, 0.15, 0.25};
constexpr double farSeconds = 300; // so far off the distance counts half
constexpr double disagree = 2.5;   // at most, in logarithms
// A cycle counts as so many readings that err by `spread`; what errs by more than `wild` counts less and less.
constexpr double blendWorth = 3.5, spread = 0.3, wild = 0.1, stays = 0.98;
constexpr double paceForgets = 0.7;
// Half ranges: of the pan's own, and where its grounds disagree; near the mark never less than a part of a minute.
constexpr double panShare = 0.65, byWaits = 0.25, byDistance = 0.08;
// Near the mark a swing of the boil reaches it before the middle of the climb does.
constexpr double nearLean = 0.2;
constexpr double nearSeconds = 120, nearLower = 0.6, nearUpper = 0.2;
constexpr double learnWidth_ = 1.2, missBelow = 0.12, missAbove = 0.13, narrowest = -0.9, widest = 1.5;
// Before this rig has shown how far it errs: a rig that none of those plants was like errs by more.
constexpr float firstWider = 0.1F;

double logOf(double seconds) { return std::log(seconds + aMinute); }
double secondsOf(double log) { return std::max(0.0, std::exp(log) - aMinute); }

std::array<float, 3> packed(const Quantiles& q) {
    return {static_cast<float>(q.p10), static_cast<float>(q.p50), static_cast<float>(q.p90.value_or(-1))};
}
Quantiles unpacked(const std::array<float, 3>& q) {
    return {q[0], q[1], q[2] < 0 ? std::nullopt : std::optional{double{q[2]}}};
}
float packed(const std::optional<double>& value) { return value ? static_cast<float>(*value) : -1.0F; }
std::optional<double> unpacked(float value) { return value < 0 ? std::nullopt : std::optional{double{value}}; }

} // namespace

ForecastRecord::ForecastRecord()
    : weights_{firstWeights}, variance_{}, widths_{{{firstWider, firstWider}, {firstWider, firstWider}}} {
    for (std::size_t i = 0; i < terms; ++i)
        variance_[i][i] = square(firstDoubts[i]);
}

ForecastRecord::Blend ForecastRecord::blend(const DrawGrounds& grounds) const {
    Blend b{};
    b.pan = b.middle = logOf(grounds.pan.p50);
    b.lower = b.pan - logOf(grounds.pan.p10);
    b.upper = logOf(grounds.pan.p90.value_or(std::max(longestWait, 3 * grounds.pan.p50))) - b.pan;
    if (grounds.waits) {
        const double far = grounds.pan.p50 / (grounds.pan.p50 + farSeconds);
        const double waits = std::clamp(logOf(*grounds.waits) - b.pan, -disagree, disagree);
        double distance = 0;
        if (grounds.under && paceWeight_ > 0)
            distance = std::clamp(logOf(paceSum_ / paceWeight_ * *grounds.under) - b.pan, -disagree, disagree);
        b.terms = {1, waits, far * distance};
        for (std::size_t i = 0; i < terms; ++i)
            b.middle += weights_[i] * b.terms[i];
        const double wider = byWaits * std::abs(waits) + byDistance * std::abs(distance);
        b.lower += wider;
        b.upper += wider;
    }
    const double ahead = secondsOf(b.middle);
    b.far = ahead / (ahead + nearSeconds);
    b.middle -= nearLean * (1 - b.far);
    b.lower += nearLower * (1 - b.far);
    b.upper += nearUpper * (1 - b.far);
    return b;
}

Quantiles ForecastRecord::quantilesOf(const Blend& b) const {
    const auto wider = [&](std::size_t side) {
        return std::exp((1 - b.far) * widths_[0][side] + b.far * widths_[1][side]);
    };
    return {secondsOf(b.middle - panShare * wider(0) * b.lower), secondsOf(b.middle),
            secondsOf(b.middle + panShare * wider(1) * b.upper)};
}

Quantiles ForecastRecord::weighed(const DrawGrounds& grounds) const { return quantilesOf(blend(grounds)); }

void ForecastRecord::keep(double lasted, const DrawGrounds& grounds, const Quantiles& shown) {
    if (!wants(lasted))
        return;
    if (count_ == size) {
        for (std::size_t i = 0; i < size / 2; ++i)
            kept_[i] = kept_[2 * i];
        count_ = size / 2;
        spacing_ *= 2;
    }
    kept_[count_++] = {static_cast<float>(lasted), packed(grounds.waits), packed(grounds.under), packed(grounds.pan),
                       packed(shown)};
}

DrawGrounds ForecastRecord::groundsOf(const Recorded& kept) {
    return {unpacked(kept.pan), unpacked(kept.waits), unpacked(kept.under)};
}

void ForecastRecord::forgetCycle() {
    count_ = 0;
    spacing_ = 20;
}

// How long a brix under the mark lasted, over the whole cycle: a standstill is in it, and no rate of the moment shows
// that.
void ForecastRecord::learnPace(double wait) {
    double sum = 0, weight = 0;
    int n = 0;
    for (std::size_t i = 0; i < count_; ++i)
        if (const double came = wait - kept_[i].lasted; came >= 0 && kept_[i].under >= 0) {
            sum += came * kept_[i].under;
            weight += square(double{kept_[i].under});
            ++n;
        }
    if (n < 2 || weight <= 0)
        return;
    paceSum_ = paceForgets * paceSum_ + sum / n;
    paceWeight_ = paceForgets * paceWeight_ + weight / n;
}

// Recursive least squares in logarithms; what was learned fades to what holds on any rig.
void ForecastRecord::learnWeights(double wait) {
    int n = 0;
    for (std::size_t i = 0; i < count_; ++i)
        n += wait >= kept_[i].lasted && kept_[i].waits >= 0 && kept_[i].under >= 0;
    if (n < 2 || paceWeight_ <= 0)
        return;
    const Terms before = weights_;
    for (std::size_t k = 0; k < count_; ++k) {
        const double came = wait - kept_[k].lasted;
        if (came < 0 || kept_[k].waits < 0 || kept_[k].under < 0)
            continue;
        const Blend b = blend(groundsOf(kept_[k]));
        const double wanted = logOf(came) - b.pan + nearLean * (1 - b.far);
        double first = wanted, off = wanted, seen = 0;
        Terms with{};
        for (std::size_t i = 0; i < terms; ++i) {
            first -= before[i] * b.terms[i];
            off -= weights_[i] * b.terms[i];
            for (std::size_t j = 0; j < terms; ++j)
                with[i] += variance_[i][j] * b.terms[j];
            seen += b.terms[i] * with[i];
        }
        seen += square(spread) * std::max(1.0, std::abs(first) / wild) * n / blendWorth;
        for (std::size_t i = 0; i < terms; ++i) {
            weights_[i] += with[i] / seen * off;
            for (std::size_t j = 0; j < terms; ++j)
                variance_[i][j] -= with[i] * with[j] / seen;
        }
    }
    for (std::size_t i = 0; i < terms; ++i) {
        weights_[i] = firstWeights[i] + stays * (weights_[i] - firstWeights[i]);
        for (std::size_t j = 0; j < terms; ++j)
            variance_[i][j] *= square(stays);
        variance_[i][i] += (1 - square(stays)) * square(firstDoubts[i]);
    }
}

// Each side of the range, as it was shown, by how often the event came beyond it, near the mark and far off apart.
void ForecastRecord::learnWidth(double wait) {
    std::array<std::array<double, 2>, 2> missed{}, weight{};
    int n = 0;
    for (std::size_t i = 0; i < count_; ++i) {
        const double came = wait - kept_[i].lasted;
        if (came < 0)
            continue;
        const Blend b = blend(groundsOf(kept_[i]));
        const Quantiles said = unpacked(kept_[i].shown);
        const std::array<double, 2> share = {1 - b.far, b.far};
        for (std::size_t where = 0; where < 2; ++where) {
            weight[where][0] += share[where];
            missed[where][0] += came < said.p10 ? share[where] : 0;
            weight[where][1] += said.p90 ? share[where] : 0; // what was left open was not missed and not met
            missed[where][1] += said.p90 && came > *said.p90 ? share[where] : 0;
        }
        ++n;
    }
    for (std::size_t where = 0; where < 2; ++where)
        for (std::size_t side = 0; side < 2; ++side)
            if (weight[where][side] > 1e-6 * n) {
                const double counts = std::min(1.0, 2 * weight[where][side] / n);
                const double off = missed[where][side] / weight[where][side] - (side == 0 ? missBelow : missAbove);
                widths_[where][side] = static_cast<float>(
                    std::clamp(widths_[where][side] + learnWidth_ * counts * off, narrowest, widest));
            }
}

DrawScore ForecastRecord::judge(double wait, Instant at) {
    DrawScore score;
    score.at = at;
    for (std::size_t i = 0; i < count_; ++i) {
        const Recorded& kept = kept_[i];
        const double came = wait - kept.lasted;
        if (came < 0)
            continue;
        const Quantiles shown = unpacked(kept.shown);
        ++score.forecasts;
        score.underP10 += came <= shown.p10;
        score.underP50 += came <= shown.p50;
        score.underP90 += !shown.p90 || came <= *shown.p90;
        score.inside += came >= shown.p10 && (!shown.p90 || came <= *shown.p90);
        for (auto [error, lead] :
             {std::pair{&score.tenBefore, 600.0}, {&score.fiveBefore, 300.0}, {&score.twoBefore, 120.0}})
            if (came >= lead)
                *error = Duration{shown.p50 - came};
    }
    if (score.forecasts < 2)
        return score;
    for (double* share : {&score.underP10, &score.underP50, &score.underP90, &score.inside})
        *share /= score.forecasts;
    learnWidth(wait);
    learnWeights(wait);
    learnPace(wait);
    return score;
}

} // namespace panside
