#pragma once

namespace panside {

inline constexpr auto version = PANSIDE_VERSION;

} // namespace panside
