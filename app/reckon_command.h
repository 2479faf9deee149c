#pragma once
#include <iosfwd>
#include <string>
#include <vector>

namespace panside {

// `panside reckon KIND ...`: args are what follows `reckon`. An answer goes to out, a refusal to err.
// Returns 0 done, 1 refused because of the input, 2 wrong usage.
int reckonCommand(const std::vector<std::string>& args, std::ostream& out, std::ostream& err);

} // namespace panside
