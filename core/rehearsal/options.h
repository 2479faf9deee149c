#pragma once
// What a made-up boil is made of: rig, sap, fire, weather, probes, crew, and what goes wrong in it.
#include "core/boil/fact.h"

#include <optional>
#include <string>
#include <vector>

namespace panside {

struct RehearsalRig {
    Area flueArea = Area::squareFoot(18);
    Area syrupArea = Area::squareFoot(6);
    int flueSections = 3, syrupChannels = 4;         // from the float to the draw-off
    Duration mixes{60};                              // how slowly the boil evens out a channel of the syrup pan
    Length depth = Length::inch(1.5);                // running, in the syrup pan and over the flues
    Length flues = Length::inch(5);                  // liquid between the flues, as if it stood under the flue pan
    VolumeFlow rate = VolumeFlow::gallonPerHour(60); // boiled off when fired as it should be
    double syrupShare = 0.11;                        // of the heat: what the syrup pan gets
    double efficiency = 0.56;                        // of the wood's lower heating value, reaching the pans
    Duration archTime = std::chrono::minutes{35};    // how slowly the arch cools
    Volume tank = Volume::gallon(600);
    Length elevation = Length::metre(250);
    bool operator==(const RehearsalRig&) const = default;
};

struct RehearsalFire {
    Duration interval = std::chrono::minutes{8};
    double intervalScatter = 0.10, loadScatter = 0.12; // relative, one standard deviation
    double moisture = 0.20;                            // wet basis
    double slowness = 1;                               // of the wood: fine dry splits 0.7, coarse ones 1.4
    double forgets = 0.02;                             // share of loads made 4 to 10 min late
    double unpressed = 0.01, pressedLate = 0.03;       // shares of loads that nobody keys, or keys afterwards
    double handScatter = 0.08;                         // how differently the crew's hands load
};

struct RehearsalProbe {
    TemperatureDifference bias = TemperatureDifference::kelvin(0.2);
    double niterPerHour = 0.02; // K an hour: scale makes it read higher
    double walk = 0.02;         // K per square root of an hour
    double noise = 0.05;        // K, one standard deviation, of the boil about the probe
    Duration lag{8};
    Unit unit = Unit::degC;
    double step = 0.01;         // last digit, in `unit`
    double spikesPerHour = 0.5; // electric, tens of degrees, one reading long
    double splashesPerHour = 2; // cool spray from the next section, a few tenths for some seconds
    double foamsPerHour = 0.3;  // probe in foam: reads steam for half a minute
    double wander = 0;          // K, one standard deviation, of a slow noise: 20 s and 90 s
};

enum class ProbeTrouble : std::uint8_t { none, silent, stuck, spikes, otherUnit };
enum class FeedFault : std::uint8_t { none, stops, sticksOpen };

struct RehearsalSap {
    Brix sugar = Brix::degrees(2.0);
    Volume atStart = Volume::gallon(500);
    struct Delivery {
        Duration after;
        Volume volume;
        Brix sugar;
    };
    // From then on the feed comes through a concentrator that makes it so many times sweeter.
    double concentrates = 1;
    Duration concentratesAfter{0};
    std::vector<Delivery> deliveries = {};
    double sweetLeft = 0.5; // 0: fresh sap in all pans; 1: yesterday's gradient, mixed and nearly syrup in front
};

// What a tidy pan does not; all nought: a tidy one.
struct RehearsalUnrest {
    Length floatSticks;       // the floats open only when so much is missing, and shut when nothing is
    double heaves = 0;        // how much the boil stirs the last channels into each other; 1: half a Brix up and down
    Duration heaveTakes{200}; // from crest to crest
    double pullsPerHour = 0;  // thin liquid that runs forward past the channels between
    double doorsPerHour = 0;  // a firing door left open for minutes
};

struct RehearsalWeather {
    double seaLevelHpa = 1016;
    double frontHpa = 0; // change of pressure as the front passes
    Duration frontAfter = std::chrono::hours{2}, frontTakes = std::chrono::hours{3};
    Temperature air = Temperature::celsius(-1);
    double barometerBiasHpa = 0;
};

struct RehearsalCrew {
    std::vector<std::string> names = {"Maud", "Ansel", "Perrin"};
    double checks = 0.35;                         // share of draws with a density check
    double glassBias = 0.05;                      // Brix: what their hydrometer reads too high
    double glassScatter = 0.12, cupScatter = 0.8; // Brix, K
    double heavy = 0.12;                          // K: how far above their mark they like to draw
    Duration slow{20};                            // from seeing the mark to opening
    double closesUnder = 0.30;                    // K under their mark
    double forgetsToClose = 0.01;                 // share of draws left open some minutes
    double noVolume = 0.1;                        // share of draws whose volume nobody measured
    bool waterCheck = true;
    bool weighs = false;                      // every load goes over a scale
    Duration boilFor = std::chrono::hours{6}; // from lighting to the last load
    std::optional<Duration> burnOut = {};     // how long the fire boils on after the last load, if they know it
    // Shares of draws that nobody keys, and that two of them key; by how much they key a draw late, on average.
    double drawsUnkeyed = 0, drawsTwice = 0;
    Duration keysLate{0};
    bool tellsDip = true;                         // when the cup of a check was dipped
    Duration blindAfter = std::chrono::hours{99}; // from then on they only fire: no draw, no look at the pan
};

struct RehearsalOptions {
    RehearsalRig rig;
    RehearsalFire fire;
    RehearsalProbe probe;
    RehearsalSap sap;
    RehearsalUnrest unrest;
    RehearsalWeather weather;
    RehearsalCrew crew;
    // Which readings there are, and how far apart; `byHand`: typed in by the crew, as probe=hand.
    std::vector<Series> readings = {Series::syrup_pan, Series::stack,     Series::flue_pan,
                                    Series::pressure,  Series::pan_level, Series::tank_level};
    Duration spacing{1};
    bool byHand = false;
    bool us = false;      // volumes, masses, levels and settings in the units of the United States
    bool tellsRig = true; // `set` rows: areas, depth, tank, load
    Instant begins = Instant{std::chrono::seconds{1772215200}}; // 2026-02-27T18:00:00Z
    ProbeTrouble probeFault = ProbeTrouble::none;
    FeedFault feedFault = FeedFault::none;
    Duration probeFaultAfter = std::chrono::hours{3}, probeFaultLasts = std::chrono::minutes{5};
    Duration feedFaultAfter = std::chrono::hours{3}, feedFaultLasts = std::chrono::hours{9};
    bool crewSavesPan = true; // they see a low pan in the end, and flood it
};

// A sound boil of some rig, sap, fire, crew and weather, all drawn from the seed: 2 by 4 to 4 by 12 ft, 1 to 5 percent
// sap, 0 to 1000 m, every unit and spacing. The same seed gives the same options.
RehearsalOptions anyBoil(std::uint64_t seed);

} // namespace panside
