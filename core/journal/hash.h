#pragma once
// A 64-bit hash for what lies on disk: to notice damage that SQLite itself does not look for, and to tell whether two
// shifts hold the same facts. No protection against ill will. Values are kept on disk: never change it.
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

// Bytes are taken as little-endian words; every machine Panside runs on is one.
inline std::uint64_t hashOf(std::string_view bytes, std::uint64_t seed = 0) {
    std::uint64_t hash = mixed(seed ^ (bytes.size() * 0x9e3779b97f4a7c15U));
    while (bytes.size() >= 8) {
        std::uint64_t word = 0;
        std::memcpy(&word, bytes.data(), 8);
        hash = mixed(hash ^ word);
        bytes.remove_prefix(8);
    }
    std::uint64_t rest = 0;
    std::memcpy(&rest, bytes.data(), bytes.size());
    return mixed(hash ^ rest);
}

} // namespace panside
