#pragma once
#include "core/boil/fact.h"
#include "core/boil/outflow.h"
#include "core/boil/picture.h"

#include <array>

namespace panside {

struct State;

// Water, sap and heat: what is boiled off, how long the sap lasts, when to stop firing, what the wood gave.
//
// Evaporation is what leaves the tank (or what the feed meter counts) less what is drawn, the pans standing at their
// level. Without a tank level or a feed meter it follows from the draws and the sap's sugar. Where there are several
// ways each counts by its own uncertainty.
class Balance {
public:
    void take(const State& state, const Fact& fact);
    // evaporation, sapLeft, lastLoad, keepBack, efficiency, sapIn, syrupOut and their why
    void show(const State& state, Instant now, Picture& picture) const;

private:
    struct Rate {
        double litrePerHour;
        double sd;
    };
    struct Draw {
        Instant at;
        double litre = -1; // less than zero: not measured
    };
    static constexpr std::size_t drawsKept = 32;

    // Sap that leaves the tank, and since when that has been seen.
    struct Use {
        std::optional<Rate> rate;
        std::optional<Instant> tankFrom;
    };
    Use sapUse(Instant now, double window = Outflow::halfHour) const;
    // Litres drawn since, by measure; `missing` counts the draws without one.
    double drawn(Instant since, Instant until, int& missing) const;
    std::optional<Rate> evaporationFromSap(const State& state, const Use& use, Instant now) const;
    std::optional<Rate> evaporationFromDraws(const State& state, Instant now) const;
    std::optional<Rate> evaporation(const State& state, const Use& use, Instant now) const;
    void takeReading(const State& state, const Reading& reading, Instant at);
    void noteBoiling(const State& state, Temperature pan, Instant at);
    void noteEvaporation(const State& state, Instant now);
    void showEnd(const State& state, Instant now, std::optional<Rate> use, std::optional<Rate> rate,
                 Picture& picture) const;
    void showEfficiency(const State& state, Instant now, Picture& picture) const;
    // Of the sap that flows in, the share that leaves as syrup in the long run.
    double syrupShare(const State& state) const;

    Outflow tank_;
    Outflow feed_;   // the feed meter, summed up
    double fed_ = 0; // litres through the feed meter
    std::optional<Instant> fedAt_;
    std::array<Draw, drawsKept> draws_{};
    int drawCount_ = 0;
    double sapIn_ = 0;      // litres
    double syrupOut_ = 0;   // litres
    int unmeasured_ = 0;    // draws without a volume
    double sugarKnown_ = 0; // litres of sap of known sugar
    double sugarMass_ = 0;  // their sugar fraction times litres
    std::optional<Temperature> sapTemperature_;
    std::optional<Instant> boilingSince_;
    struct Minute {
        Instant at;
        float litrePerHour = -1; // less than zero: not known
    };
    std::array<Minute, 64> minutes_{}; // the rate at the end of each minute of the last hour
    int minuteCount_ = 0;
    std::optional<Instant> notedAt_;
};

} // namespace panside
