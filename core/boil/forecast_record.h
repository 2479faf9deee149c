#pragma once
// What was foretold in this cycle and how it came out: the record by which the forecast weighs its grounds, corrects
// itself, and is scored. Plain numbers, in seconds: what is learned is learned of their logarithms.
#include "core/boil/past_waits.h"
#include "core/boil/picture.h"

#include <array>

namespace panside {

// What a forecast rests on: the model of the pan; the middle that the waits of this shift leave, where there were any;
// how far the reading lay under the mark over the last minutes, brix, where it did.
struct DrawGrounds {
    Quantiles pan;
    std::optional<double> waits, under;
};

class ForecastRecord {
public:
    ForecastRecord();
    // The grounds as one, weighed and widened by how earlier forecasts came out.
    Quantiles weighed(const DrawGrounds& grounds) const;
    // To be judged when the event comes; kept one each 20 s, further apart in a long wait.
    bool wants(double lasted) const { return count_ == 0 || lasted - kept_[count_ - 1].lasted >= spacing_; }
    // The grounds, and what was shown: the whole, widened by the doubt of the mark.
    void keep(double lasted, const DrawGrounds& grounds, const Quantiles& shown);
    // The event came after so long a wait.
    DrawScore judge(double wait, Instant at);
    void forgetCycle();

private:
    struct Recorded {
        float lasted, waits, under; // negative: not known
        std::array<float, 3> pan, shown;
    };
    static constexpr std::size_t size = 44, terms = 3;
    using Terms = std::array<double, terms>;
    // Before it is turned back into seconds: logarithms of seconds and a minute.
    struct Blend {
        Terms terms;              // what the weights are of
        double pan, middle;       // of the pan, of the whole
        double lower, upper, far; // half ranges as they come, and how far off it is, 0 to 1
    };
    static DrawGrounds groundsOf(const Recorded& kept);
    Blend blend(const DrawGrounds& grounds) const;
    Quantiles quantilesOf(const Blend& blend) const;
    void learnWeights(double wait);
    void learnWidth(double wait);
    void learnPace(double wait);

    std::array<Recorded, size> kept_{};
    std::size_t count_ = 0;
    float spacing_ = 20;
    // Lean, weight of the waits, weight of the distance; and how well each is known.
    Terms weights_;
    std::array<Terms, terms> variance_;
    double paceSum_ = 0, paceWeight_ = 0;        // seconds a brix under the mark, over whole past cycles
    std::array<std::array<float, 2>, 2> widths_; // near and far off, lower and upper: logarithm of how much wider
};

} // namespace panside
