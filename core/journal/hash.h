#pragma once
// A 64-bit hash for what lies on disk: to notice damage that SQLite itself does not look for, and to tell whether two
// shifts hold the same facts. No protection against ill will. Values are kept on disk: never change it.
#include <algorithm>
#include <array>
#include <cstdint>
#include <cstring>
#include <string_view>

namespace panside {

constexpr std::uint64_t mixed(std::uint64_t x) {
    x ^= x >> 32;
    x *= 0xd6e8feb86659fd93U;
    x ^= x >> 32;
    x *= 0xd6e8feb86659fd93U;
    x ^= x >> 32;
    return x;
}

// A text to be hashed, and what the hash begins with.
struct Hashed {
    std::string_view bytes;
    std::uint64_t seed = 0;
};

// Bytes are taken as little-endian words; every machine Panside runs on is one.
inline std::uint64_t wordAt(const char* bytes) {
    std::uint64_t word = 0;
    std::memcpy(&word, bytes, 8);
    return word;
}

// What `hash`, that of the words before `bytes`, becomes with these last ones.
inline std::uint64_t hashedOn(std::uint64_t hash, std::string_view bytes) {
    for (; bytes.size() >= 8; bytes.remove_prefix(8))
        hash = mixed(hash ^ wordAt(bytes.data()));
    std::uint64_t rest = 0;
    std::memcpy(&rest, bytes.data(), bytes.size());
    return mixed(hash ^ rest);
}

inline std::uint64_t hashBegun(const Hashed& text) {
    return mixed(text.seed ^ (text.bytes.size() * 0x9e3779b97f4a7c15U));
}

inline std::uint64_t hashOf(std::string_view bytes, std::uint64_t seed = 0) {
    return hashedOn(hashBegun({bytes, seed}), bytes);
}

// The same of four texts at a time: each step of one waits for the step before it, and four fill the wait.
inline std::array<std::uint64_t, 4> hashesOf(const std::array<Hashed, 4>& texts) {
    std::size_t together = texts[0].bytes.size();
    for (const Hashed& text : texts)
        together = std::min(together, text.bytes.size());
    together -= together % 8;
    const char *const a = texts[0].bytes.data(), *const b = texts[1].bytes.data(), *const c = texts[2].bytes.data(),
                      *const d = texts[3].bytes.data();
    std::uint64_t hashA = hashBegun(texts[0]), hashB = hashBegun(texts[1]), hashC = hashBegun(texts[2]),
                  hashD = hashBegun(texts[3]);
    for (std::size_t at = 0; at < together; at += 8) {
        hashA = mixed(hashA ^ wordAt(a + at));
        hashB = mixed(hashB ^ wordAt(b + at));
        hashC = mixed(hashC ^ wordAt(c + at));
        hashD = mixed(hashD ^ wordAt(d + at));
    }
    std::array<std::uint64_t, 4> hashes{hashA, hashB, hashC, hashD};
    for (std::size_t i = 0; i < hashes.size(); ++i)
        hashes[i] = hashedOn(hashes[i], texts[i].bytes.substr(together));
    return hashes;
}

} // namespace panside
