#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"
#include "core/boil/repeated_check.h"

namespace panside {

struct State;

// Station pressure and the boiling point of water: from a barometer at the pan, from a weather report with the
// elevation, or, where there is neither, from the last water check. Where there are several, the one that is least
// uncertain now.
class Weather {
public:
    void absorb(const State& state, const Fact& fact);
    void show(const State& state, Instant now, Picture& picture) const;

    struct Boiling {
        std::optional<Pressure> pressure; // none when it rests on a water check
        Temperature waterBoils;
        TemperatureDifference uncertainty; // standard, grown with age
        Instant from;                      // when what it rests on was read
        Pressure forModel;                 // the pressure at which water boils so: for the rise model
    };
    // nullopt where there is neither barometer nor water check; `why` says which reason.
    std::optional<Boiling> boiling(Instant now) const;
    Reason why() const { return why_; }
    // Of a water check: the fact just taken was no second press of the key.
    bool isNewCheck() const { return newCheck_; }

private:
    void takeBarometer(const State& state, Instant at);
    void takeReport(const State& state);
    void takeCheck(const State& state, const WaterCheck& check, Instant at);
    void takeHeight(const State& state);

    RepeatedWaterCheck repeated_;
    bool newCheck_ = false;
    // A source's word, its uncertainty as it was when given.
    std::optional<Boiling> barometer_, report_, check_;
    std::optional<Pressure> reported_; // at sea level, as the report gave it
    Instant reportedAt_{};
    bool checkBorneOut_ = false;                            // by another check or by the weather
    bool barometerDoubted_ = false, reportDoubted_ = false; // no weather makes them at this height
    std::optional<Temperature> doubted_;                    // what a check said that could not be believed yet
    Reason why_ = Reason::noPressure;
};

} // namespace panside
