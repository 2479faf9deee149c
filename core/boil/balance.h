#pragma once
#include "core/boil/fact.h"
#include "core/boil/feed_sugar.h"
#include "core/boil/fire.h"
#include "core/boil/outflow.h"
#include "core/boil/pan_fill.h"
#include "core/boil/picture.h"
#include "core/boil/reconcile.h"
#include "core/boil/repeated_draw.h"

#include <array>

namespace panside {

struct State;

// Water, sap and heat: what is boiled off, how long the sap lasts, when to stop firing, what the wood gave.
//
// Evaporation is what leaves the tank (or what the feed meter counts) less what is drawn, the pans standing at their
// level; the draws and the sap's sugar, and the heat of the wood, say it too. All are reconciled by least squares, each
// by its own uncertainty, and what they disagree in is said.
// In three files: the water, the heat (balance_heat.cpp) and the end of the boil (balance_end.cpp).
class Balance {
public:
    void absorb(const State& state, const Fact& fact);
    // evaporation, sapLeft, lastLoad, keepBack, efficiency, sapIn, syrupOut and their why
    void show(const State& state, Instant now, Picture& picture) const;
    // How long the arch burnt on after the last load, by the stack: as long as, at half the heat of a fed fire, it gave
    // what it gave. nullopt until firing has stopped and the fire is nearly out, or where the stack was not read.
    std::optional<Duration> burnOutSeen(const State& state) const;
    // Evaporation as it was last noted, once a minute of readings; nullopt before the first.
    struct Noted {
        Instant at;
        std::optional<VolumeFlow> steam;
    };
    std::optional<Noted> lastMinute() const;
    const FeedSugar& feedSugar() const { return feedSugar_; }

private:
    using Rate = Rated;
    struct Draw {
        Instant at;
        std::optional<double> litre; // as measured
    };
    static constexpr std::size_t drawsKept = 32;

    // Sap that leaves the tank, and since when that has been seen.
    struct Use {
        std::optional<Rate> rate;
        std::optional<Outflow::Rate> tank; // what the tank alone says
        Instant from{};                    // since when the rate has been seen
        std::optional<Instant> tankFrom() const { return tank ? std::optional{tank->from} : std::nullopt; }
    };
    Use sapUse(Instant now, double window = Outflow::halfHour) const;
    // Litres drawn since, by measure; `missing` counts the draws without one.
    double drawn(Instant since, Instant until, int& missing) const;
    // Syrup drawn by measure over the time of the tank's fall, or over the last draws; nullopt where one has no
    // measure.
    std::optional<Rate> syrupDrawn(const Use& use, Instant now) const;
    // What a kilogram takes to boil away, and what of the wood's heat goes up the stack: share and its doubt.
    struct Loss {
        double share, sd;
    };
    struct Heat {
        std::optional<SpecificEnergy> perKilogram;
        std::optional<Loss> stack;
    };
    Heat heat(const State& state, Instant now) const;
    std::optional<Rate> steamByHeat(const State& state, const Heat& heat, Instant now) const;
    Flows flows(const State& state, const Use& use, const Heat& heat, Instant now) const;
    // Sap that stays in the pans as they fill; nullopt where no level or no size says, or another pan came since.
    std::optional<Rate> stays(const State& state, Instant from, Instant now) const;
    static std::optional<Reconciled> evaporation(const Flows& known);
    // Why what the flows say is not what boils off; none where it is.
    static Reason withheld(const State& state, const Flows& known, const std::optional<Reconciled>& all, Instant now);
    static bool moreThanBoils(const State& state, const Flows& known, const std::optional<Reconciled>& all);
    void showWays(const State& state, const Use& use, const Flows& flows, const std::optional<Reconciled>& all,
                  Instant now, Picture& picture) const;
    void showHeat(const Heat& heat, const std::optional<Fire::Burnt>& all, Picture& picture) const;
    void showYield(const State& state, const std::optional<Fire::Burnt>& all, Instant now, Picture& picture) const;
    std::optional<SugarAccount> sugarAccount(const State& state, Instant now) const;
    void showAfter(const State& state, Instant now, Picture& picture) const;
    Duration burnOut(const State& state) const;
    void takeReading(const State& state, const Reading& reading, Instant at);
    void noteRise(double litre, Instant at);
    void noteBoiling(const State& state, Temperature pan, Instant at);
    void noteBurning(const State& state, Temperature stack, Instant at);
    void noteEvaporation(const State& state, Instant now);
    void showKeepBack(const State& state, std::optional<Rate> rate, Picture& picture) const;
    void showEnd(const State& state, Instant now, std::optional<Rate> use, std::optional<Rate> rate,
                 Picture& picture) const;
    void showEfficiency(const State& state, const Heat& heat, Instant now, Picture& picture) const;
    // Of sap that flows in, the share that leaves as syrup in the long run; of the usual sap where none was told.
    static double syrupShare(const State& state, std::optional<Brix> sap);
    Volume stoodBefore(const State& state, const SapIn& sap, Instant at) const;
    void showAllSyrup(const State& state, Instant now, std::optional<Rate> use, Picture& picture) const;

    Outflow tank_;
    Outflow feed_; // the feed meter, summed up
    PanFill syrupPan_, fluePan_;
    std::optional<Instant> exchangedAt_; // a pan, or what was in it
    double fed_ = 0;                     // litres through the feed meter
    std::optional<Instant> fedAt_;
    std::array<Draw, drawsKept> draws_{};
    int drawCount_ = 0;
    double sapIn_ = 0;    // litres
    double syrupOut_ = 0; // litres
    int unmeasured_ = 0;  // draws without a volume
    RepeatedDraw repeatedDraw_;
    FeedSugar feedSugar_;
    std::optional<Temperature> sapTemperature_;
    std::optional<Instant> sapCameAt_, roseAt_; // roseAt_: with no sap entered
    std::optional<double> lowest_;              // litres in the tank since then
    std::optional<Instant> boilingSince_;
    struct Burning {
        std::optional<Instant> fed = {}, at = {}; // the last load; the last reading since
        double fullHeat = 0;                      // seconds of a fed fire's heat that came since
        double share = 1;                         // of that heat, now
        bool whole = true;                        // no gap in the readings
    };
    Burning burning_;
    struct Minute {
        Instant at;
        std::optional<float> litrePerHour;
    };
    std::array<Minute, 64> minutes_{}; // the rate at the end of each minute of the last hour
    int minuteCount_ = 0;
    std::optional<Instant> notedAt_;
    double boiledOff_ = 0;    // litres, summed while the rate was known
    double sweetBoiled_ = 0;  // of them, those of sap of known sugar
    double boiledSugar_ = 0;  // their sugar fraction times litres
    double boiledOffFor_ = 0; // seconds of it
};

} // namespace panside
