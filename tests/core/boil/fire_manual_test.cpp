// The manual's page on the fire carries the cautions and says what the code does.
#include "core/boil/fire.h"
#include "core/boil/state.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace panside {
namespace {

TEST(FireManual, CautionsComeFirstAndNoneIsMissing) {
    std::ifstream file{PANSIDE_SOURCE "/resources/manual/fire.md"};
    std::stringstream read;
    read << file.rdbuf();
    const std::string manual = read.str();
    const auto cautions = manual.find("## Cautions");
    ASSERT_NE(cautions, std::string::npos);
    EXPECT_LT(cautions, manual.find("## The call"));
    for (const char* words : {"fire marshal", "loves", "Carbon monoxide", "oof", "run dry", "last look", "`stack_hot`",
                              "`last_load`", "`sap_low`", "`burn_out`", "`fire_interval`"})
        EXPECT_NE(manual.find(words), std::string::npos) << words;
}

// "before four loads it is eight minutes"
TEST(FireManual, NamesTheIntervalUntilItIsLearned) {
    EXPECT_EQ(Fire::loadsToLearn, 4);
    EXPECT_EQ(Fire::untilLearned, Duration{8 * 60});
    EXPECT_FALSE(Settings{}.fireInterval());
}

} // namespace
} // namespace panside
