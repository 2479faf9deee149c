#pragma once
// The rehearsal's crew: it knows only what the probe shows and the clock says, errs, forgets, and keys in most of it.
#include "core/rehearsal/dice.h"
#include "core/rehearsal/plant.h"

namespace panside::rehearsal {

class CrewOnShift {
public:
    CrewOnShift(const RehearsalOptions& options, std::uint64_t seed);

    struct Now {
        double since;
        Instant at;
        std::optional<double> shown; // what the pan probe sends, degC
    };
    void begin(Plant& plant, Instant at, std::vector<Fact>& facts);
    void step(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds);
    // The evening has become another; what is forgotten is the next load.
    void meet(const RehearsalOptions& options, Trouble trouble);
    void sendAway(bool away) { away_ = away; }
    void goHome() { ended_ = true; }
    bool ended() const { return ended_; }
    // Somebody else did it: the rhythm goes on from here.
    void seeFired(double since) { nextLoad_ = since + seconds(fire_.interval); }
    void seeShutdown(double since, Plant& plant);
    void seeDraw(double since) {
        openAt_.reset();
        closeAt_.reset();
        openedAt_ = since;
    }

private:
    void look(const Now& now);
    void followWeather(const Plant& plant);
    void tendFire(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds);
    void tendDraw(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds);
    void open(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds);
    void close(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds);
    void key(const Now& now, Fact fact);
    void press(Instant now, std::vector<Fact>& facts);
    void tendCup(const Now& now, Plant& plant, std::vector<Fact>& facts);
    void tendSap(const Now& now, Plant& plant, std::vector<Fact>& facts);
    void tendPan(const Now& now, Plant& plant, std::vector<Fact>& facts);
    void tendShift(const Now& now, Plant& plant, std::vector<Fact>& facts, std::vector<RehearsalDeed>& deeds);
    void tellRig(const Plant& plant, Instant at, std::vector<Fact>& facts) const;
    void tellSap(double litres, double sugar, Instant at, std::vector<Fact>& facts);
    const std::string& hand() const;

    RehearsalOptions options_;
    RehearsalFire fire_;
    RehearsalCrew crew_;
    Dice dice_, keyDice_;
    std::vector<double> hands_; // how each one loads
    std::size_t turn_ = 0, on_ = 2;
    double mark_ = 104, seen_ = 0, boiledAt_ = 100;
    bool looked_ = false, away_ = false, ended_ = false, shut_ = false, lit_ = false, handedOver_ = false;
    double nextLoad_ = 0, shutAt_ = 0, lowSince_ = -1, nextOil_ = 0, calmUntil_ = 0;
    std::optional<double> openAt_, closeAt_;
    double openedAt_ = 0;
    int draws_ = 0;
    bool keyed_ = true, twice_ = false; // this draw
    std::vector<Fact> toKey_;           // what is still to be pressed
    std::size_t delivered_ = 0;
    struct Cup {
        double taken, read, brix, shown;
        Instant takenAt;
    };
    std::optional<Cup> cup_;
};

} // namespace panside::rehearsal
