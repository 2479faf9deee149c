#pragma once
// What a shift log may ask of the program: everything that is worked out of a log grows with its rows, its span and its
// probes, and a file can say any of them. The limits are far beyond any night's.
#include "core/boil/shift_log.h"

#include <optional>
#include <set>
#include <string>

namespace panside {

inline constexpr int firstYear = 1900, lastYear = 2200; // of any time in a log, UTC
inline constexpr int daysALog = 31;                     // from its first row to its last, where a shift stands in it
inline constexpr std::size_t probesALog = 64;           // names
inline constexpr std::size_t bytesARow = 65536;
inline constexpr double largestNumber = 1e9; // of a reading, in the unit it is written in

bool isInYears(Instant at);

// Hears every row of one log, in the order of the file.
class LogLimits {
public:
    // The fault of a row that goes over a limit; it bears no line yet. Each limit is told once.
    std::optional<Fault> judge(const Fact& fact);

private:
    std::optional<Instant> first_, last_;
    bool isShift_ = false, spanTold_ = false, probesTold_ = false;
    std::set<std::string> probes_;
};

} // namespace panside
