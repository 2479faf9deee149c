// What is tested, and what it is tested with.
#include "core/ledger/fold.h"

#include <fmt/format.h>

namespace panside {

InstrumentRow& Ledger::Fold::instrument(std::string_view name) {
    for (InstrumentRow& one : tables.instruments)
        if (nameKey(one.name) == nameKey(name))
            return one;
    tables.instruments.push_back({std::string{name}, {}, {}, {}, {}});
    return tables.instruments.back();
}

// What reads the syrup, and boiling water that a probe was held into.
void Ledger::Fold::instruments(const Fact& fact) {
    if (const auto* check = std::get_if<DensityCheck>(&fact.what))
        instrument(check->with == Instrument::refractometer ? "refractometer" : "hydrometer").used = now;
    if (const auto* water = std::get_if<WaterCheck>(&fact.what)) {
        InstrumentRow& its = instrument(water->probe.empty() ? "pan probe" : std::string_view{water->probe});
        its.checked = now;
        its.boiled = water->boiledAt.value;
    }
}

void Ledger::Fold::tested(const DayRow& row) {
    const std::string_view of = row.text(Key::of);
    tables.tested.push_back({now, row, std::string{of}, in.rows[line].fact->by});
    if (!known(of) && !codes.contains(nameKey(of))) {
        InstrumentRow& its = instrument(of);
        its.checked = now;
        its.boiled.reset();
        its.found = row.value
                        ? fmt::format("{:.6g} {}", fromSi(row.value->si, row.value->unit), nameOf(row.value->unit))
                        : row.words;
    }
    if (nameKey(row.text(Key::tested_for)) != "lead" || !row.value)
        return;
    const double limit = leadLimit(tables.law()).partsPerBillion;
    const bool over = row.value->si * 1e9 > limit;
    if (const auto lot = codes.find(nameKey(of)); lot != codes.end()) {
        lots[lot->second].taint.lead = over;
        lots[lot->second].held |= over;
        if (over)
            mark(MarkKind::lead, lots[lot->second].code, row.value->si * 1e9, limit);
    }
    if (const auto which = known(of)) {
        vessels[*which].leadOver = over;
        vessels[*which].taint.lead = over;
        if (over)
            mark(MarkKind::lead, vessels[*which].name, row.value->si * 1e9, limit);
    }
}

} // namespace panside
