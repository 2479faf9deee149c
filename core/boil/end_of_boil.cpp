#include "core/boil/end_of_boil.h"

#include "core/physics/range.h"
#include "core/physics/sap.h"

#include <algorithm>

namespace panside {
namespace {

constexpr double tenth = 1.2816; // standard deviations between the median and the first tenth
// A spread wider than this says nothing any more; the late end stays finite.
constexpr double slowest = 0.3;

} // namespace

std::optional<EndPlan> planEnd(const EndBasis& basis, const EndChange& change) {
    const double harder = 1 + change.harder;
    const double use = basis.use.litrePerHour() * harder, sd = basis.useSd.litrePerHour() * harder;
    const Volume tank = basis.tank + change.moreSap;
    if (!within(change.harder, -0.9, 3) || !within(tank.cubicMetre(), 0, 1000) || use <= 1 || sd < 0)
        return std::nullopt;
    const auto keep = sapToKeepBack(basis.pans, basis.depth, harder * basis.steam, basis.burnOut);
    if (!keep)
        return std::nullopt;
    const auto until = [&](Volume left, double perHour) { return Duration{left.litre() / perHour * 3600}; };
    const auto range = [&](Volume left) {
        left = std::max(left, Volume{});
        return Range{.p10 = until(left, use + tenth * sd),
                     .p50 = until(left, use),
                     .p90 = until(left, std::max(use - tenth * sd, slowest * use))};
    };
    EndPlan plan{.tank = tank,
                 .keepBack = *keep,
                 .use = VolumeFlow::litrePerHour(use),
                 .lastLoad = range(tank - *keep),
                 .coldFire = {},
                 .runsOut = range(tank)};
    plan.coldFire = Range{.p10 = plan.lastLoad.p10 + basis.burnOut,
                          .p50 = plan.lastLoad.p50 + basis.burnOut,
                          .p90 = *plan.lastLoad.p90 + basis.burnOut};
    return plan;
}

Volume tankAt(const EndPlan& plan, Duration fromNow) {
    const double perHour = plan.use.litrePerHour();
    const double last = seconds(plan.lastLoad.p50) / 3600, burns = seconds(plan.coldFire.p50) / 3600 - last;
    const double hours = std::max(seconds(fromNow) / 3600, 0.0);
    const double fed = std::min(hours, last), after = std::clamp(hours - last, 0.0, burns);
    const double dying = burns > 0 ? after - after * after / (2 * burns) : 0;
    return std::max(plan.tank - Volume::litre(perHour * (fed + dying)), Volume{});
}

} // namespace panside
