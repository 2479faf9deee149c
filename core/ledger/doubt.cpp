#include "core/ledger/doubt.h"

#include <algorithm>

namespace panside {
namespace {

// As sweet as it may be where nobody measured it: sap of any tree, concentrate of most membranes, syrup (common
// practice, no source).
constexpr Brix thickestSap = Brix::degrees(5), thickestConcentrate = Brix::degrees(20),
               thickestSyrup = Brix::degrees(69);

Brix sweetest(const Vessel& vessel) {
    const Brix usual = vessel.kind == VesselKind::concentrate || vessel.kind == VesselKind::feed ? thickestConcentrate
                       : isTankKind(vessel.kind)                                                 ? thickestSap
                                                                                                 : thickestSyrup;
    return std::max(usual, vessel.content.brix());
}

} // namespace

double sugarDoubt(const Vessel& vessel) {
    const Liquid& content = vessel.content;
    const double read = 2 * content.sd * content.mass;
    if (!vessel.unwritten)
        return read;
    const Volume rim = std::max(vessel.capacity.value_or(vessel.mostHeld), content.volume());
    const double full = liquidOf(rim, sweetest(vessel), bookTemperature).sugar;
    return std::max({read, content.sugar, full - content.sugar});
}

double sugarDoubt(const PansNow& pans) {
    const double sugar = std::max(0.0, pans.content.sugar), read = 2 * pans.sugarSd;
    return pans.unwritten || pans.isShort ? std::max({read, sugar, pans.most - sugar}) : read;
}

} // namespace panside
