#pragma once
#include <string_view>

namespace panside {

// A text without the blanks around it.
constexpr std::string_view trimmed(std::string_view text, std::string_view blanks = " \t") {
    const auto first = text.find_first_not_of(blanks);
    return first == std::string_view::npos ? std::string_view{}
                                           : text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

} // namespace panside
