// RFC 3339 times of the shift log. Read by hand, because a log of a night holds a quarter of a million of them.
#include "core/boil/shift_log.h"

#include <algorithm>
#include <array>

namespace panside {
namespace {

constexpr int notADigit = -1;

// `count` digits at `at`, or notADigit.
int digits(std::string_view text, std::size_t at, std::size_t count) {
    int value = 0;
    for (std::size_t i = at; i < at + count; ++i) {
        if (text[i] < '0' || text[i] > '9')
            return notADigit;
        value = value * 10 + (text[i] - '0');
    }
    return value;
}

// What follows the seconds: a fraction of up to six digits, taken off `text`; microseconds.
std::optional<int> fractionIn(std::string_view& text) {
    if (text.empty() || text.front() != '.')
        return 0;
    text.remove_prefix(1);
    int microseconds = 0;
    std::size_t count = 0;
    while (count < text.size() && text[count] >= '0' && text[count] <= '9') {
        if (count == 6)
            return std::nullopt;
        microseconds = microseconds * 10 + (text[count++] - '0');
    }
    if (count == 0)
        return std::nullopt;
    text.remove_prefix(count);
    for (std::size_t i = count; i < 6; ++i)
        microseconds *= 10;
    return microseconds;
}

// Z or a numeric offset, the whole of `text`; minutes east.
std::optional<int> zoneIn(std::string_view text) {
    if (text == "Z" || text == "z")
        return 0;
    if (text.size() != 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':')
        return std::nullopt;
    const int hours = digits(text, 1, 2);
    const int minutes = digits(text, 4, 2);
    if (hours < 0 || hours > 23 || minutes < 0 || minutes > 59)
        return std::nullopt;
    return (text[0] == '-' ? -1 : 1) * (hours * 60 + minutes);
}

} // namespace

std::optional<Instant> instantIn(std::string_view text) {
    using namespace std::chrono;
    constexpr std::size_t wholeSeconds = 19;
    if (text.size() <= wholeSeconds || text[4] != '-' || text[7] != '-' || text[13] != ':' || text[16] != ':' ||
        (text[10] != 'T' && text[10] != 't' && text[10] != ' '))
        return std::nullopt;
    const int y = digits(text, 0, 4), mo = digits(text, 5, 2), d = digits(text, 8, 2);
    const int h = digits(text, 11, 2), mi = digits(text, 14, 2), s = digits(text, 17, 2);
    if (y < 0 || mo < 1 || d < 1 || h < 0 || h > 23 || mi < 0 || mi > 59 || s < 0 || s > 60)
        return std::nullopt;
    const year_month_day date{year{y}, month{static_cast<unsigned>(mo)}, day{static_cast<unsigned>(d)}};
    text.remove_prefix(wholeSeconds);
    const auto fraction = fractionIn(text);
    const auto zone = fraction ? zoneIn(text) : std::nullopt;
    if (!date.ok() || !zone)
        return std::nullopt;
    const auto minute = sys_days{date} + hours{h} + minutes{mi} - minutes{*zone};
    // A leap second can only stand at the end of a UTC day; the shift's clock counts none, so it is the next day's
    // first.
    if (s == 60 && minute - floor<days>(minute) != hours{23} + minutes{59})
        return std::nullopt;
    return minute + std::chrono::seconds{s} + microseconds{*fraction};
}

std::string textOf(Instant at) {
    using namespace std::chrono;
    at = std::clamp(at, Instant{sys_days{year{0} / 1 / 1}},
                    Instant{sys_days{year{9999} / 12 / 31} + std::chrono::seconds{86399}});
    const auto day = floor<days>(at);
    const year_month_day date{day};
    const auto sinceMidnight = (at - day).count();
    const auto put = [](char* to, long long value, int count) {
        for (int i = count - 1; i >= 0; --i, value /= 10)
            to[i] = static_cast<char>('0' + value % 10);
    };
    std::array<char, 28> out{};
    const long long second = sinceMidnight / 1000000;
    put(out.data(), static_cast<int>(date.year()), 4);
    put(out.data() + 5, static_cast<unsigned>(date.month()), 2);
    put(out.data() + 8, static_cast<unsigned>(date.day()), 2);
    put(out.data() + 11, second / 3600, 2);
    put(out.data() + 14, second / 60 % 60, 2);
    put(out.data() + 17, second % 60, 2);
    out[4] = out[7] = '-';
    out[10] = 'T';
    out[13] = out[16] = ':';
    std::size_t length = 19;
    if (const long long fraction = sinceMidnight % 1000000; fraction != 0) {
        out[19] = '.';
        put(out.data() + 20, fraction, 6);
        length = 26;
        while (out[length - 1] == '0')
            --length;
    }
    out[length++] = 'Z';
    return {out.data(), length};
}

} // namespace panside
