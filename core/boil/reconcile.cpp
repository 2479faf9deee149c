#include "core/boil/reconcile.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

// Normal equations of two unknowns.
struct Normal {
    double aa = 0, ab = 0, bb = 0, ay = 0, by = 0;
    void add(double a, double b, double y, double sd) {
        const double w = 1 / (sd * sd);
        aa += w * a * a;
        ab += w * a * b;
        bb += w * b * b;
        ay += w * a * y;
        by += w * b * y;
    }
};

bool usable(const std::optional<Rated>& rate) {
    return !rate || (std::isfinite(rate->litrePerHour) && rate->litrePerHour >= 0 && rate->litrePerHour <= 10000 &&
                     std::isfinite(rate->sd) && rate->sd > 0);
}

} // namespace

std::optional<Reconciled> reconcile(const Flows& flows) {
    const double share = flows.syrupShare;
    if (!usable(flows.sap) || !usable(flows.syrup) || !usable(flows.steam) || share < 0 || share > 0.5 ||
        flows.shareSd <= 0 || !(flows.sap || flows.syrup || flows.steam))
        return std::nullopt;
    Normal normal;
    if (flows.sap)
        normal.add(1, 1, flows.sap->litrePerHour, flows.sap->sd);
    if (flows.syrup)
        normal.add(0, 1, flows.syrup->litrePerHour, flows.syrup->sd);
    if (flows.steam)
        normal.add(1, 0, flows.steam->litrePerHour, flows.steam->sd);
    // syrup = share (steam + syrup): its uncertainty is a share of the syrup that the flows point to.
    const double sap = flows.sap     ? flows.sap->litrePerHour
                       : flows.steam ? flows.steam->litrePerHour / (1 - share)
                                     : flows.syrup->litrePerHour / std::max(share, 1e-3);
    normal.add(-share, 1 - share, 0, std::max(flows.shareSd * share * sap, 1e-3));
    const double determinant = normal.aa * normal.bb - normal.ab * normal.ab;
    if (!(determinant > 0))
        return std::nullopt;
    const double steam = (normal.bb * normal.ay - normal.ab * normal.by) / determinant;
    const double syrup = (normal.aa * normal.by - normal.ab * normal.ay) / determinant;
    Reconciled result{.steam = {std::max(steam, 0.0), std::sqrt(normal.bb / determinant)},
                      .syrup = std::max(syrup, 0.0),
                      .sapOff = {},
                      .syrupOff = {},
                      .steamOff = {}};
    if (flows.sap)
        result.sapOff = (flows.sap->litrePerHour - steam - syrup) / flows.sap->sd;
    if (flows.syrup)
        result.syrupOff = (flows.syrup->litrePerHour - syrup) / flows.syrup->sd;
    if (flows.steam)
        result.steamOff = (flows.steam->litrePerHour - steam) / flows.steam->sd;
    return result;
}

} // namespace panside
