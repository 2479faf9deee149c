#include "core/physics/sugar_density.h"

#include "core/physics/range.h"
#include "core/physics/water.h"

#include <cmath>

namespace panside {
namespace {

constexpr double mostDissolved = 0.75;
constexpr double hottestSugar = 105; // degC

// ICUMSA SPS-4 (1998): coefficients of w^1 to w^6, one row for each power of (t - 20 degC)/100.
constexpr double coefficients[5][6] = {{385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890},
                                       {-46.2720, -7.1720, 1.1597, 5.1126, 17.5254, 0},
                                       {59.7712, 7.2491, 12.3630, -35.4791, 0, 0},
                                       {-47.2207, -21.6977, 27.6301, 0, 0, 0},
                                       {18.3184, 12.3081, 0, 0, 0, 0}};

bool inRange(Temperature t) { return within(t.celsius(), 0, hottestSugar); }

// What sugar adds to water's density at one temperature, as a polynomial of its mass fraction.
struct Excess {
    double terms[6];

    explicit Excess(Temperature temperature) {
        const double theta = (temperature.celsius() - 20) / 100;
        for (int i = 0; i < 6; ++i) {
            double term = 0;
            for (int k = 4; k >= 0; --k)
                term = term * theta + coefficients[k][i];
            terms[i] = term;
        }
    }
    double at(double w) const {
        double sum = 0;
        for (int i = 5; i >= 0; --i)
            sum = (sum + terms[i]) * w;
        return sum;
    }
    double slope(double w) const {
        double sum = 0;
        for (int i = 5; i >= 0; --i)
            sum = sum * w + (i + 1) * terms[i];
        return sum;
    }
};

} // namespace

std::optional<Density> sugarDensity(Brix sugar, Temperature temperature) {
    const double w = sugar.massFraction();
    if (!within(w, 0, mostDissolved) || !inRange(temperature))
        return std::nullopt;
    return *waterDensity(temperature) + Density::kilogramPerCubicMetre(Excess{temperature}.at(w));
}

std::optional<Brix> sugarOfDensity(Density density, Temperature temperature) {
    if (!inRange(temperature))
        return std::nullopt;
    const double excess = (density - *waterDensity(temperature)).kilogramPerCubicMetre();
    const Excess polynomial{temperature};
    if (!within(excess, 0, polynomial.at(mostDissolved)))
        return std::nullopt;
    // Newton: the curve rises and hardly bends, so a straight line to its end is a good start.
    double w = mostDissolved * excess / polynomial.at(mostDissolved);
    for (int turn = 0; turn < 8; ++turn) {
        const double step = (polynomial.at(w) - excess) / polynomial.slope(w);
        w -= step;
        if (std::abs(step) < 1e-13)
            break;
    }
    return Brix::massFraction(std::fmin(std::fmax(w, 0), mostDissolved));
}

std::optional<Density> sugarDensityUncertainty(Brix sugar, Temperature temperature) {
    if (!sugarDensity(sugar, temperature))
        return std::nullopt;
    const double t = temperature.celsius();
    const double tables = 0.01 + 0.3 * sugar.massFraction() / 0.66;
    const double beyond = (t <= 80 ? 0 : t <= 100 ? 1.5 : 2.5) * sugar.massFraction() / 0.66;
    return Density::kilogramPerCubicMetre(std::hypot(tables, beyond));
}

} // namespace panside
