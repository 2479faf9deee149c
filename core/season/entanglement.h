#pragma once
// Causes that went together on the nights there are, so that no sum can tell them apart.
#include <vector>

namespace panside {

struct TogetherGroup {
    std::vector<std::size_t> columns;
    // How the columns move as the common movement goes one standard deviation up, in their own units.
    std::vector<double> movement;
};
// Two columns that correlate by 0.8 or more are together, and what is together with one of them. Where there are enough
// nights, so are those that several others foretell (a variance inflation of 10 or more: common practice, no source)
// with what foretells them.
std::vector<TogetherGroup> entangledColumns(const std::vector<std::vector<double>>& columns);

} // namespace panside
