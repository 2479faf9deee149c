#pragma once
// What makes a day book unfit beyond its single rows: a vessel that nobody named, a lot code that stands for two
// packings. Judged against all that is known, in this file and outside it.
#include "core/boil/shift_log.h"

#include <functional>
#include <unordered_map>

namespace panside {

struct BookKnown {
    std::unordered_map<std::string, std::string> vessels; // by nameKey, as named
    struct Packing {
        std::string vessel; // by nameKey
        std::chrono::year_month_day day;
        bool operator==(const Packing&) const = default;
    };
    std::unordered_map<std::string, Packing> lots;              // by nameKey
    std::function<std::chrono::year_month_day(Instant)> dateOf; // local; none: UTC

    // A row of another day book, or of a shift.
    void add(const Fact& fact);
};

// Faults with their lines, in the order of the file's rows: of a day book, or of such rows in a shift's log.
std::vector<Fault> bookFaults(const ReadLog& book, BookKnown known);
// A code that is not taken, made of a taken one.
std::string nextFree(const BookKnown& known, std::string_view code);

} // namespace panside
