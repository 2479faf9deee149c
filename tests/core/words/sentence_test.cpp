#include "core/words/sentence.h"

#include <gtest/gtest.h>

namespace panside {
namespace {

TEST(Sentence, PutsItsPartsInTheirPlacesAllAtOnce) {
    EXPECT_EQ(english(say("from %1 to %2, %1 again", {"50", "%1"})), "from 50 to %1, 50 again");
    EXPECT_EQ(english(say("5 %; %3 and %", {"one"})), "5 %; %3 and %");
    EXPECT_EQ(english(asWritten("%2")), "%2");
    EXPECT_EQ(english({}), "");
}

TEST(Sentence, JoinsAlternatives) {
    EXPECT_EQ(english(sayOneOf({"a"})), "a");
    EXPECT_EQ(english(sayOneOf({"a", "b"})), "a or b");
    EXPECT_EQ(english(sayOneOf({"a", "b", "c"}, "%1, or a number")), "a, b or c, or a number");
}

} // namespace
} // namespace panside
