#pragma once
// What people entered in a shift, by time, with what was put right later: the old entry stays in its place, and says
// what stands now instead of it. Pure.
#include "core/journal/journal.h"
#include "ui/look/units.h"
#include "ui/look/wall_clock.h"

#include <QString>
#include <vector>

namespace panside {

struct EntryLine {
    FactId id = 0;
    Fact fact;
    QString time, words, who;
    QString fate;         // "corrected at 08:12: fired, 40 lb", "taken back at 21:14"; empty: it stands
    bool stands = true;   // false: it counts no more and is only shown
    bool written = false; // it can be written otherwise; what no paper row tells can only be taken back
    bool operator==(const EntryLine&) const = default;
};

// `deeds` and `withdrawn` as the journal gives them. The settings that the shift began with and the clock's own steps
// are nobody's entries.
std::vector<EntryLine> entryLines(const std::vector<Boil::Entry>& deeds,
                                  const std::vector<Journal::Withdrawn>& withdrawn, const WallClock& clock,
                                  Units units);

} // namespace panside
