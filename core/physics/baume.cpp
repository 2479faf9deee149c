#include "core/physics/baume.h"

#include "core/physics/range.h"
#include "core/physics/sugar_density.h"
#include "core/physics/water.h"

namespace panside {
namespace {

constexpr double modulus = 145;

bool isCalibration(Temperature t) { return within(t.celsius(), 0, 50); }

} // namespace

std::optional<Baume> baumeOf(Brix sugar, Temperature scale) {
    const auto density = sugarDensity(sugar, scale);
    if (!density || !isCalibration(scale))
        return std::nullopt;
    return Baume{modulus - modulus * (*waterDensity(scale) / *density)};
}

std::optional<Brix> sugarOfBaume(Baume reading, Temperature scale) {
    if (!isCalibration(scale) || !within(reading.degrees, 0, 60))
        return std::nullopt;
    return sugarOfDensity(*waterDensity(scale) * (modulus / (modulus - reading.degrees)), scale);
}

} // namespace panside
