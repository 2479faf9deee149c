#include "core/boil/past_shift.h"

#include "core/boil/chart_traces.h"
#include "core/boil/state.h"

namespace panside {

struct PastShift::Inside {
    State state;
    ChartTraces traces;
    bool any = false;
};

PastShift::PastShift() : inside_{std::make_unique<Inside>()} {}
PastShift::~PastShift() = default;

void PastShift::add(const Fact& fact) {
    absorbUnwatched(inside_->state, fact);
    inside_->traces.absorb(inside_->state, fact);
    inside_->any = true;
}

const std::vector<RisePoint>& PastShift::rise() const { return inside_->traces.rise; }
const std::vector<SteamPoint>& PastShift::steam() const { return inside_->traces.steam; }

std::optional<Picture> PastShift::last() const {
    return inside_->any ? std::optional{picture(inside_->state, inside_->state.now)} : std::nullopt;
}

} // namespace panside
