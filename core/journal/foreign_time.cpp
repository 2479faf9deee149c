#include "core/journal/foreign_time.h"

#include "core/boil/shift_log.h"
#include "core/quantity/enum_count.h"
#include "core/words/trimmed.h"

#include <array>
#include <charconv>
#include <chrono>
#include <cmath>

namespace panside {
namespace {

static_assert(hasCount<TimeForm, timeFormCount>());

// Reads from the front of a text; what does not fit leaves `good` false.
struct TimeReader {
    std::string_view rest;
    bool good = true;

    int number(std::size_t most) {
        std::size_t digits = 0;
        int value = 0;
        while (digits < most && digits < rest.size() && rest[digits] >= '0' && rest[digits] <= '9')
            value = 10 * value + (rest[digits++] - '0');
        good = good && digits > 0;
        rest.remove_prefix(digits);
        return value;
    }
    bool one(std::string_view of) {
        if (rest.empty() || of.find(rest.front()) == std::string_view::npos)
            return false;
        rest.remove_prefix(1);
        return true;
    }
    void must(std::string_view of) { good = one(of) && good; }
    void blanks() {
        while (one(" \t"))
            ;
    }
};

std::int64_t microseconds(TimeReader& reader) {
    std::int64_t value = 0, unit = 100'000;
    bool any = false;
    while (!reader.rest.empty() && reader.rest.front() >= '0' && reader.rest.front() <= '9') {
        value += unit * (reader.rest.front() - '0');
        unit /= 10;
        reader.rest.remove_prefix(1);
        any = true;
    }
    reader.good = reader.good && any;
    return value;
}

char lower(char letter) { return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter + 32) : letter; }

// AM, PM, a.m., p: half a day on, or not at all.
void half(TimeReader& reader, ShownTime& shown) {
    reader.blanks();
    if (reader.rest.empty())
        return;
    const char which = lower(reader.rest.front());
    if (which != 'a' && which != 'p')
        return;
    reader.rest.remove_prefix(1);
    reader.one(".");
    reader.one("mM");
    reader.one(".");
    reader.good = reader.good && shown.hour >= 1 && shown.hour <= 12;
    shown.hour = shown.hour % 12 + (which == 'p' ? 12 : 0);
}

bool exists(const ShownTime& shown) {
    using namespace std::chrono;
    // A month of 257 would be kept as 1.
    if (shown.month > 12 || shown.day > 31)
        return false;
    const year_month_day date{year{shown.year}, month{static_cast<unsigned>(shown.month)},
                              day{static_cast<unsigned>(shown.day)}};
    return date.ok() && shown.hour < 24 && shown.minute < 60 && shown.second < 60;
}

Instant asUtc(const ShownTime& shown) {
    using namespace std::chrono;
    const sys_days date{year{shown.year} / month{static_cast<unsigned>(shown.month)} /
                        day{static_cast<unsigned>(shown.day)}};
    return date + hours{shown.hour} + minutes{shown.minute} + std::chrono::seconds{shown.second} +
           std::chrono::microseconds{shown.microsecond};
}

std::optional<Duration> offsetIn(TimeReader& reader) {
    if (reader.one("Zz"))
        return Duration{0};
    if (reader.rest.empty() || (reader.rest.front() != '+' && reader.rest.front() != '-'))
        return std::nullopt;
    const bool behind = reader.rest.front() == '-';
    reader.rest.remove_prefix(1);
    const int hour = reader.number(2);
    reader.one(":");
    const int minute = reader.number(2);
    reader.good = reader.good && hour <= 14 && minute < 60;
    return Duration{(behind ? -60.0 : 60.0) * (60 * hour + minute)};
}

std::optional<std::variant<Instant, ShownTime>> unixTime(std::string_view text, double perSecond) {
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    // From 1970 to 2200: a number of another kind (a count of days, milliseconds taken for seconds) is none.
    if (error != std::errc{} || end != text.data() + text.size() || !(number >= 0 && number / perSecond <= 7.26e9))
        return std::nullopt;
    return Instant{std::chrono::microseconds{std::llround(number / perSecond * 1e6)}};
}

} // namespace

std::string_view exampleOf(TimeForm form) {
    static constexpr std::array<std::string_view, timeFormCount> examples{
        "2026-03-14 18:42:07", "3/14/2026 6:42:07 PM", "14.03.2026 18:42:07", "1773513727", "1773513727000"};
    return examples.at(static_cast<std::size_t>(form));
}

std::optional<std::variant<Instant, ShownTime>> foreignTimeIn(std::string_view text, TimeForm form) {
    text = trimmed(text);
    if (form == TimeForm::unixSeconds || form == TimeForm::unixMilliseconds)
        return unixTime(text, form == TimeForm::unixSeconds ? 1 : 1000);
    TimeReader reader{text};
    std::array<int, 3> date{};
    for (std::size_t i = 0; i < 3; ++i) {
        date[i] = reader.number(4);
        if (i < 2)
            reader.must("-/.");
    }
    ShownTime shown{};
    if (form == TimeForm::yearFirst)
        shown = {date[0], date[1], date[2], 0, 0, 0, 0};
    else if (form == TimeForm::monthFirst)
        shown = {date[2], date[0], date[1], 0, 0, 0, 0};
    else
        shown = {date[2], date[1], date[0], 0, 0, 0, 0};
    if (shown.year < 100)
        shown.year += 2000;
    reader.one(",");
    if (!reader.one("Tt"))
        reader.blanks();
    shown.hour = reader.number(2);
    reader.must(":.h");
    shown.minute = reader.number(2);
    if (reader.one(":."))
        shown.second = reader.number(2);
    if (reader.one(".,"))
        shown.microsecond = microseconds(reader);
    half(reader, shown);
    reader.blanks();
    const auto offset = offsetIn(reader);
    if (!reader.good || !reader.rest.empty() || !exists(shown))
        return std::nullopt;
    if (offset)
        return asUtc(shown) - std::chrono::round<std::chrono::microseconds>(*offset);
    return shown;
}

} // namespace panside
