#include "core/boil/feed_sugar.h"

#include "core/boil/sap_sugar.h"
#include "core/boil/state.h"

#include <cmath>

namespace panside {
namespace {

// Seconds in which two thirds of what stood in the flue pan have gone on into the syrup pan: what stands over and
// between the flues, over what leaves them thickened (common practice, no source; rigs differ by half of it).
constexpr double passesIn = 4 * 3600;

} // namespace

// Mixed with what stands in the tank by its gauge; where nobody reads it, the feed is taken to have been switched.
void FeedSugar::absorb(const State& state, const SapIn& sap, Instant at) {
    const auto sugar = sapSugar(sap);
    if (!sugar || sugar->massFraction() <= 0)
        return;
    const auto level = state.sensors.of(Series::tank_level).value(at);
    const double stood = level ? Volume::ofSi(level->si).litre() : 0, came = sap.volume.value.litre();
    if (tank_ <= 0)
        tank_ = flue_ = sugar->massFraction();
    else if (stood + came > 0)
        tank_ = (stood * tank_ + came * sugar->massFraction()) / (stood + came);
}

double FeedSugar::growth(Instant now) {
    const double passed = at_ ? secondsBetween(*at_, now) : 0;
    at_ = now;
    if (flue_ <= 0 || passed <= 0 || tank_ == flue_)
        return 1;
    const double before = flue_;
    flue_ = tank_ + (flue_ - tank_) * std::exp(-passed / passesIn);
    return flue_ / before;
}

} // namespace panside
