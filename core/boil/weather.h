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
        TemperatureDifference given;                     // standard uncertainty when it was read
        Instant from;                                    // when that was
        Pressure forModel;                               // the pressure at which water boils so: for the rise model
        std::optional<TemperatureDifference> targetRise; // of the density wanted, which all ask for
        Duration age{0};
        bool doubted = false;                      // no weather makes that pressure at this height
        TemperatureDifference uncertainty() const; // standard, grown with age
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
    void takeTarget(const State& state);

    // A source's word.
    std::optional<Boiling> barometer_, report_, check_;
    std::optional<Boiling> suspect_;   // what a barometer says now that no weather makes at this height
    std::optional<Pressure> reported_; // at sea level, as the report gave it
    Instant reportedAt_{};
    bool checkBorneOut_ = false;         // by another check or by the weather
    bool reportDoubted_ = false;         // no weather makes it at this height
    std::optional<Temperature> doubted_; // what a check said that could not be believed yet
    Reason why_ = Reason::noPressure;
};

} // namespace panside
