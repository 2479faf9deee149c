#pragma once
#include <string>

namespace panside {

// Appends a number rounded to so many decimals, at most four, without noughts at its end: by whole numbers, several
// times as fast as std::to_chars. False, and nothing appended, where it is too large for that (10^15 of its last place)
// or so near to a tie that the rounding could go the other way.
bool appendDecimals(std::string& out, double value, int decimals);

} // namespace panside
