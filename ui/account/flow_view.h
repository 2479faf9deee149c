#pragma once
// The season's sugar from bush to bottle as bands, widths to scale. Pure: shares of the picture's width and height.
#include "core/ledger/house_account.h"
#include "ui/look/units.h"

#include <QString>
#include <vector>

namespace panside {

struct FlowBand {
    QString name, amount;
    double from = 0, to = 0; // share of the scale, from the top of the trunk
    bool lost = false;       // poured away, spilled
    bool open = false;       // does not close: hatched, never solid
    bool operator==(const FlowBand&) const = default;
};
struct FlowView {
    std::vector<FlowBand> in, out; // each from the top; both of one scale
    double trunk = 1;              // what flows in, and what was found beside it: the whole is 1
    double pans = 0;               // share of it that was drawn as syrup
    double membrane = 0;           // share of it that went through the concentrator
    QString whole, doubt;          // "132 lb of sugar came in", the line that does not close
    bool empty = true;
    bool operator==(const FlowView&) const = default;
};
FlowView flowView(const Ledger* ledger, Units units);

} // namespace panside
