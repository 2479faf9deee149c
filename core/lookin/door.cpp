#include "core/lookin/door.h"

#include <QRandomGenerator>
#include <algorithm>
#include <array>

namespace panside {

std::string newKey() {
    std::array<quint32, 4> bits{};
    QRandomGenerator::system()->fillRange(bits.data(), static_cast<qsizetype>(bits.size()));
    constexpr std::string_view digits = "0123456789abcdef";
    std::string key;
    for (const quint32 word : bits)
        for (int shift = 28; shift >= 0; shift -= 4)
            key += digits[(word >> shift) & 0xFU];
    return key;
}

bool Door::isRight(std::string_view key) const {
    unsigned differs = key.size() == key_.size() && !key_.empty() ? 0 : 1;
    for (std::size_t i = 0; i < key_.size(); ++i) {
        const auto theirs = static_cast<unsigned char>(i < key.size() ? key[i] : '\0');
        differs |= static_cast<unsigned>(theirs ^ static_cast<unsigned char>(key_[i]));
    }
    return differs == 0;
}

// As many addresses as there may be in a house, and no more: whoever makes addresses up does not fill the memory.
void Door::forget(double now) {
    constexpr std::size_t addresses = 256;
    for (auto& [address, times] : wrong_)
        while (!times.empty() && now - times.front() >= minute)
            times.pop_front();
    std::erase_if(wrong_, [](const auto& one) { return one.second.empty(); });
    while (wrong_.size() > addresses) // whose last try is the longest ago
        wrong_.erase(std::ranges::min_element(
            wrong_, [](const auto& a, const auto& b) { return a.second.back() < b.second.back(); }));
}

void Door::wrong(const std::string& address, double now) {
    auto& times = wrong_[address];
    if (times.size() < wrongAMinute)
        times.push_back(now);
    forget(now);
}

bool Door::waits(const std::string& address, double now) {
    forget(now);
    const auto known = wrong_.find(address);
    return known != wrong_.end() && known->second.size() >= wrongAMinute;
}

} // namespace panside
