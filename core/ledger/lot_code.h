#pragma once
// A lot's code by the house's scheme: words in which {yyyy} and {yy} stand for the year, {mm} and {dd} for month and
// day, {ddd} for the day of the year, {v} for the vessel without its blanks, {n} for the number of the packing that
// day.
#include <chrono>
#include <functional>
#include <string>
#include <string_view>

namespace panside {

inline constexpr std::string_view usualLotScheme = "{yy}{ddd}-{n}"; // 26052-1

// The first code that is not taken. Without {n} in the scheme a number follows where the code is taken.
std::string lotCode(std::string_view scheme, std::chrono::year_month_day day, std::string_view vessel,
                    const std::function<bool(std::string_view)>& taken);

} // namespace panside
