#include "core/rehearsal/plant.h"
#include "core/rehearsal/liquid.h"

#include <algorithm>

namespace panside::rehearsal {
namespace {
constexpr double feedCelsius = 4;
constexpr double lowerHeat(double moisture) { return (1 - moisture) * 18.618e6 - moisture * 2.44e6; }
constexpr double wantedSugar = 0.669;
constexpr double dryDepth = 0.005;
} // namespace

Plant::Plant(const RehearsalOptions& options, std::uint64_t seed)
    : options_{options}, dice_{seed, 31}, sky_{options, seed}, fire_{options.rig, options.fire},
      pans_{options.rig, options.sap.sugar.massFraction(), options.sap.sweetLeft, feedCelsius}, probe_{options, seed},
      unrest_{options.unrest, seed},
      // Minerals and invert sugar move a sap's boiling by a percent or two against pure sucrose.
      risesFactor_{dice_.normal(1.005, 0.015)}, superheat_{dice_.uniform(0.03, 0.15)},
      tank_{options.sap.atStart.litre()}, tankSugar_{options.sap.sugar.massFraction()} {}

void Plant::loadWood(double kilogram, double doorSeconds) {
    fire_.openDoor(doorSeconds);
    if (kilogram <= 0)
        return;
    fire_.load(kilogram, options_.fire.moisture);
    loaded_ += kilogram;
    heatOfLoads_ += kilogram * lowerHeat(options_.fire.moisture);
}

void Plant::openDraw() {
    const double section =
        options_.rig.syrupArea.squareMetre() * options_.rig.depth.metre() / options_.rig.syrupChannels;
    drawFlow_ = section / dice_.uniform(150, 320);
    drawnLitres_ = 0;
}

void Plant::closeDraw() { drawFlow_ = 0; }

void Plant::pourBucket(double litres) {
    const double poured = std::min(litres, tank_);
    tank_ -= poured;
    pans_.pour(poured / 1000, tankSugar_, feedCelsius);
}

void Plant::addSap(double litres, double sugar) {
    tankSugar_ = (tank_ * tankSugar_ + litres * sugar) / std::max(1e-9, tank_ + litres);
    tank_ = std::min(tank_ + litres, options_.rig.tank.litre());
}

void Plant::meet(const RehearsalOptions& options, Trouble trouble, double since) {
    options_ = options;
    sky_.meet(options.weather, since);
    probe_.meet(options, trouble == Trouble::foam);
    if (trouble == Trouble::feedShut)
        feedMended_ = false;
}

bool Plant::feedFails(double since) const {
    const double from = seconds(options_.feedFaultAfter);
    return options_.feedFault != FeedFault::none && !feedMended_ && since >= from &&
           since < from + seconds(options_.feedFaultLasts);
}

double Plant::markCelsius() const {
    return waterBoils(sky_.pascal()) + risesFactor_ * risesBy(wantedSugar, sky_.pascal()) + probe_.offset();
}

void Plant::step(double since) {
    sky_.step(1, since);
    fire_.step(1, sky_.airCelsius());
    unrest_.step(1);
    if (unrest_.door() > 0)
        fire_.openDoor(unrest_.door());
    if (!concentrating_ && options_.sap.concentrates > 1 && since >= seconds(options_.sap.concentratesAfter)) {
        concentrating_ = true;
        tankSugar_ *= options_.sap.concentrates;
    }
    const bool fails = feedFails(since);
    const bool stopped = tank_ <= 0 || (fails && options_.feedFault == FeedFault::stops);
    pans_.step(1, {.pascal = sky_.pascal(),
                   .airCelsius = sky_.airCelsius() + 12,
                   .feedCelsius = feedCelsius,
                   .feedSugar = tankSugar_,
                   .heat = fire_.intoPans(),
                   .feedLimit = stopped ? 0 : 2.5 * options_.rig.rate.si(),
                   .floatOpen = fails && options_.feedFault == FeedFault::sticksOpen,
                   .draw = drawFlow_,
                   .risesFactor = risesFactor_,
                   .floatSticks = options_.unrest.floatSticks.metre(),
                   .heaves = unrest_.heaves(),
                   .pulls = unrest_.pulls()});
    const double fed = pans_.fed() / coldDensity(tankSugar_);
    tank_ = std::max(0.0, tank_ - fed);
    feedFlow_ += (fed * 3600 - feedFlow_) / 5;
    evaporationNow_ += (pans_.evaporated() - evaporationNow_) / 10;
    boiledOff_ += pans_.evaporated();
    sugarDrawn_ += pans_.drawnSugar();
    heatTaken_ += pans_.heatTaken();
    if (pans_.drawn() > 0) {
        drawn_ += pans_.drawn() / coldDensity(pans_.drawnSugar() / pans_.drawn());
        drawnLitres_ += pans_.drawn() / hotDensity(pans_.drawnSugar() / pans_.drawn());
    }
    const bool boils = pans_.boilsOff() > 0.15;
    const double lifted = superheat_ * (std::min(pans_.flux(), 1.5) - 1);
    probe_.step(1, since, pans_.drawOffCelsius(), boils ? lifted : -superheat_, waterBoils(sky_.pascal()), boils);
}

RehearsalTruth Plant::truth(Instant at) const {
    RehearsalTruth truth;
    truth.at = at;
    truth.reading = Temperature::celsius(probe_.clean());
    truth.mark = Temperature::celsius(markCelsius());
    truth.probeOffset = TemperatureDifference::kelvin(probe_.offset());
    truth.waterBoils = Temperature::celsius(waterBoils(sky_.pascal()));
    truth.pressure = Pressure::pascal(sky_.pascal());
    truth.drawOff = Brix::massFraction(pans_.drawOffSugar());
    truth.syrupPan = Brix::massFraction(pans_.syrupPanSugar());
    truth.evaporation = VolumeFlow::litrePerHour(evaporationNow_ * 3600 / 0.9982);
    truth.panDepth = Length::metre(pans_.syrupDepth());
    truth.flueDepth = Length::metre(pans_.flueDepth());
    truth.tank = Volume::litre(tank_);
    truth.stack = Temperature::celsius(fire_.stackCelsius());
    truth.fire = Power::watt(fire_.released());
    truth.intoSap = Power::watt(pans_.heatTaken());
    truth.boiling = pans_.boilsOff() > 0.15;
    truth.drawing = drawing();
    truth.dry = pans_.syrupDepth() < dryDepth || pans_.flueDepth() < 0;
    truth.boiledOff = Volume::litre(boiledOff_ / 0.9982);
    truth.drawn = Volume::litre(drawn_);
    truth.sugarDrawn = Mass::kilogram(sugarDrawn_);
    truth.sugarInPans = Mass::kilogram(pans_.sugarHeld());
    truth.woodLoaded = Mass::kilogram(loaded_);
    truth.woodBurnt = Mass::kilogram(loaded_ - fire_.bed() / (1 - options_.fire.moisture));
    truth.heatTaken = Energy::joule(heatTaken_);
    truth.heatOfLoads = Energy::joule(heatOfLoads_);
    return truth;
}

} // namespace panside::rehearsal
