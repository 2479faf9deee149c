#pragma once
// Times as other loggers write them. Pure: what a zone's clock meant is asked of the caller.
#include "core/boil/fact.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace panside {

// Values are kept in remembered maps: never renumber, only append.
enum class TimeForm : std::uint8_t {
    yearFirst = 0,       // 2026-03-14 18:42:07, with Z or +01:00 behind it where there is one
    monthFirst = 1,      // 3/14/2026 6:42:07 PM
    dayFirst = 2,        // 14.03.2026 18:42:07
    unixSeconds = 3,     // 1773513727
    unixMilliseconds = 4 // 1773513727000
};
inline constexpr int timeFormCount = 5;
std::string_view exampleOf(TimeForm form); // as above

// What a clock on the wall showed.
struct ShownTime {
    int year, month, day, hour, minute, second;
    std::int64_t microsecond;
    bool operator==(const ShownTime&) const = default;
};
// The moments at which a clock of some zone showed this, whole seconds; none in the hour that is left out in spring,
// two in the one that comes twice.
using ZoneClock = std::function<std::vector<Instant>(const ShownTime&)>;

// A moment that needs no zone, or what a clock showed; nullopt for what is neither in this form. A year of two digits
// is of this century.
std::optional<std::variant<Instant, ShownTime>> foreignTimeIn(std::string_view text, TimeForm form);

} // namespace panside
