#pragma once
#include "core/quantity/quantity.h"

#include <array>
#include <optional>

namespace panside {

// How far the mark has climbed since this pan's first checks. Niter grows under the syrup and insulates: the probe
// comes to read more over the same syrup, and the pan beneath scorches.
class MarkCreep {
public:
    // What a believed hydrometer check said the probe reads too high, kelvin.
    void addSample(double seen) {
        if (count_ < few)
            first_ += seen / few;
        last_[static_cast<std::size_t>(count_) % few] = seen;
        ++count_;
    }
    // Another pan, or another way to know where water boils.
    void forget() { *this = {}; }

    // From the first three checks to the last three; nullopt below six, or where the difference may be the scatter of
    // careful checks (0.25 K: more than three of its standard deviations).
    std::optional<TemperatureDifference> crept() const {
        if (count_ < 2 * few)
            return std::nullopt;
        double by = -first_;
        for (const double seen : last_)
            by += seen / few;
        constexpr double surely = 0.25; // kelvin
        return by >= surely ? std::optional{TemperatureDifference::kelvin(by)} : std::nullopt;
    }

private:
    static constexpr int few = 3;
    int count_ = 0;
    double first_ = 0;
    std::array<double, few> last_{};
};

} // namespace panside
