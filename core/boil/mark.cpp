#include "core/boil/mark.h"

#include "core/boil/state.h"
#include "core/physics/sugar.h"

#include <cmath>

namespace panside {

void Mark::take(const State& state, const Fact& fact) {
    if (std::holds_alternative<Set>(fact.what)) {
        offset_ = state.settings.probeOffset();
        sd_ = state.settings.probeOffsetSd();
    }
}

TemperatureDifference Mark::offset(Instant) const { return offset_; }
TemperatureDifference Mark::offsetSd(Instant) const { return sd_; }

void Mark::show(const State& state, Instant now, Picture& picture) const {
    picture.probeOffset = offset(now);
    const auto water = state.weather.boiling(now);
    if (!water) {
        for (const auto* field : {"riseC", "targetRiseC", "targetC", "brix"})
            picture.why.push_back({field, state.weather.why()});
        return;
    }
    picture.targetRise = boilingRise(state.settings.targetDensity(), water->forModel);
    picture.legalRise = boilingRise(state.settings.legalMinimum(), water->forModel);
    picture.heavyRise = boilingRise(state.settings.tooHeavy(), water->forModel);
    if (picture.targetRise) {
        picture.target = water->waterBoils + *picture.targetRise + picture.probeOffset;
        picture.targetUncertainty =
            TemperatureDifference::kelvin(std::hypot(offsetSd(now).kelvin(), water->uncertainty.kelvin()));
    }
    if (picture.syrupPan) {
        picture.rise = *picture.syrupPan - picture.probeOffset - water->waterBoils;
        picture.brix = sugarAtRise(*picture.rise, water->forModel);
        if (!picture.brix)
            picture.why.push_back({"brix", Reason::notBoiling});
    } else {
        for (const auto* field : {"riseC", "brix"})
            picture.why.push_back({field, Reason::noPanReading});
    }
}

} // namespace panside
