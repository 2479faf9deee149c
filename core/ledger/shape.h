#pragma once
// A tank's shape as it is written: `upright 1.2 0.9` (diameter, height), `lying 1 2` (diameter, length), `box 2 1 0.8`
// (length, width, height), in metres, or `table 0.1 0.05 …` (depth and cubic metres in pairs). Numbers may have units:
// `box 6ft 3ft 30in`.
#include "core/physics/tank.h"

#include <optional>
#include <string_view>

namespace panside {

std::optional<TankShape> shapeIn(std::string_view text);

} // namespace panside
