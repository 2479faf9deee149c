#pragma once
// Packing: what may be packed and how, what is said while a pack is entered, the lots that there are. Pure.
#include "core/shift/house_ledger.h"
#include "ui/ledger/book_form.h"
#include "ui/ledger/ledger_table.h"

namespace panside {

struct PackLine {
    std::size_t vessel = 0;
    QString name, says, notes;
    bool operator==(const PackLine&) const = default;
};
struct PackView {
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
    std::vector<PackLine> lines;
    QString nothing;
    bool operator==(const PackView&) const = default;
};
PackView packView(const HouseLedger* house, std::span<const Set> settings, Units units);

// What a vessel gives in each size, and what is weighed in.
struct FillLine {
    QString written; // of the size
    Volume size;
};
std::vector<FillLine> usualSizes(const HouseLedger* house, Units units);
struct YieldView {
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
    bool operator==(const YieldView&) const = default;
};
YieldView yieldView(const Vessel& vessel, std::span<const FillLine> sizes, Units units);
// The weight of a content by a packing scale: "1.32 lb (21.1 oz)", "664 g".
QString weightText(Mass mass, Units units);

// The form of a pack out of a vessel: next lot code, the size and the limits; and what is said while it is filled in.
BookForm packForm(BookForm form, const HouseLedger& house, std::size_t vessel, std::span<const Set> settings,
                  Units units, Instant now);

struct LotLine {
    std::size_t lot = 0;
    QString code, says;
    bool held = false, released = false;
    bool operator==(const LotLine&) const = default;
};
struct LotsView {
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
    std::vector<LotLine> lines;
    QString nothing;
    bool operator==(const LotsView&) const = default;
};
LotsView lotsView(const HouseLedger* house, Units units);
// Somebody said why a held lot may go out: a row `tested` of it for release.
bool isReleased(const Ledger& ledger, const Lot& lot);
inline constexpr std::string_view releaseWord = "release";

// What a label needs here, each with where that is from: advice, not law.
std::vector<TableRow> labelChecklist(const PlaceLaw& law, const Lot* lot);
std::vector<TableColumn> checklistColumns();

} // namespace panside
