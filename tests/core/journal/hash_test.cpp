#include "core/journal/hash.h"

#include <gtest/gtest.h>

#include <string>

namespace panside {
namespace {

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
