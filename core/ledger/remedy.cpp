#include "core/ledger/remedy.h"

#include "core/physics/mixing.h"

#include <algorithm>

namespace panside {
namespace {

constexpr Brix thinnestSyrup = Brix::degrees(55); // below it is no syrup that anybody would pack (our judgement)
constexpr Brix landsWithin = Brix::degrees(0.09); // the rest of a tenth is for the sums
constexpr double waterDensity = 1000;             // kg/m3, near enough for that
constexpr double halfStep = 0.05;                 // brix, of a glass: what reads the least is legal
constexpr double worthStirring = 0.5;             // brix over what is wanted, from which on it is said (our judgement)

} // namespace

Remedy remedyOf(const Liquid& content, const DensityLimits& limits) {
    Remedy remedy;
    if (content.isEmpty())
        return remedy;
    const Brix is = content.byLaw();
    remedy.aim = std::max(limits.aim, limits.least);
    if (is < thinnestSyrup) {
        remedy.kind = Remedy::Kind::notSyrup;
        return remedy;
    }
    const double sd = content.error().degrees();
    const Portion portion{content.volume(), is};
    if (is.degrees() < limits.least.degrees() - halfStep)
        remedy.kind = Remedy::Kind::tooThin;
    else if (is.degrees() - sd < limits.least.degrees())
        remedy.kind = Remedy::Kind::maybeThin;
    else if (is > limits.most)
        remedy.kind = Remedy::Kind::tooHeavy;
    else if (is.degrees() > remedy.aim.degrees() + worthStirring)
        remedy.kind = Remedy::Kind::heavy;
    else
        remedy.kind = Remedy::Kind::good;
    if (remedy.kind == Remedy::Kind::tooHeavy || remedy.kind == Remedy::Kind::heavy)
        remedy.stirIn = thinnerToReach(remedy.aim, portion, limits.sap).value_or(Volume{});
    else if (is < remedy.aim && remedy.kind != Remedy::Kind::good)
        remedy.boilOff = boilOffToReach(remedy.aim, portion).value_or(Volume{});
    // Of sap so much moves the sugar by its distance from the aim, of water by all of the aim.
    const double away = remedy.stirIn.si() > 0 ? (remedy.aim - limits.sap).si() : remedy.aim.si();
    remedy.within = Volume::ofSi(content.mass * landsWithin.si() / away / waterDensity);
    return remedy;
}

} // namespace panside
