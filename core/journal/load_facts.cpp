#include "core/journal/load_facts.h"

#include "core/journal/fact_stream.h"
#include "core/journal/reading_stream.h"

namespace panside {

void visitLoads(const Journal::Inside& inside, ShiftId shift, const std::function<void(const Fact&)>& visitor) {
    const auto withdrawn = withdrawnIds(*inside.db, shift);
    FactStream rows{inside, shift};
    ReadingStream readings{inside, shift};
    const auto nextStack = [&readings] {
        while (readings.next())
            if (readings.series() == Series::stack)
                return true;
        return false;
    };
    bool row = rows.next();
    bool reading = nextStack();
    const auto give = [&](FactId id, const Fact& fact) {
        if (withdrawn.empty() || !withdrawn.contains(id))
            visitor(fact);
    };
    while (row || reading)
        if (row && (!reading || std::pair{rows.fact.at, rows.id} < std::pair{readings.at(), readings.id()})) {
            give(rows.id, rows.fact);
            row = rows.next();
        } else {
            give(readings.id(), readings.fact());
            reading = nextStack();
        }
}

void visitLoads(const Journal& journal, ShiftId shift, const std::function<void(const Fact&)>& visitor) {
    guarded(journal.place(), [&] {
        const Snapshot snapshot{*journal.inside().db};
        visitLoads(journal.inside(), shift, visitor);
    });
}

} // namespace panside
