#pragma once
// The boils that the forecast is judged on: fifteen groups, each a kind of trouble. Boil i of a group has the seed
// 1000 * (group's number from 1) + i; everything else is drawn from it.
#include "core/rehearsal/rehearsal.h"

#include <string>
#include <vector>

namespace panside::judge {

struct Boiling {
    std::string group;
    std::uint64_t seed;
    RehearsalOptions options;
    bool unchecked = false; // what they checked of density and of water is not in the log
};
std::vector<Boiling> boils(int inEachGroup);
// Seven more groups, of plants wider than those and never tuned on; seeds 50000 + 1000 * (group's number from 0) + i.
std::vector<Boiling> otherBoils(int inEachGroup);
// Ten groups with the unrest that the others lack; seeds 80000 + 1000 * (group's number from 0) + i.
std::vector<Boiling> hardBoils(int inEachGroup);

} // namespace panside::judge
