#include "core/boil/all_syrup.h"

#include "core/physics/range.h"
#include "core/physics/sugar_density.h"

#include <algorithm>
#include <cmath>

namespace panside {
namespace {

constexpr double fluesBoil = 2; // times a flat pan, by area
constexpr Temperature weighedAt = Temperature::celsius(20);
constexpr double lookAhead = 1200; // seconds from `now` to `coming`

} // namespace

std::optional<Duration> untilAllSyrup(const AllSyrupBasis& basis) {
    const double flue = basis.flue.squareMetre(), syrup = basis.syrup.squareMetre(), end = basis.wanted.massFraction();
    const double now = basis.now.massFraction(), coming = basis.coming.massFraction();
    if (!within(flue, 0, 100) || !within(syrup, 0.01, 100) || !within(basis.depth.metre(), 0.001, 0.5) ||
        !within(basis.feed.litrePerHour(), 1, 10000) || !within(now, 0.002, 0.3) || !within(coming, 0.002, 0.3) ||
        !within(end, 0.5, 0.75))
        return std::nullopt;
    // Of what boils off, the flue pan boils off this share; the rest comes on into the syrup pan.
    const double share = flue * fluesBoil / (flue * fluesBoil + syrup);
    const double enters = now / (1 - share * (1 - now / end));
    const double mean = (end - enters) / std::log(end / enters);
    const auto thick = sugarDensity(Brix::massFraction(mean), weighedAt), full = sugarDensity(basis.wanted, weighedAt),
               sap = sugarDensity(basis.now, weighedAt);
    if (!thick || !full || !sap)
        return std::nullopt;
    const double volume = syrup * basis.depth.metre();
    const double room = volume * (full->si() * end - thick->si() * mean); // kg of sugar
    const double feed = basis.feed.si() * sap->si();                      // kg of sap a second
    const double first = feed * (now + coming) / 2 * lookAhead;
    return Duration{room <= first ? room / (feed * (now + coming) / 2) : lookAhead + (room - first) / (feed * coming)};
}

} // namespace panside
