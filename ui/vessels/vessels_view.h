#pragma once
// The vessels of syrup: what stands in each, and what it wants.
#include "core/ledger/remedy.h"
#include "core/shift/house_ledger.h"
#include "ui/ledger/book_form.h"
#include "ui/ledger/ledger_table.h"
#include "ui/look/units.h"

namespace panside {

struct VesselLine {
    std::size_t vessel = 0; // of the ledger
    QString name;
    QString wants; // the whole sentence
    QString notes; // what runs with it, cautions
    bool operator==(const VesselLine&) const = default;
};

// A draw of which nobody said where it went.
struct LostDraw {
    ShiftId shift{};
    FactId id = 0;
    Fact fact;
    QString words;
    bool operator==(const LostDraw&) const = default;
};

struct VesselsView {
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
    std::vector<VesselLine> lines; // of each row
    std::vector<LostDraw> whereTo;
    QString nothing; // where there is none yet
    bool operator==(const VesselsView&) const = default;
};
VesselsView vesselsView(const HouseLedger* house, std::span<const Set> settings, Units units);

DensityLimits limitsOf(const Ledger& ledger, std::span<const Set> settings);
// May not be packed with others, or at all: an off-flavour, or lead over the limit.
bool isApart(const Vessel& vessel);
// What a vessel holds that something is to leave, or what it will be where that goes.
QString leavesSentence(const Ledger& ledger, const BookForm& form, Units units);
// "pail 3: 4½ gal at 68.2 ± 0.3: stir in 1 pint of sap, heat, test"
QString remedySentence(const Vessel& vessel, const DensityLimits& limits, Units units);
// What runs with it: milk, lead, ropy sap, an off-flavour, defoamer.
QString taintWords(const Taint& taint);
// The row of the vessel that was drawn into last, if that is not long ago; -1: none.
int lastDrawn(const VesselsView& view, const HouseLedger& house, Instant now);

} // namespace panside
