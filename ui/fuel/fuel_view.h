#pragma once
// The fuel page's words and figures: what the fire gave, where the heat went, and how the boil will end.
#include "core/boil/picture.h"
#include "ui/fuel/plan_view.h"
#include "ui/look/units.h"

#include <QString>
#include <optional>
#include <vector>

namespace panside {

struct FuelView {
    QString call;  // the rhythm, and why the call moved
    QString doubt; // where the ways disagree, and what that suggests
    std::vector<FuelLine> rates, heat, yield;
    std::optional<PlanView> plan;
    QString noPlan;     // instead of it: why there is none
    QString endCaution; // beside the plan: it is advice
    QString caution;    // after the shutdown, what to watch and until when; before it, the fire's own cautions
    bool operator==(const FuelView&) const = default;
};

// What the picture does not know: the wall's clock, what may be otherwise, and what the woodpile holds and costs.
struct FuelBeside {
    WallClock clock = {};
    PlanSteps steps = {};
    std::optional<double> pricePerCord = {}; // a full cord
    bool pile = false;                       // one was measured
    std::optional<double> pileCords = {};    // full ones left of it; none: what was burnt since is not known
};

FuelView fuelView(const Picture& picture, Units units, const FuelBeside& beside = {});

} // namespace panside
