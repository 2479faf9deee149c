#pragma once
// The rehearsal's pans: a chain of sections from the float to the draw-off, each well stirred by its own boil. A
// channel of the syrup pan is three of them that even out in a minute or so, so that what a draw pulls forward comes to
// the probe.
#include "core/rehearsal/options.h"

#include <vector>

namespace panside::rehearsal {

class Pans {
public:
    Pans(const RehearsalRig& rig, double sapSugar, double sweetLeft, double celsius);

    struct Surroundings {
        double pascal, airCelsius, feedCelsius, feedSugar;
        double heat;                                   // W into all pans
        double feedLimit;                              // m3/s that the feed line can give at most; 0: shut
        bool floatOpen;                                // stuck open
        double draw;                                   // m3/s leaving at the draw-off, hot
        double risesFactor;                            // this sap's own boiling, against pure sucrose
        double floatSticks = 0, heaves = 0, pulls = 0; // m; parts of a section a second
    };
    void step(double seconds, const Surroundings& around);

    void raise(double metres) { wanted_ += metres; }            // flood for the shutdown
    void pour(double cubicMetre, double sugar, double celsius); // a bucket into the draw-off section

    double fed() const { return fed_; }               // kg that came from the tank in the last step
    double evaporated() const { return evaporated_; } // kg in the last step
    double drawn() const { return drawn_; }           // kg in the last step
    double drawnSugar() const { return drawnSugar_; }
    double drawOffSugar() const;
    double syrupPanSugar() const; // of all of it
    double drawOffCelsius() const { return sections_.back().celsius; }
    double flueCelsius() const;
    double flux() const { return flux_; }           // heat into the draw-off section over its nominal one
    double boilsOff() const { return boilsOff_; }   // share of nominal heat that boils at the draw-off
    double syrupDepth() const;                      // m
    double flueDepth() const;                       // m over the flues
    double heatTaken() const { return heatTaken_; } // J in the last step: warmed and boiled off
    double sugarHeld() const;                       // kg

private:
    struct Section {
        double water, sugar, celsius; // kg, kg, degC
        double mass() const { return water + sugar; }
        double share() const { return mass() > 0 ? sugar / mass() : 0; }
        double volume() const;
    };
    void boil(double dt, const Surroundings& around);
    void flow(double dt, const Surroundings& around);
    void feed(double dt, const Surroundings& around);
    void heave(double dt, const Surroundings& around);
    double pipe(const Surroundings& around);
    void move(std::size_t from, std::size_t to, double cubicMetre);
    void swap(std::size_t a, std::size_t b, double cubicMetre);
    double depthOf(std::size_t first, std::size_t last, double area) const;

    std::vector<Section> sections_;
    std::vector<double> heatShare_;
    std::size_t flues_;
    double mixes_, flueArea_, syrupArea_, belowFlues_, wanted_, nominal_;
    double feedFlow_ = 0;
    bool feedOpen_ = false, pipeOpen_ = false; // of floats that stick
    double fed_ = 0, evaporated_ = 0, drawn_ = 0, drawnSugar_ = 0, flux_ = 0, boilsOff_ = 0, heatTaken_ = 0;
};

} // namespace panside::rehearsal
