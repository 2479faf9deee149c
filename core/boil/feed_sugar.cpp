#include "core/boil/feed_sugar.h"

#include "core/boil/sap_sugar.h"

#include <cmath>

namespace panside {
namespace {

// Seconds in which two thirds of what stood in the flue pan have gone on into the syrup pan: what stands over and
// between the flues, over what leaves them thickened (common practice, no source; rigs differ by half of it).
constexpr double passesIn = 4 * 3600;

} // namespace

void FeedSugar::came(const SapIn& sap, Volume stood, Instant at) {
    const auto sugar = sapSugar(sap);
    if (!sugar || sugar->massFraction() <= 0)
        return;
    const double before = stood.litre(), more = sap.volume.value.litre();
    // All of a tank: nobody said how much, and it outweighs what was left.
    const double share = sap.all ? 1 : before + more > 0 ? more / (before + more) : 0;
    pans_ = tank_ > 0 ? pans(at)->massFraction() : sugar->massFraction();
    tank_ = tank_ > 0 ? tank_ + share * (sugar->massFraction() - tank_) : sugar->massFraction();
    at_ = at;
}

std::optional<Brix> FeedSugar::tank() const {
    return tank_ > 0 ? std::optional{Brix::massFraction(tank_)} : std::nullopt;
}

std::optional<Brix> FeedSugar::pans(Instant at) const {
    if (tank_ <= 0)
        return std::nullopt;
    const double passed = std::max(0.0, secondsBetween(at_, at));
    return Brix::massFraction(tank_ + (pans_ - tank_) * std::exp(-passed / passesIn));
}

std::optional<Brix> FeedSugar::pansBetween(Instant from, Instant to) const {
    if (tank_ <= 0)
        return std::nullopt;
    const Instant since = std::min(std::max(from, at_), to);
    const double all = secondsBetween(from, to), after = secondsBetween(since, to);
    if (all <= 0)
        return pans(to);
    const double passed = std::max(0.0, secondsBetween(at_, since));
    const double apart = (pans_ - tank_) * (std::exp(-passed / passesIn) - std::exp(-(passed + after) / passesIn));
    return Brix::massFraction((pans_ * (all - after) + tank_ * after + apart * passesIn) / all);
}

} // namespace panside
