#pragma once
// Show your ground: why each alarm stands, why a reading is doubted or a figure missing, what became of a check, what a
// forecast goes by and what was learned; one list for the board's page and the terminal.
#include "core/boil/picture.h"

#include <string>
#include <variant>
#include <vector>

namespace panside {

struct ToldGround {
    std::variant<Alarm, Shown, Series> of;
    std::variant<Ground, Why> why;
    bool operator==(const ToldGround&) const = default;
};
// Alarms first, in their order; then readings, then figures.
std::vector<ToldGround> groundsOf(const Picture& picture);
std::string toldText(const ToldGround& told); // "pan_low: the syrup pan stands at 12 mm, …", in English and SI

} // namespace panside
