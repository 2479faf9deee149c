#pragma once
#include "core/boil/fact.h"

#include <optional>

namespace panside {

// One density check that was told twice: the same figures again within ten minutes. The one place that decides it, for
// the mark, the report and the season alike.
class RepeatedCheck {
public:
    // To be given the facts by time; true for a check that was not told before.
    bool isFirst(const DensityCheck& check, Instant at) {
        constexpr double within = 600; // seconds
        const bool again = last_ && *last_ == check && secondsBetween(at_, at) < within;
        last_ = check;
        if (!again)
            at_ = at;
        return !again;
    }

private:
    std::optional<DensityCheck> last_;
    Instant at_{};
};

} // namespace panside
