#include "core/quantity/enum_count.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

enum class Three { one, two, three };

TEST(EnumCount, CountsTheValuesThatHaveANameAndNoOther) {
    EXPECT_TRUE((hasCount<Three, 3>()));
    EXPECT_FALSE((hasCount<Three, 2>())); // one was added, and the count forgotten
    EXPECT_FALSE((hasCount<Three, 4>()));
}

} // namespace
} // namespace panside
