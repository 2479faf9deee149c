#include "core/physics/refraction.h"

#include "core/physics/range.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace panside {
namespace {

// Fitted to the printed scale: n of the mass fraction, by rising power.
constexpr double index0 = 1.3329884;
constexpr double index1 = 0.1427231;
constexpr double index2 = 0.0550125;
constexpr double index3 = 0.0110921;
constexpr double index4 = 0.0147053;
constexpr double index5 = -0.0102731;
constexpr double mostRefracted = 0.85;

double indexOf(double w) { return index0 + w * (index1 + w * (index2 + w * (index3 + w * (index4 + w * index5)))); }
double indexSlope(double w) { return index1 + w * (2 * index2 + w * (3 * index3 + w * (4 * index4 + w * 5 * index5))); }

// Correction in brix by temperature and reading: 0, then 10 to 75 by 5.
constexpr int readings = 15;
struct Row {
    double celsius;
    double correction[readings];
};
constexpr Row table[] = {
    {10, {-0.5, -0.59, -0.62, -0.65, -0.67, -0.69, -0.71, -0.72, -0.73, -0.74, -0.75, -0.75, -0.75, -0.75, -0.75}},
    {11, {-0.46, -0.54, -0.57, -0.59, -0.61, -0.63, -0.64, -0.65, -0.66, -0.67, -0.68, -0.68, -0.68, -0.68, -0.67}},
    {12, {-0.42, -0.49, -0.51, -0.53, -0.55, -0.56, -0.57, -0.58, -0.59, -0.6, -0.6, -0.61, -0.61, -0.6, -0.6}},
    {13, {-0.38, -0.43, -0.45, -0.47, -0.48, -0.5, -0.51, -0.52, -0.52, -0.53, -0.53, -0.53, -0.53, -0.53, -0.53}},
    {14, {-0.33, -0.38, -0.39, -0.4, -0.42, -0.43, -0.44, -0.44, -0.45, -0.45, -0.46, -0.46, -0.46, -0.46, -0.45}},
    {15, {-0.28, -0.32, -0.33, -0.34, -0.35, -0.36, -0.37, -0.37, -0.38, -0.38, -0.38, -0.38, -0.38, -0.38, -0.38}},
    {16, {-0.23, -0.26, -0.27, -0.28, -0.28, -0.29, -0.3, -0.3, -0.3, -0.31, -0.31, -0.31, -0.31, -0.31, -0.3}},
    {20, {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0}},
    {25, {0.34, 0.39, 0.39, 0.39, 0.39, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.39, 0.39, 0.39, 0.39}},
    {30, {0.74, 0.83, 0.83, 0.83, 0.83, 0.83, 0.84, 0.82, 0.83, 0.82, 0.81, 0.8, 0.79, 0.79, 0.78}},
};

// Where a value stands between the steps of a table.
struct Place {
    int below;
    double share; // of the way to the next
};

Place placeOfReading(double brix) {
    if (brix < 10)
        return {0, std::fmax(brix, 0) / 10};
    const int below = std::min(static_cast<int>((brix - 5) / 5), readings - 2);
    return {below, (brix - 5 - below * 5) / 5};
}

double alongRow(const Row& row, Place place) {
    return std::lerp(row.correction[place.below], row.correction[place.below + 1], place.share);
}

} // namespace

std::optional<double> refractiveIndex(Brix sugar) {
    const double w = sugar.massFraction();
    if (!within(w, 0, mostRefracted))
        return std::nullopt;
    return indexOf(w);
}

std::optional<Brix> sugarOfIndex(double n) {
    if (!within(n, index0, indexOf(mostRefracted)))
        return std::nullopt;
    double w = mostRefracted * (n - index0) / (indexOf(mostRefracted) - index0);
    for (int turn = 0; turn < 8; ++turn) {
        const double step = (indexOf(w) - n) / indexSlope(w);
        w -= step;
        if (std::abs(step) < 1e-13)
            break;
    }
    return Brix::massFraction(std::fmin(std::fmax(w, 0), mostRefracted));
}

std::optional<Brix> refractometerCorrection(Brix reading, Temperature temperature) {
    const double t = temperature.celsius();
    if (!within(t, 10, 30) || !within(reading.degrees(), 0, 75))
        return std::nullopt;
    const Row* above = table + 1;
    while (above->celsius < t && above + 1 != std::end(table))
        ++above;
    const Row* below = above - 1;
    const Place place = placeOfReading(reading.degrees());
    const double share = (t - below->celsius) / (above->celsius - below->celsius);
    return Brix::degrees(std::lerp(alongRow(*below, place), alongRow(*above, place), share));
}

} // namespace panside
