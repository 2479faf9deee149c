#include "core/ledger/lot_code.h"

#include <gtest/gtest.h>
#include <set>

namespace panside {
namespace {

using namespace std::chrono_literals;

constexpr auto packDay = 2026y / std::chrono::August / 3;
bool nothing(std::string_view) { return false; }

// 3 August 2026 is day 215 of the year (ISO 8601, ordinal date 2026-215).
TEST(LotCode, IsTheDayOfTheYearAndANumberWhereTheHouseHasNoScheme) {
    EXPECT_EQ(lotCode("", packDay, "drum 7", nothing), "26215-1");
}

TEST(LotCode, FollowsTheSchemeOfTheHouse) {
    EXPECT_EQ(lotCode("H{yyyy}{mm}{dd}/{v}", packDay, "drum 7", nothing), "H20260803/drum7");
}

TEST(LotCode, TakesTheNextThatIsFree) {
    const std::set<std::string, std::less<>> there{"26215-1", "26215-2", "H"};
    const auto taken = [&](std::string_view code) { return there.contains(code); };
    EXPECT_EQ(lotCode("", packDay, "drum 7", taken), "26215-3");
    EXPECT_EQ(lotCode("H", packDay, "drum 7", taken), "H-2"); // a scheme without a number gets one
}

} // namespace
} // namespace panside
