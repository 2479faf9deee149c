#include "core/physics/hydrometer.h"

#include "core/physics/range.h"
#include "core/physics/sugar_density.h"

#include <cmath>

namespace panside {
namespace {

constexpr double glass = 25e-6; // volume expansion a kelvin, ISO 1768:1975

bool isScale(Temperature t) { return within(t.celsius(), 0, 50); }
double swelling(Temperature sample, Temperature scale) { return 1 + glass * (sample - scale).kelvin(); }

} // namespace

std::optional<Brix> sugarByHydrometer(Brix reading, Temperature sample, Temperature scale) {
    const auto shown = sugarDensity(reading, scale);
    if (!shown || !isScale(scale))
        return std::nullopt;
    return sugarOfDensity(*shown / swelling(sample, scale), sample);
}

std::optional<Brix> hydrometerReading(Brix sugar, Temperature sample, Temperature scale) {
    const auto density = sugarDensity(sugar, sample);
    if (!density || !isScale(scale))
        return std::nullopt;
    return sugarOfDensity(*density * swelling(sample, scale), scale);
}

std::optional<Brix> hydrometerUncertainty(Brix reading, Temperature sample, Temperature scale,
                                          TemperatureDifference thermometer) {
    const auto sugar = sugarByHydrometer(reading, sample, scale);
    if (!sugar || !within(thermometer.kelvin(), 0, 20))
        return std::nullopt;
    const auto step = TemperatureDifference::kelvin(1);
    auto beside = sugarByHydrometer(reading, sample + step, scale);
    if (!beside) // at the end of a range: look the other way
        beside = sugarByHydrometer(reading, sample - step, scale);
    if (!beside)
        return std::nullopt;
    const double instrument = 0.15;
    const double byTemperature = (*beside - *sugar).degrees() * thermometer.kelvin();
    const double byGlass = 0.18 * std::fmin(1, std::abs((sample - scale).kelvin()) / 20);
    return Brix::degrees(std::sqrt(instrument * instrument + byTemperature * byTemperature + byGlass * byGlass));
}

} // namespace panside
