#pragma once
// The end of the boil in words and figures: when the last load goes in, what is kept back, and what would change it.
#include "core/boil/picture.h"
#include "ui/look/units.h"
#include "ui/look/wall_clock.h"

#include <QString>
#include <optional>
#include <vector>

namespace panside {

struct FuelLine {
    QString label, value;
    bool operator==(const FuelLine&) const = default;
};

struct PlanView {
    Instant now{};
    WallClock clock;
    Units units = Units::us;
    EndPlan plan;
    std::optional<EndPlan> withSap = {}, withFire = {}; // each of the two changes by itself
    QString headline = {};
    bool lastIsNext = false; // the call for the last load stands
    std::vector<FuelLine> lines = {}, changes = {};
    bool operator==(const PlanView&) const = default;
};

// What may be asked: steps of sap and of fire, from -4 to 40 and from -6 to 10.
struct PlanSteps {
    int sap = 2, fire = 2;
    bool operator==(const PlanSteps&) const = default;
};
inline constexpr int leastSap = -4, mostSap = 40, leastFire = -6, mostFire = 10;
Volume sapStep(Units units); // 50 gal, 200 L
inline constexpr double fireStep = 0.05;

// nullopt where the last load is not known.
std::optional<PlanView> planView(const Picture& picture, Units units, const WallClock& clock, PlanSteps steps);

} // namespace panside
