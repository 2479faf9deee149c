#include "core/boil/decimals.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>

namespace panside {

// The product is off by less than one part in 2^52: where it lies nearer to a tie than that, it is left to others.
bool appendDecimals(std::string& out, double value, int decimals) {
    constexpr std::array<std::uint64_t, 5> powers{1, 10, 100, 1000, 10000};
    const std::uint64_t one = powers[static_cast<std::size_t>(decimals)];
    const double size = std::abs(value) * static_cast<double>(one);
    if (!(size < 1e15))
        return false;
    const double below = std::floor(size), over = size - below;
    if (std::abs(over - 0.5) <= size * 0x1p-52)
        return false;
    const std::uint64_t rounded = static_cast<std::uint64_t>(below) + (over > 0.5 ? 1 : 0);
    std::array<char, 24> buffer; // filled as far as it is used
    char* end = buffer.data();
    if (value < 0 && rounded > 0)
        *end++ = '-';
    end = std::to_chars(end, buffer.data() + buffer.size(), rounded / one).ptr;
    std::uint64_t rest = rounded % one;
    if (rest > 0)
        *end++ = '.';
    for (std::uint64_t place = one / 10; rest > 0; place /= 10) {
        *end++ = static_cast<char>('0' + rest / place);
        rest %= place;
    }
    out.append(buffer.data(), end);
    return true;
}

} // namespace panside
