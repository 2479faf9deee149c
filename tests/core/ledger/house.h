#pragma once
// A day book and shifts written as rows, folded.
#include "core/boil/shift_log.h"
#include "core/ledger/trace.h"
#include "tests/core/ledger/together.h"

#include <gtest/gtest.h>
#include <memory>
#include <string>
#include <vector>

namespace panside::testing_house {

class FoldedHouse {
public:
    // Rows without the header, each with its time.
    explicit FoldedHouse(const std::string& book, const std::vector<std::string>& shifts = {}) {
        books_.push_back(entries(book));
        for (const std::string& shift : shifts) {
            auto facts = entries(shift);
            const Instant id = facts.front().fact.at;
            shifts_.emplace_back(id, std::move(facts));
        }
        ledger = std::make_unique<Ledger>(ledgerInput(books_, shifts_));
    }
    const Vessel& vessel(std::string_view name) const {
        return ledger->vessels().at(ledger->vesselNamed(name).value());
    }
    const Lot& lot(std::string_view code) const { return ledger->lots().at(ledger->lotNamed(code).value()); }
    double litres(std::string_view name) const { return vessel(name).content.volume().litre(); }
    double sugar(std::string_view name) const { return vessel(name).content.sugar; }
    int marked(MarkKind kind) const {
        int count = 0;
        for (const LedgerMark& mark : ledger->marks())
            count += mark.kind == kind;
        return count;
    }
    Trace trace(std::string_view name) const { return traceOf(*ledger, name).value(); }

    std::unique_ptr<Ledger> ledger;

private:
    static std::vector<Boil::Entry> entries(const std::string& rows) {
        const ReadLog read = readLog(std::string{logHeader} + "\n" + rows);
        for (const Fault& fault : read.faults)
            ADD_FAILURE() << sentence(fault, "rows");
        std::vector<Boil::Entry> all;
        for (const Fact& fact : read.facts)
            all.push_back({static_cast<FactId>(all.size() + 1), fact});
        return all;
    }
    std::vector<std::vector<Boil::Entry>> books_;
    std::vector<std::pair<Instant, std::vector<Boil::Entry>>> shifts_;
};

inline const TraceEntry* entryOf(const std::vector<TraceEntry>& entries, TraceKind kind, std::string_view name) {
    for (const TraceEntry& entry : entries)
        if (entry.kind == kind && entry.name == name)
            return &entry;
    return nullptr;
}
inline std::string day(int day, const std::string& clock, const std::string& rest) {
    return "2027-03-" + std::string{day < 10 ? "0" : ""} + std::to_string(day) + "T" + clock + ":00Z," + rest + "\n";
}

} // namespace panside::testing_house
