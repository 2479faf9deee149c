#include "core/quantity/enum_count.h"

#include <array>
#include <gtest/gtest.h>

namespace panside {
namespace {

enum class Three { one, two, three };

TEST(EnumCount, CountsTheValuesThatHaveANameAndNoOther) {
    EXPECT_TRUE((hasCount<Three, 3>()));
    EXPECT_FALSE((hasCount<Three, 2>())); // one was added, and the count forgotten
    EXPECT_FALSE((hasCount<Three, 4>()));
}

struct Row {
    Three of;
};

TEST(EnumCount, ARowThatStandsElsewhereOrTwiceIsSeen) {
    using enum Three;
    EXPECT_TRUE(inOrder(std::array{Row{one}, Row{two}, Row{three}}, &Row::of));
    EXPECT_FALSE(inOrder(std::array{Row{one}, Row{three}, Row{two}}, &Row::of));
    EXPECT_FALSE(inOrder(std::array{Row{one}, Row{two}, Row{two}}, &Row::of));
}

} // namespace
} // namespace panside
