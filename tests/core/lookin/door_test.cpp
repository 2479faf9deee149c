#include "core/lookin/door.h"

#include <gtest/gtest.h>
#include <set>

namespace panside {
namespace {

TEST(LookKey, HasTheBitsThatItPromisesAndIsAnotherEachTime) {
    std::set<std::string> keys;
    for (int i = 0; i < 1000; ++i) {
        const std::string key = newKey();
        EXPECT_EQ(key.size(), 32u);
        EXPECT_EQ(key.find_first_not_of("0123456789abcdef"), std::string::npos);
        keys.insert(key);
    }
    EXPECT_EQ(keys.size(), 1000u);
}

TEST(Door, OpensToTheWholeKeyAlone) {
    const Door door{"0123456789abcdef0123456789abcdef"};
    EXPECT_TRUE(door.isRight("0123456789abcdef0123456789abcdef"));
    for (const char* wrong : {"", "0", "0123456789abcdef0123456789abcde", "0123456789abcdef0123456789abcdeF",
                              "0123456789abcdef0123456789abcdef0", "1123456789abcdef0123456789abcdef"})
        EXPECT_FALSE(door.isRight(wrong)) << wrong;
    EXPECT_FALSE(Door{""}.isRight("")) << "no key is no open door";
}

TEST(Door, LetsAnAddressWaitAfterTenWrongKeysInAMinute) {
    Door door{"key"};
    for (int i = 0; i < 10; ++i) {
        EXPECT_FALSE(door.waits("10.0.0.9", i));
        door.wrong("10.0.0.9", i);
    }
    EXPECT_TRUE(door.waits("10.0.0.9", 10));
    EXPECT_FALSE(door.waits("10.0.0.8", 10)) << "another phone";
    EXPECT_TRUE(door.waits("10.0.0.9", 59.9));
    EXPECT_FALSE(door.waits("10.0.0.9", 60.1)) << "the first of the ten is a minute old";
}

TEST(Door, DoesNotPunishAWrongKeyNowAndThen) {
    Door door{"key"};
    for (int i = 0; i < 100; ++i) {
        door.wrong("10.0.0.9", i * 7.0); // nine a minute
        EXPECT_FALSE(door.waits("10.0.0.9", i * 7.0)) << i;
    }
}

TEST(Door, KeepsNoMoreAddressesThanAHouseHas) {
    Door door{"key"};
    for (int i = 0; i < 100'000; ++i)
        door.wrong("fd00::" + std::to_string(i), 0.5);
    for (int i = 0; i < 10; ++i)
        door.wrong("9.9.9.9", 1);
    EXPECT_TRUE(door.waits("9.9.9.9", 2));
}

} // namespace
} // namespace panside
