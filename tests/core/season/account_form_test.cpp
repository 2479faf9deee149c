// What journals hold of a past shift counts for as long as `accountForm` stands: whoever changes what the same facts
// come to moves it. This test fails where that was forgotten, and is put right by both numbers together.
#include "core/boil/shift_log.h"
#include "core/season/shift_account.h"

#include <fmt/format.h>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

namespace panside {
namespace {

// Every figure of the sample nights, to four digits: what a compiler rounds otherwise does not show.
std::string whatTheNightsComeTo() {
    std::string all;
    for (const char* night : {"first-run", "long-night", "steady", "sweet-run", "thin-sap"}) {
        std::ifstream file{fmt::format("{}/sample-data/{}.csv", PANSIDE_SOURCE, night)};
        std::stringstream text;
        text << file.rdbuf();
        ShiftAccountant accountant;
        for (const Fact& fact : readLog(text.str()).facts)
            accountant.add(fact);
        for (const auto& [name, value] : figuresOf(accountant.account()))
            all += fmt::format("{} {}={:.4g}\n", night, name, value);
    }
    return all;
}

// FNV-1a, 32 bits.
std::uint32_t hashOf(std::string_view text) {
    std::uint32_t hash = 2166136261U;
    for (const char c : text)
        hash = (hash ^ static_cast<unsigned char>(c)) * 16777619U;
    return hash;
}

TEST(AccountForm, MovesWithWhatTheSameFactsComeTo) {
    const std::string figures = whatTheNightsComeTo();
    EXPECT_EQ(std::pair(accountForm, hashOf(figures)), std::pair(16, 2620063355U))
        << "the same facts come to other figures: move accountForm, and write both numbers here\n"
        << figures;
}

} // namespace
} // namespace panside
