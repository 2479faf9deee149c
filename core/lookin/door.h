#pragma once
// Who is let in: whoever has the key. Pure: the time is told.
#include <cstddef>
#include <deque>
#include <map>
#include <string>
#include <string_view>

namespace panside {

// 128 random bits as 32 hexadecimal digits, from the system's own generator.
std::string newKey();

class Door {
public:
    static constexpr std::size_t wrongAMinute = 10; // from one address; then it waits
    static constexpr double minute = 60;            // seconds

    explicit Door(std::string key) : key_{std::move(key)} {}
    // The whole of both is compared whatever differs: how long it takes tells nothing.
    bool isRight(std::string_view key) const;
    void wrong(const std::string& address, double now); // seconds of a clock that never jumps
    // The address has tried too often: nothing it asks is looked at.
    bool waits(const std::string& address, double now);
    const std::string& key() const { return key_; }

private:
    void forget(double now);
    std::string key_;
    std::map<std::string, std::deque<double>> wrong_; // when, by address
};

} // namespace panside
