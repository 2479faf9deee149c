// What one call of the physics costs. The engine makes a few a picture, a second of a shift is a picture.
#include "core/physics/air.h"
#include "core/physics/baume.h"
#include "core/physics/gas.h"
#include "core/physics/hydrometer.h"
#include "core/physics/mixing.h"
#include "core/physics/platinum.h"
#include "core/physics/refraction.h"
#include "core/physics/sap.h"
#include "core/physics/sugar.h"
#include "core/physics/sugar_density.h"
#include "core/physics/sugar_heat.h"
#include "core/physics/thermocouple.h"
#include "core/physics/water.h"
#include "core/physics/wood.h"

#include <benchmark/benchmark.h>

namespace panside {
namespace {

// An argument that the compiler cannot foresee, a little different every time.
double moving(double from) {
    static double step = 0;
    step = step < 1 ? step + 1e-4 : 0;
    benchmark::DoNotOptimize(step);
    return from + step;
}
Pressure station() { return Pressure::kilopascal(moving(98)); }
Brix syrup() { return Brix::degrees(moving(66)); }
Temperature cup() { return Temperature::celsius(moving(95)); }
constexpr auto scale = Temperature::fahrenheit(60);

template <class Call>
void measure(benchmark::State& state, Call call) {
    for (auto _ : state)
        benchmark::DoNotOptimize(call());
}

const Wood maple = *woodNamed("sugar-maple");
constexpr auto twenty = WetBasis::percent(20);

BENCHMARK_CAPTURE(measure, waterBoilingPoint, [] { return waterBoilingPoint(station()); });
BENCHMARK_CAPTURE(measure, saturationPressure, [] { return saturationPressure(cup()); });
BENCHMARK_CAPTURE(measure, waterDensity, [] { return waterDensity(cup()); });
BENCHMARK_CAPTURE(measure, latentHeat, [] { return latentHeat(cup()); });
BENCHMARK_CAPTURE(measure, standardAtmosphere, [] { return standardAtmosphere(Length::metre(moving(300))); });
BENCHMARK_CAPTURE(measure, stationFromSeaLevel, [] { return stationFromSeaLevel(station(), Length::metre(300)); });
BENCHMARK_CAPTURE(measure, stationFromAltimeter, [] { return stationFromAltimeter(station(), Length::metre(300)); });
BENCHMARK_CAPTURE(measure, boilingRise, [] { return boilingRise(syrup(), Pressure::kilopascal(98.7)); });
BENCHMARK_CAPTURE(measure, sugarAtRise,
                  [] { return sugarAtRise(TemperatureDifference::kelvin(moving(3.5)), Pressure::kilopascal(98.7)); });
BENCHMARK_CAPTURE(measure, boilingRiseUncertainty, [] { return boilingRiseUncertainty(syrup()); });
BENCHMARK_CAPTURE(measure, sugarDensity, [] { return sugarDensity(syrup(), cup()); });
BENCHMARK_CAPTURE(measure, sugarOfDensity,
                  [] { return sugarOfDensity(Density::kilogramPerCubicMetre(moving(1300)), cup()); });
BENCHMARK_CAPTURE(measure, refractiveIndex, [] { return refractiveIndex(syrup()); });
BENCHMARK_CAPTURE(measure, sugarOfIndex, [] { return sugarOfIndex(1.45 + moving(0) / 100); });
BENCHMARK_CAPTURE(measure, refractometerCorrection,
                  [] { return refractometerCorrection(syrup(), Temperature::celsius(18)); });
BENCHMARK_CAPTURE(measure, baumeOf, [] { return baumeOf(syrup(), scale); });
BENCHMARK_CAPTURE(measure, sugarOfBaume, [] { return sugarOfBaume(Baume{moving(35)}, scale); });
BENCHMARK_CAPTURE(measure, sugarByHydrometer, [] { return sugarByHydrometer(Brix::degrees(59), cup(), scale); });
BENCHMARK_CAPTURE(measure, hydrometerUncertainty,
                  [] { return hydrometerUncertainty(Brix::degrees(59), cup(), scale); });
BENCHMARK_CAPTURE(measure, sugarHeatCapacity, [] { return sugarHeatCapacity(syrup(), cup()); });
BENCHMARK_CAPTURE(measure, heatToBoilAway, [] { return heatToBoilAway(cup(), station()); });
BENCHMARK_CAPTURE(measure, thermocoupleVoltage, [] { return thermocoupleVoltage(Thermocouple::K, cup(), scale); });
BENCHMARK_CAPTURE(measure, thermocoupleTemperature,
                  [] { return thermocoupleTemperature(Thermocouple::K, Voltage::millivolt(moving(3)), scale); });
BENCHMARK_CAPTURE(measure, platinumTemperature, [] { return platinumTemperature(Resistance::ohm(moving(138))); });
BENCHMARK_CAPTURE(measure, lowerHeat, [] { return lowerHeat(maple, WetBasis{moving(20) / 100}); });
BENCHMARK_CAPTURE(measure, flueLoss, [] {
    return flueLoss(maple, twenty, Temperature::celsius(moving(400)), Temperature::celsius(5), 1);
});
BENCHMARK_CAPTURE(measure, thinnerToReach, [] {
    return thinnerToReach(Brix::degrees(66), Portion{Volume::litre(10), syrup()}, Brix::degrees(2));
});
BENCHMARK_CAPTURE(measure, sapPerSyrup, [] { return sapPerSyrup(Brix::degrees(2), syrup()); });

} // namespace
} // namespace panside
