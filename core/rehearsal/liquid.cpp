#include "core/rehearsal/liquid.h"

#include <algorithm>
#include <cmath>

namespace panside::rehearsal {

double waterBoils(double pascal) {
    const double x = std::log(pascal / 101325.0);
    return 99.97431 + x * (28.01811 + x * (2.40983 + x * 0.20234));
}

double risesBy(double sugar, double pascal) {
    const double s = std::clamp(sugar, 0.0, 0.95);
    const double ratio = s / (1.0 - s);
    const double atSeaLevel = ratio * (1.494 + ratio * (0.366 - ratio * 0.03837));
    return atSeaLevel * (1.0 - 0.0053 * (100.0 - waterBoils(pascal)));
}

double coldDensity(double sugar) {
    const double brix = sugar * 100.0;
    return (998.2 + brix * (3.804 + brix * 0.016806)) / 1000.0;
}

double hotDensity(double sugar) { return coldDensity(sugar) * (0.9585 + 0.0066 * std::min(sugar, 0.7)); }

double hydrometerReads(double brix, double celsius) {
    const double above = celsius * 1.8 + 32.0 - 60.0;
    return brix - above * (0.04233 + above * 6.78e-5);
}

double heatCapacity(double sugar) { return 4190.0 - 2500.0 * sugar; }

} // namespace panside::rehearsal
