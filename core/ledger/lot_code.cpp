#include "core/ledger/lot_code.h"

#include <fmt/format.h>

namespace panside {
namespace {

void put(std::string& text, std::string_view what, const std::string& by) {
    for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += by.size())
        text.replace(at, what.size(), by);
}

} // namespace

std::string lotCode(std::string_view scheme, std::chrono::year_month_day day, std::string_view vessel,
                    const std::function<bool(std::string_view)>& taken) {
    const auto year = static_cast<int>(day.year());
    const auto first = std::chrono::sys_days{day.year() / 1 / 1};
    std::string name;
    for (const char c : vessel)
        if (c != ' ')
            name += c;
    std::string code{scheme.empty() ? usualLotScheme : scheme};
    put(code, "{yyyy}", fmt::format("{:04}", year));
    put(code, "{yy}", fmt::format("{:02}", year % 100));
    put(code, "{ddd}", fmt::format("{:03}", (std::chrono::sys_days{day} - first).count() + 1));
    put(code, "{mm}", fmt::format("{:02}", static_cast<unsigned>(day.month())));
    put(code, "{dd}", fmt::format("{:02}", static_cast<unsigned>(day.day())));
    put(code, "{v}", name);
    const bool numbered = code.find("{n}") != std::string::npos;
    for (int number = 1;; ++number) {
        std::string one = code;
        if (numbered)
            put(one, "{n}", std::to_string(number));
        else if (number > 1)
            one += "-" + std::to_string(number);
        if (!taken(one))
            return one;
    }
}

} // namespace panside
