#pragma once
// How many values an enum has, so that a table that lacks a row for one does not compile.
#include <cstddef>
#include <string_view>

namespace panside {

// Does the number belong to a value that the enum names? Read from what the compiler calls it: GCC and Clang write one
// without a name as a cast, "(panside::Series)12".
template <auto value>
constexpr bool isNamed() {
    constexpr std::string_view function = __PRETTY_FUNCTION__;
    constexpr auto is = function.find("value = ");
    static_assert(is != std::string_view::npos, "this compiler names template arguments in another way");
    return function[is + 8] != '(';
}

// The enum's values are those from 0 to count - 1, and no others.
template <class Enum, std::size_t count>
constexpr bool hasCount() {
    return isNamed<static_cast<Enum>(count - 1)>() && !isNamed<static_cast<Enum>(count)>();
}

} // namespace panside
