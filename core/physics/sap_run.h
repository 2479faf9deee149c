#pragma once
// What a night's freeze and the day's thaw let expect of the trees. A rule of thumb: nobody has a law for it.
#include "core/quantity/quantity.h"

#include <cstdint>
#include <optional>

namespace panside {

enum class RunDay : std::uint8_t {
    frozen,   // the day does not thaw: nothing to speak of
    noFreeze, // the night did not freeze: what is left of the freeze before
    fair,
    heavy
};
struct SapRun {
    RunDay day;
    Volume low, high; // of a tap, in the day
};
// Range      coldest of the night -40 to 20 degC, warmest of the day -30 to 30 degC, the day no colder than the night
// Outside    nullopt
// Accuracy   none is claimed: wind, sun, vacuum, the size of the trees and how long it was cold are not in it
// Source     that a run wants a freeze and a thaw, and that a heavy day gives about a gallon a tap: a trade farming
//            magazine, about 2015, and a season's log of 2008. From which temperatures on it is heavy (25 degF and
//            colder by night, 40 to 55 degF by day) and the other amounts: common practice, no source
[[nodiscard]] std::optional<SapRun> sapRun(Temperature night, Temperature day);

} // namespace panside
