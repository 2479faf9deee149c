#pragma once
// Cells of a table that people open in a spreadsheet: quoted by RFC 4180, and harmless. A spreadsheet takes a text that
// begins with = + - or @ for a formula, whoever typed it; an apostrophe before it makes it a text again. Numbers stay
// numbers.
#include <string>
#include <string_view>

namespace panside {

std::string csvCell(std::string_view text);
// A row of cells as RFC 4180 has it, each made harmless.
std::string csvRowHarmless(std::string_view row);

} // namespace panside
