// What must hold for any amount: inverses return what went in, what climbs in nature climbs here, units round-trip, and
// no NaN ever comes out, whatever went in.
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
#include "core/quantity/unit.h"

#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

namespace panside {
namespace {

// A number from low to high, evenly.
double between(double low, double high) {
    const int grain = 1000000;
    return low + (high - low) * *rc::gen::inRange(0, grain + 1) / grain;
}
Pressure anyStation() { return Pressure::kilopascal(between(60, 110)); }
Brix anySugar() { return Brix::degrees(between(0, 75)); }
Temperature anyScale() { return Temperature::celsius(between(0, 50)); }
bool near(double a, double b, double apart) { return std::abs(a - b) <= apart; }

RC_GTEST_PROP(PhysicsProperty, SaturationReturnsTheBoilingPoint, ()) {
    const auto pressure = Pressure::kilopascal(between(0.62, 22000));
    const auto back = saturationPressure(*waterBoilingPoint(pressure));
    RC_ASSERT(near(*back / pressure, 1, 1e-8));
}

RC_GTEST_PROP(PhysicsProperty, WaterBoilsHotterUnderMorePressure, ()) {
    const auto pressure = anyStation();
    RC_ASSERT(*waterBoilingPoint(pressure + Pressure::pascal(1)) > *waterBoilingPoint(pressure));
}

RC_GTEST_PROP(PhysicsProperty, TheRiseReturnsItsSugarAndClimbsWithIt, ()) {
    const auto pressure = anyStation();
    const auto sugar = Brix::degrees(between(0, 74.9));
    const auto rise = *boilingRise(sugar, pressure);
    RC_ASSERT(near(sugarAtRise(rise, pressure)->degrees(), sugar.degrees(), 1e-6));
    RC_ASSERT(*boilingRise(sugar + Brix::degrees(0.1), pressure) > rise);
    RC_ASSERT(*boilingRiseUncertainty(sugar) > TemperatureDifference::kelvin(0));
    RC_ASSERT(*sugarAtRiseUncertainty(rise, pressure, TemperatureDifference::kelvin(0.1)) >
              *sugarAtRiseUncertainty(rise, pressure, TemperatureDifference::kelvin(0)));
}

RC_GTEST_PROP(PhysicsProperty, TheRiseGrowsWithPressure, ()) {
    const auto pressure = Pressure::kilopascal(between(60, 109));
    const auto sugar = Brix::degrees(between(1, 75));
    RC_ASSERT(*boilingRise(sugar, pressure + Pressure::kilopascal(1)) > *boilingRise(sugar, pressure));
}

RC_GTEST_PROP(PhysicsProperty, DensityReturnsItsSugarClimbsWithItAndFallsWithHeat, ()) {
    const auto temperature = Temperature::celsius(between(5, 100));
    const auto sugar = Brix::degrees(between(0, 74));
    const auto density = *sugarDensity(sugar, temperature);
    RC_ASSERT(near(sugarOfDensity(density, temperature)->degrees(), sugar.degrees(), 1e-8));
    RC_ASSERT(*sugarDensity(sugar + Brix::degrees(0.5), temperature) > density);
    RC_ASSERT(*sugarDensity(sugar, temperature + TemperatureDifference::kelvin(5)) < density);
}

RC_GTEST_PROP(PhysicsProperty, AHydrometerReadsLessInAHotterCup, ()) {
    const auto scale = Temperature::fahrenheit(60);
    const auto cup = Temperature::celsius(between(20, 100));
    const auto sugar = Brix::degrees(between(30, 75));
    const auto reading = *hydrometerReading(sugar, cup, scale);
    RC_ASSERT(near(sugarByHydrometer(reading, cup, scale)->degrees(), sugar.degrees(), 1e-7));
    RC_ASSERT(*hydrometerReading(sugar, cup + TemperatureDifference::kelvin(1), scale) < reading);
    RC_ASSERT(hydrometerUncertainty(reading, cup, scale)->degrees() >= 0.15);
}

RC_GTEST_PROP(PhysicsProperty, BaumeAndIndexReturnTheirSugar, ()) {
    const auto scale = anyScale();
    const auto sugar = anySugar();
    RC_ASSERT(near(sugarOfBaume(*baumeOf(sugar, scale), scale)->degrees(), sugar.degrees(), 1e-7));
    RC_ASSERT(near(sugarOfIndex(*refractiveIndex(sugar))->degrees(), sugar.degrees(), 1e-7));
}

RC_GTEST_PROP(PhysicsProperty, ThermocouplesReturnTheirTemperature, ()) {
    const auto type = *rc::gen::element(Thermocouple::K, Thermocouple::J, Thermocouple::T);
    const auto hot = Temperature::celsius(between(-200, 400));
    const auto junction = Temperature::celsius(between(-40, 125));
    const auto voltage = *thermocoupleVoltage(type, hot, junction);
    RC_ASSERT(near(thermocoupleTemperature(type, voltage, junction)->celsius(), hot.celsius(), 0.001));
    const auto hotter = Temperature::celsius(hot.celsius() - 0.5);
    RC_ASSERT(hot.celsius() < -199 || *thermocoupleVoltage(type, hotter, junction) < voltage);
}

RC_GTEST_PROP(PhysicsProperty, PlatinumReturnsItsTemperature, ()) {
    const auto temperature = Temperature::celsius(between(-200, 850));
    RC_ASSERT(near(platinumTemperature(*platinumResistance(temperature))->celsius(), temperature.celsius(), 1e-6));
}

RC_GTEST_PROP(PhysicsProperty, AirThinsUpwards, ()) {
    const auto at = Length::metre(between(-500, 4900));
    const auto above = at + Length::metre(100);
    const auto sea = Pressure::kilopascal(between(90, 108));
    RC_ASSERT(*standardAtmosphere(above) < *standardAtmosphere(at));
    RC_ASSERT(*stationFromSeaLevel(sea, above) < *stationFromSeaLevel(sea, at));
    RC_ASSERT(*stationFromAltimeter(sea, above) < *stationFromAltimeter(sea, at));
}

RC_GTEST_PROP(PhysicsProperty, ABlendKeepsItsSugarAndItsMass, ()) {
    const auto count = *rc::gen::inRange(1, 6);
    std::vector<Portion> portions;
    double sugar = 0;
    for (int i = 0; i < count; ++i) {
        portions.push_back({Volume::litre(between(0.1, 100)), anySugar()});
        const Mass mass = *sugarDensity(portions.back().sugar, Temperature::celsius(20)) * portions.back().volume;
        sugar += mass.kilogram() * portions.back().sugar.massFraction();
    }
    const auto mixed = *blend(portions);
    const Mass mass = *sugarDensity(mixed.sugar, Temperature::celsius(20)) * mixed.volume;
    RC_ASSERT(near(mass.kilogram() * mixed.sugar.massFraction(), sugar, 1e-9 + 1e-9 * sugar));
}

RC_GTEST_PROP(PhysicsProperty, WhatIsAddedOrBoiledOffReachesTheTarget, ()) {
    const auto target = Brix::degrees(between(60, 67));
    const Portion heavy{Volume::litre(between(1, 100)), target + Brix::degrees(between(0, 8))};
    const auto thinner = Brix::degrees(between(0, 20));
    const std::array parts{heavy, Portion{*thinnerToReach(target, heavy, thinner), thinner}};
    RC_ASSERT(near(blend(parts)->sugar.degrees(), target.degrees(), 1e-7));
    const Portion light{heavy.volume, Brix::degrees(between(1, 60))};
    const std::array whole{Portion{*boilOffToReach(target, light), Brix::degrees(0)}};
    const Mass off = *sugarDensity(Brix::degrees(0), Temperature::celsius(20)) * whole[0].volume;
    const Mass mass = *sugarDensity(light.sugar, Temperature::celsius(20)) * light.volume;
    RC_ASSERT(near(light.sugar.degrees() * (mass / (mass - off)), target.degrees(), 1e-7));
}

RC_GTEST_PROP(PhysicsProperty, ColdFeedTakesMoreHeat, ()) {
    const auto pressure = anyStation();
    const auto feed = Temperature::celsius(between(0, 60));
    RC_ASSERT(*heatToBoilAway(feed + TemperatureDifference::kelvin(5), pressure) < *heatToBoilAway(feed, pressure));
}

RC_GTEST_PROP(PhysicsProperty, WetterWoodGivesLessAndAHotterStackLosesMore, ()) {
    const Wood wood = woods()[*rc::gen::inRange<std::size_t>(0, woods().size())];
    const WetBasis moisture{between(0, 0.55)};
    const auto air = Temperature::celsius(between(-20, 50));
    const auto stack = Temperature::celsius(between(60, 800));
    const double excess = between(0, 4);
    RC_ASSERT(*lowerHeat(wood, WetBasis{moisture.share + 0.01}) < *lowerHeat(wood, moisture));
    RC_ASSERT(*lowerHeat(wood, moisture) < *higherHeat(wood, moisture));
    const double loss = *flueLoss(wood, moisture, stack, air, excess);
    RC_ASSERT(loss > 0);
    RC_ASSERT(*flueLoss(wood, moisture, stack + TemperatureDifference::kelvin(10), air, excess) > loss);
    RC_ASSERT(*flueLoss(wood, moisture, stack, air, excess + 0.1) > loss);
}

RC_GTEST_PROP(PhysicsProperty, UnitsRoundTrip, ()) {
    const auto unit = static_cast<Unit>(*rc::gen::inRange(1, unitCount));
    const double value = between(-1000, 1000);
    RC_ASSERT(near(fromSi(toSi(value, unit), unit), value, 1e-9 * (1 + std::abs(value)) + 1e-9));
}

// Any double at all, the wild ones among them.
double anything() {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinite = std::numeric_limits<double>::infinity();
    return *rc::gen::oneOf(rc::gen::arbitrary<double>(),
                           rc::gen::element(nan, infinite, -infinite, 0.0, -0.0, 1e308, 1e-308),
                           rc::gen::map(rc::gen::inRange(-2000, 2000), [](int n) { return n / 10.0; }),
                           rc::gen::map(rc::gen::inRange(-2000, 2000), [](int n) { return n / 1000.0; }));
}

bool sane(std::optional<double> value) { return !value || std::isfinite(*value); }
bool sane(std::optional<Temperature> value) { return !value || std::isfinite(value->kelvin()); }
bool sane(std::optional<Portion> value) {
    return !value || (std::isfinite(value->volume.si()) && std::isfinite(value->sugar.si()));
}
bool sane(std::optional<Baume> value) { return !value || std::isfinite(value->degrees); }
template <class Quantity>
bool sane(std::optional<Quantity> value) {
    return !value || std::isfinite(value->si());
}

RC_GTEST_PROP(PhysicsProperty, NoNanComesOutWhateverGoesIn, ()) {
    const auto t = Temperature::celsius(anything());
    const auto t2 = Temperature::celsius(anything());
    const auto p = Pressure::kilopascal(anything());
    const auto b = Brix::degrees(anything());
    const auto b2 = Brix::degrees(anything());
    const auto d = TemperatureDifference::kelvin(anything());
    const auto h = Length::metre(anything());
    const auto v = Volume::litre(anything());
    const double x = anything();
    const double y = anything();
    const Wood wood = woods()[0];
    const WetBasis moisture{x};
    RC_ASSERT(sane(waterBoilingPoint(p)) && sane(saturationPressure(t)) && sane(waterDensity(t)) &&
              sane(latentHeat(t)));
    RC_ASSERT(sane(standardAtmosphere(h)) && sane(stationFromSeaLevel(p, h, t)) && sane(stationFromAltimeter(p, h)) &&
              sane(stationFromSeaLevelUncertainty(p, h, t)));
    RC_ASSERT(sane(boilingRise(b, p)) && sane(sugarAtRise(d, p)) && sane(boilingRiseUncertainty(b)) &&
              sane(sugarAtRiseUncertainty(d, p, TemperatureDifference::kelvin(x))));
    RC_ASSERT(sane(sugarDensity(b, t)) && sane(sugarOfDensity(Density::kilogramPerCubicMetre(x), t)) &&
              sane(sugarDensityUncertainty(b, t)) && sane(sugarHeatCapacity(b, t)));
    RC_ASSERT(sane(baumeOf(b, t)) && sane(sugarOfBaume(Baume{x}, t)) && sane(refractiveIndex(b)) &&
              sane(sugarOfIndex(x)) && sane(refractometerCorrection(b, t)));
    RC_ASSERT(sane(sugarByHydrometer(b, t, t2)) && sane(hydrometerReading(b, t, t2)) &&
              sane(hydrometerUncertainty(b, t, t2, d)));
    for (const auto type : {Thermocouple::K, Thermocouple::J, Thermocouple::T})
        RC_ASSERT(sane(thermocoupleVoltage(type, t, t2)) &&
                  sane(thermocoupleTemperature(type, Voltage::millivolt(x), t)));
    RC_ASSERT(sane(platinumResistance(t)) && sane(platinumTemperature(Resistance::ohm(x))));
    RC_ASSERT(sane(lowerHeat(wood, moisture)) && sane(higherHeat(wood, moisture)) && sane(cordMass(wood, moisture)) &&
              sane(faceCordMass(wood, moisture, h)) && sane(flueLoss(wood, moisture, t, t2, y)) &&
              sane(flueLossUncertainty(wood, moisture, t, t2, y, x)) && sane(humidityRatio(t, x, p)) &&
              sane(moistAirEnthalpy(t, x)));
    const std::array portions{Portion{v, b}, Portion{Volume::litre(x), b2}};
    RC_ASSERT(sane(blend(portions)) && sane(thinnerToReach(b, portions[1], b2)) &&
              sane(boilOffToReach(b, portions[1])));
    RC_ASSERT(sane(sapPerSyrup(b, b2)) && sane(ruleOf86(b)) && sane(revisedRule(b, b2)) &&
              sane(sapToKeepBack(Area::squareMetre(x), h, VolumeFlow::litrePerHour(y), Duration{x})));
    RC_ASSERT(sane(heatToBoilAway(t, p)));
}

} // namespace
} // namespace panside
