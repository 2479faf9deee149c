#pragma once
// The fuel page's words and figures: what the fire gave, where the heat went, and how the boil will end.
#include "core/boil/picture.h"
#include "ui/look/units.h"

#include <QString>
#include <optional>
#include <vector>

namespace panside {

struct FuelLine {
    QString label, value;
    bool operator==(const FuelLine&) const = default;
};

// The end of the boil as a picture: litres over hours from now.
struct PlanPicture {
    double tank = 0, keepBack = 0, perHour = 0; // litres; litres an hour
    double burnOut = 0;                         // hours, after the last load
    double early = 0, likely = 0, late = 0;     // hours to the last load
    QString tankWords, keepWords, lastWords, outWords;
    bool operator==(const PlanPicture&) const = default;
};

struct FuelView {
    QString call;  // the rhythm, and why the call moved
    QString doubt; // where the ways disagree, and what that suggests
    std::vector<FuelLine> rates, heat, yield;
    std::optional<PlanPicture> plan;
    QString noPlan;  // instead of it: why there is none
    QString caution; // after the shutdown, what to watch and until when; before it, the fire's own cautions
    bool operator==(const FuelView&) const = default;
};

FuelView fuelView(const Picture& picture, Units units);

} // namespace panside
