#pragma once
#include "core/boil/fact.h"

#include <optional>

namespace panside {

// One check that was told twice: the same figures again within `seconds`. The one place that decides it, for the mark,
// the report and the season alike.
template <class Check, int seconds>
class Repeated {
public:
    // To be given the facts by time; true for a check that was not told before.
    bool isFirst(const Check& check, Instant at) {
        const bool again = last_ && *last_ == check && secondsBetween(at_, at) < seconds;
        last_ = check;
        if (!again)
            at_ = at;
        return !again;
    }

private:
    std::optional<Check> last_;
    Instant at_{};
};

using RepeatedCheck = Repeated<DensityCheck, 600>;
// Water is looked at twice within minutes, and may well read the same; a key that is pressed twice is pressed sooner.
using RepeatedWaterCheck = Repeated<WaterCheck, 90>;

} // namespace panside
