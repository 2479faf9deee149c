#pragma once
// What was foretold in this cycle and how it came out: the record by which the forecast weighs its two sources,
// corrects itself, and is scored.
#include "core/boil/past_waits.h"
#include "core/boil/picture.h"

#include <array>

namespace panside {

class ForecastRecord {
public:
    ForecastRecord();
    // The pan's own forecast and, where there is one, that of the waits: one, corrected by what was learned.
    Quantiles weighed(const Quantiles& pan, const std::optional<Quantiles>& waits) const;
    // To be judged when the event comes; kept one each 20 s, further apart in a long wait.
    bool wants(double lasted) const { return count_ == 0 || lasted - kept_[count_ - 1].lasted >= spacing_; }
    // Both sources, and what was shown: the two as one, widened by the doubt of the mark.
    void keep(double lasted, const Quantiles& pan, const std::optional<Quantiles>& waits, const Quantiles& shown);
    // The event came after so long a wait.
    DrawScore judge(double wait, Instant at);
    void forgetCycle();

private:
    struct Kept {
        float lasted;
        std::array<float, 3> pan, waits, shown;
    };
    static constexpr std::size_t size = 44;
    Quantiles mixed(const Quantiles& pan, const Quantiles& waits) const;
    Quantiles corrected(const Quantiles& forecast) const;
    Quantiles said(const Kept& kept) const;

    std::array<Kept, size> kept_{};
    std::size_t count_ = 0;
    float spacing_ = 20;
    bool waitsKnown_ = false;
    double panLoss_, waitsLoss_;
    double lean_ = 0, leanCount_ = 0; // logarithm by which the waits were longer than said
    double width_ = 0;                // logarithm by which the range is to be wider
};

} // namespace panside
