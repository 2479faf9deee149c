#include "app/woodpile.h"

#include "core/season/cords.h"

namespace panside {
namespace {

constexpr std::chrono::hours longestShift{72};

} // namespace

double cordsBurntBeside(const Journal& journal, Instant since, std::optional<ShiftId> shown) {
    double cords = 0;
    for (const Shift& shift : journal.shifts()) {
        if (shift.id == shown || shift.id < since - longestShift)
            continue;
        CordSum sum{since};
        for (const auto& entry : journal.deeds(shift.id))
            sum.take(entry.fact);
        cords += sum.cords();
    }
    return cords;
}

} // namespace panside
