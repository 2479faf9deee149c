#pragma once

namespace panside {

constexpr double square(double x) { return x * x; }

} // namespace panside
