#include "core/boil/balance.h"

#include "core/boil/state.h"

namespace panside {

void Balance::take(const State&, const Fact&) {}

void Balance::show(const State& state, Instant now, Picture& picture) const {
    const bool tank = state.sensors.of(Series::tank_level).value(now).has_value();
    picture.why.push_back({"evaporationLph", tank ? Reason::tooShort : Reason::noTankLevel});
    picture.why.push_back({"sapLeftS", tank ? Reason::tooShort : Reason::noTankLevel});
    picture.why.push_back({"efficiency", state.settings.loadMass() ? Reason::tooShort : Reason::noLoadMass});
}

} // namespace panside
