#include "core/boil/forecast_record.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double aMinute = 60; // seconds added before logarithms are taken: near the event a minute more is no error
constexpr double lossForgets = 0.8;
// Before any wait was judged: as if the pan had lost 100 and the waits 200 seconds.
constexpr double firstPanLoss = 100, firstWaitsLoss = 200, sharpness = 3;
// The range before the doubt of the mark is added, which these waits cannot show.
constexpr double insideBefore = 0.72;
constexpr double learnLean = 0.5, learnWidth = 0.25, furthestLean = 0.5, narrowest = -0.6, widest = 0.8;

std::array<float, 3> packed(const Quantiles& q) {
    return {static_cast<float>(q.p10), static_cast<float>(q.p50), static_cast<float>(q.p90.value_or(-1))};
}
Quantiles unpacked(const std::array<float, 3>& q) {
    return {q[0], q[1], q[2] < 0 ? std::nullopt : std::optional{double{q[2]}}};
}

} // namespace

ForecastRecord::ForecastRecord() : panLoss_{firstPanLoss}, waitsLoss_{firstWaitsLoss} {}

Quantiles ForecastRecord::mixed(const Quantiles& pan, const Quantiles& waits) const {
    const double a = std::pow(panLoss_, sharpness), b = std::pow(waitsLoss_, sharpness), share = b / (a + b);
    Quantiles mix{share * pan.p10 + (1 - share) * waits.p10, share * pan.p50 + (1 - share) * waits.p50, {}};
    if (pan.p90 && waits.p90)
        mix.p90 = share * *pan.p90 + (1 - share) * *waits.p90;
    return mix;
}

Quantiles ForecastRecord::corrected(const Quantiles& forecast) const {
    const auto middle = std::log(forecast.p50 + aMinute);
    const auto moved = [&](double seconds) {
        const double wider = (std::log(seconds + aMinute) - middle) * std::exp(width_);
        return std::max(0.0, std::exp(middle + wider + lean_) - aMinute);
    };
    Quantiles out{moved(forecast.p10), moved(forecast.p50), {}};
    if (forecast.p90)
        out.p90 = moved(*forecast.p90);
    return out;
}

Quantiles ForecastRecord::weighed(const Quantiles& pan, const std::optional<Quantiles>& waits) const {
    return corrected(waits ? mixed(pan, *waits) : pan);
}

void ForecastRecord::keep(double lasted, const Quantiles& pan, const std::optional<Quantiles>& waits,
                          const Quantiles& shown) {
    if (!wants(lasted))
        return;
    if (count_ == size) {
        for (std::size_t i = 0; i < size / 2; ++i)
            kept_[i] = kept_[2 * i];
        count_ = size / 2;
        spacing_ *= 2;
    }
    waitsKnown_ = waits.has_value();
    kept_[count_++] = {static_cast<float>(lasted), packed(pan), packed(waits.value_or(pan)), packed(shown)};
}

Quantiles ForecastRecord::said(const Kept& kept) const {
    return waitsKnown_ ? weighed(unpacked(kept.pan), unpacked(kept.waits)) : corrected(unpacked(kept.pan));
}

void ForecastRecord::forgetCycle() {
    count_ = 0;
    spacing_ = 20;
}

DrawScore ForecastRecord::judge(double wait, Instant at) {
    DrawScore score;
    score.at = at;
    double panLoss = 0, waitsLoss = 0, lean = 0, inside = 0;
    for (std::size_t i = 0; i < count_; ++i) {
        const Kept& kept = kept_[i];
        const double came = wait - kept.lasted;
        if (came < 0)
            continue;
        const Quantiles pan = unpacked(kept.pan), waits = unpacked(kept.waits), said = this->said(kept);
        const Quantiles shown = unpacked(kept.shown);
        panLoss += lossOf(pan, came);
        waitsLoss += lossOf(waits, came);
        lean += std::log((came + aMinute) / ((waitsKnown_ ? mixed(pan, waits) : pan).p50 + aMinute));
        ++score.forecasts;
        inside += came >= said.p10 && (!said.p90 || came <= *said.p90);
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
    const double n = score.forecasts;
    for (double* share : {&score.underP10, &score.underP50, &score.underP90, &score.inside})
        *share /= n;
    if (waitsKnown_) {
        panLoss_ = lossForgets * panLoss_ + panLoss / n;
        waitsLoss_ = lossForgets * waitsLoss_ + waitsLoss / n;
    }
    leanCount_ = 0.85 * leanCount_ + 1;
    lean_ = std::clamp(lean_ + learnLean * (lean / n - lean_) / (leanCount_ + 1), -furthestLean, furthestLean);
    width_ = std::clamp(width_ + learnWidth * (insideBefore - inside / n), narrowest, widest);
    return score;
}

} // namespace panside
