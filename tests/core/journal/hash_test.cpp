#include "core/journal/hash.h"

#include <gtest/gtest.h>

#include <string>

namespace panside {
namespace {

// Journals hold these values. No source: reckoned once with Python's whole numbers, by the rule in hash.h.
TEST(HashOf, IsWhatJournalsHold) {
    EXPECT_EQ(hashOf("2025-03-14T18:00:00Z,lit,,,"), 0x6df79e7e261234b3U);
    EXPECT_EQ(hashOf("sugar maple", 7), 0xe7423a9e7329e450U);
}

// Texts of every length from nothing to some words, beside longer and shorter ones.
TEST(HashesOf, AreThoseOfEachTextByItself) {
    std::string text;
    for (int i = 0; i < 100; ++i)
        text += static_cast<char>(i * 37 + 11);
    for (std::size_t size = 0; size < 40; ++size) {
        const std::array<Hashed, 4> texts{Hashed{std::string_view{text}.substr(0, size), size},
                                          {std::string_view{text}.substr(3, 2 * size), 7},
                                          {std::string_view{text}.substr(1, 40 - size), 0},
                                          {std::string_view{text}.substr(size), ~std::uint64_t{0}}};
        const auto hashes = hashesOf(texts);
        for (std::size_t i = 0; i < texts.size(); ++i)
            EXPECT_EQ(hashes[i], hashOf(texts[i].bytes, texts[i].seed)) << size << ' ' << i;
    }
}

} // namespace
} // namespace panside
