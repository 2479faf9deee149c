#pragma once
// The rehearsal's plant: firebox, pans, tank, sky and pan probe tied together. It is done to; it decides nothing.
#include "core/rehearsal/fire.h"
#include "core/rehearsal/pans.h"
#include "core/rehearsal/probe.h"
#include "core/rehearsal/rehearsal.h"
#include "core/rehearsal/unrest.h"
#include "core/rehearsal/weather.h"

namespace panside::rehearsal {

class Plant {
public:
    Plant(const RehearsalOptions& options, std::uint64_t seed);
    void step(double since); // one second on; `since` the start

    // What hands can do to it.
    void loadWood(double kilogram, double doorSeconds);
    void openDraw();
    void closeDraw();
    void floodPans(double metres) { pans_.raise(metres); }
    void pourBucket(double litres);
    void addSap(double litres, double sugar);
    void mendFeed() { feedMended_ = true; }
    // The evening has become another.
    void meet(const RehearsalOptions& options, Trouble trouble, double since);

    bool drawing() const { return drawFlow_ > 0; }
    double drawnLitres() const { return drawnLitres_; } // hot, in this draw
    double tankLitres() const { return tank_; }
    double tankSugar() const { return tankSugar_; }
    double feedLitresPerHour() const { return feedFlow_; }
    double nominalLoad() const { return fire_.nominalLoad(); }
    double markCelsius() const;
    bool feedFails(double since) const;
    const Firebox& fire() const { return fire_; }
    const Pans& pans() const { return pans_; }
    const Sky& sky() const { return sky_; }
    PanProbe& probe() { return probe_; }
    RehearsalTruth truth(Instant at) const;

private:
    RehearsalOptions options_;
    Dice dice_;
    Sky sky_;
    Firebox fire_;
    Pans pans_;
    PanProbe probe_;
    Unrest unrest_;
    double risesFactor_, superheat_;
    double tank_, tankSugar_;
    bool concentrating_ = false;
    double drawFlow_ = 0, drawnLitres_ = 0, feedFlow_ = 0;
    bool feedMended_ = false;
    double boiledOff_ = 0, drawn_ = 0, sugarDrawn_ = 0, loaded_ = 0, heatTaken_ = 0, heatOfLoads_ = 0;
    double evaporationNow_ = 0;
};

} // namespace panside::rehearsal
