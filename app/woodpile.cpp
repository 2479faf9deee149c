#include "app/woodpile.h"

#include "app/season_book.h"

#include <algorithm>

namespace panside {
namespace {

constexpr std::chrono::hours longestShift{72};

} // namespace

std::optional<double> pileLeft(const Yard& yard, std::span<const SeasonShift> shifts, std::optional<ShiftId> running) {
    if (!yard.pile)
        return std::nullopt;
    double cords = yard.pile->cords();
    if (!yard.measured)
        return cords;
    const auto& [at, burntBefore] = *yard.measured;
    // The shift that ran when the pile was measured counts whole; what it had burnt by then was not in the pile.
    bool ranThen = running && *running <= at;
    for (const SeasonShift& shift : shifts)
        if (shift.id != running && shift.account && shift.account->last > at) {
            cords -= shift.account->cords;
            ranThen = ranThen || shift.account->first <= at;
        }
    return std::max(0.0, cords + (ranThen ? burntBefore : 0));
}

std::vector<SeasonShift> shiftsSince(const Yard::Measured& measured, Journal& journal) {
    auto shifts = keptSeason(journal);
    std::erase_if(shifts, [&](const SeasonShift& shift) { return shift.id < measured.at - longestShift; });
    for (SeasonShift& shift : shifts)
        if (!shift.account && !shift.open)
            shift.account = workOut(journal, {shift.id, shift.open, false});
    return shifts;
}

} // namespace panside
