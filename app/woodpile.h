#pragma once
// What is left of the woodpile: as it was measured, less what the shifts since then burnt.
#include "core/journal/journal.h"
#include "core/season/season.h"
#include "ui/tank/yard.h"

#include <optional>
#include <span>

namespace panside {

// Full cords that stood when the running shift began, or that stand now where none runs; nullopt without a pile.
// Only weighed loads count as burnt. A shift whose account is not worked out yet counts as none.
std::optional<double> pileLeft(const Yard& yard, std::span<const SeasonShift> shifts, std::optional<ShiftId> running);
// The shifts of a journal that may have burnt of the pile, their accounts worked out where they were not.
std::vector<SeasonShift> shiftsSince(const Yard::Measured& measured, Journal& journal);

} // namespace panside
