#include "core/physics/sap.h"

#include "core/physics/range.h"
#include "core/physics/sugar_density.h"

#include <cmath>

namespace panside {
namespace {

constexpr Temperature sapAtTwenty = Temperature::celsius(20);

struct Rule {
    double syrup, constant;
};
constexpr Rule revised[] = {{66.0, 87.1}, {66.5, 87.7}, {66.9, 88.2}};

bool isSap(Brix sap) { return within(sap.degrees(), 0.2, 30); }

} // namespace

std::optional<double> sapPerSyrup(Brix sap, Brix syrup) {
    const auto thin = sugarDensity(sap, sapAtTwenty);
    const auto thick = sugarDensity(syrup, sapAtTwenty);
    if (!thin || !thick || !within(sap.degrees(), 0.2, 75) || !(sap < syrup))
        return std::nullopt;
    return (*thick / *thin) * (syrup / sap);
}

std::optional<double> ruleOf86(Brix sap) {
    if (!isSap(sap))
        return std::nullopt;
    return 86 / sap.degrees();
}

std::optional<double> revisedRule(Brix sap, Brix syrup) {
    for (const Rule& rule : revised)
        if (isSap(sap) && std::abs(syrup.degrees() - rule.syrup) < 1e-6)
            return rule.constant / sap.degrees() - 0.32;
    return std::nullopt;
}

std::optional<Volume> sapToKeepBack(Area pan, Length depth, VolumeFlow rate, Duration burnOut) {
    if (!within(pan.squareMetre(), 0, 100) || !within(depth.metre(), 0, 0.5) ||
        !within(rate.litrePerHour(), 0, 10000) || !within(seconds(burnOut), 0, 12 * 3600))
        return std::nullopt;
    return pan * depth + rate * (burnOut / 2);
}

} // namespace panside
