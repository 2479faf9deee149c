#include "core/ledger/remedy.h"

#include "core/physics/mixing.h"

#include <algorithm>

namespace panside {
namespace {

constexpr Brix thinnestSyrup = Brix::degrees(55); // below it is no syrup that anybody would pack (our judgement)
constexpr double worthStirring = 0.5;             // brix over what is wanted, from which on it is said (our judgement)

} // namespace

Remedy remedyOf(const Liquid& content, const DensityLimits& limits) {
    Remedy remedy;
    if (content.isEmpty())
        return remedy;
    const Brix is = content.brix();
    remedy.aim = std::max(limits.aim, limits.least);
    if (is < thinnestSyrup) {
        remedy.kind = Remedy::Kind::notSyrup;
        return remedy;
    }
    const double sd = content.sd * 100;
    const Portion portion{content.volume(), is};
    if (is < limits.least)
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
    return remedy;
}

} // namespace panside
