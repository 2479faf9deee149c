#pragma once
// How many values an enum has, so that a table that lacks a row for one does not compile.
#include <cstddef>
#include <functional>
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

// A table's rows stand in the order of the values that they are of, from 0 on, each once: rows[i] is that of value i.
// `key`: the member that says which one a row is of.
template <class Rows, class Key>
constexpr bool inOrder(const Rows& rows, Key key) {
    std::size_t next = 0;
    for (const auto& row : rows)
        if (static_cast<std::size_t>(std::invoke(key, row)) != next++)
            return false;
    return true;
}

} // namespace panside
