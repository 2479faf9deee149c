#pragma once
// Alarms in a calm hour, and the table's verdicts.
#include <cstdint>
#include <string>
#include <vector>

namespace panside::judge {

inline int broken = 0;           // limits that were not kept
inline std::uint64_t others = 0; // added to every seed: other rigs

void verdict(bool kept);
// Of rehearsed nights, and of the logs named.
void calm(int boils, const std::vector<std::string>& logs);

} // namespace panside::judge
