#pragma once
#include "core/boil/fact.h"
#include "core/boil/picture.h"

namespace panside {

struct State;

// Station pressure and the boiling point of water: from a barometer at the pan, from a weather report with the elevation,
// or, where there is neither, from the last water check.
class Weather {
public:
    void take(const State& state, const Fact& fact);
    void show(const State& state, Instant now, Picture& picture) const;

    struct Boiling {
        std::optional<Pressure> pressure;      // none when it rests on a water check
        Temperature waterBoils;
        TemperatureDifference uncertainty;     // standard, grown with age
        Instant from;                          // when what it rests on was read
        Pressure forModel;                     // the pressure at which water boils so: for the rise model
    };
    // nullopt where there is neither barometer nor water check; `why` says which reason.
    std::optional<Boiling> boiling(Instant now) const;
    Reason why() const { return why_; }

private:
    std::optional<Boiling> boiling_;
    Reason why_ = Reason::noPressure;
};

}  // namespace panside
