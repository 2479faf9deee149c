#pragma once

namespace panside {

// True from low to high. A billionth past the ends is let in: 105 degC is not quite 105 after its way through kelvin,
// and 32 degF not quite 0 degC. False for NaN.
constexpr bool within(double value, double low, double high) { return value >= low - 1e-9 && value <= high + 1e-9; }

} // namespace panside
