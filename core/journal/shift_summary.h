#pragma once
// What a list of shifts shows of each. Counted from the facts, kept to be quick, and counted again from nothing to the
// same digits where they are missing.
#include "core/journal/journal.h"

#include <cstdint>

namespace panside {

struct ShiftSummary {
    Shift shift;
    Instant first{}, last{}; // its first and its last fact
    std::optional<Instant> lit;
    std::int64_t readings = 0; // probe readings, packed
    std::int64_t facts = 0;    // all else
    int draws = 0;             // closed
    int drawsMeasured = 0;     // of them, with a volume
    int loads = 0;
    int loadsWeighed = 0; // of them, with a mass, said or set as `load_mass`
    int checks = 0;       // of density
    Volume sap = Volume::cubicMetre(0);
    Volume syrup = Volume::cubicMetre(0); // of the draws that were measured
    Mass wood = Mass::kilogram(0);        // of the loads that were weighed
    std::vector<std::string> crew;        // in the order they came on
};

// One a shift, by time. Those that are no longer true, or were altered, are counted again, and kept if this journal may
// be written.
std::vector<ShiftSummary> summaries(Journal& journal);
ShiftSummary summaryOf(Journal& journal, ShiftId shift);
} // namespace panside
