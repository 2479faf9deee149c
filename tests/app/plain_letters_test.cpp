#include "app/plain_letters.h"

#include <gtest/gtest.h>
#include <sstream>

namespace panside {
namespace {

std::string shown(const std::string& text) {
    std::ostringstream out;
    {
        PlainLetters plain{out};
        out << text;
        out.flush();
    }
    out << '!'; // and the stream is as it was
    return out.str();
}

TEST(PlainLetters, ShowWhatWouldActOnATerminal) {
    EXPECT_EQ(shown("a\x1b]0;title\x07 b\r\n\tc\x7f"), "a\\x1b]0;title\\x07 b\\x0d\n\tc\\x7f!");
    EXPECT_EQ(shown("\xC2\x9B"
                    "31m"),
              "\\x9b31m!")
        << "the same escape as one letter, U+009B";
}

TEST(PlainLetters, LeaveAllOthersAlone) {
    EXPECT_EQ(shown("Érable 66,9 °Brix – sirop\n"), "Érable 66,9 °Brix – sirop\n!");
    EXPECT_EQ(shown("\xC2"), "\xC2!");
}

} // namespace
} // namespace panside
