#pragma once
// A small made-up house for the screens' tests: its day book and one night, folded.
#include "core/boil/shift_log.h"
#include "core/shift/house_ledger.h"

#include <algorithm>
#include <string>

namespace panside {

inline Fact rowIn(const std::string& line) { return std::get<Fact>(factOfLine(line)); }

inline std::vector<Fact> houseRows() {
    return {rowIn("2026-03-01T12:00:00Z,vessel,400,gal,name=hold;kind=hold"),
            rowIn("2026-03-01T12:01:00Z,vessel,40,gal,name=drum 7;kind=drum"),
            rowIn("2026-03-01T12:02:00Z,vessel,5,gal,name=pail 3;kind=pail"),
            rowIn("2026-03-01T12:03:00Z,vessel,5,gal,name=pail 4;kind=pail"),
            rowIn("2026-03-01T15:00:00Z,gathered,300,gal,to=hold;brix=2.0;from=north bush;by=Ansel"),
            rowIn("2026-03-02T10:00:00Z,bought,37,gal,what=syrup;vessel=drum 7;brix=65.7;from=a neighbour"),
            rowIn("2026-03-02T11:00:00Z,bought,4.5,gal,what=syrup;vessel=pail 3;brix=68.2;from=a neighbour")};
}

inline HouseLedger houseOf(std::vector<Fact> more = {}) {
    auto rows = houseRows();
    rows.insert(rows.end(), more.begin(), more.end());
    std::stable_sort(rows.begin(), rows.end(), [](const Fact& a, const Fact& b) { return a.at < b.at; });
    return {nullptr, std::move(rows)};
}

} // namespace panside
