#include "core/lookin/request.h"

#include <algorithm>
#include <cctype>

namespace panside {
namespace {

bool isToken(std::string_view word) {
    return !word.empty() && std::ranges::all_of(word, [](unsigned char c) {
        return std::isalnum(c) != 0 ||
               std::string_view{"!#$%&'*+-.^_`|~"}.find(static_cast<char>(c)) != std::string_view::npos;
    });
}

bool isTarget(std::string_view target) {
    return !target.empty() && target.front() == '/' &&
           std::ranges::all_of(target, [](unsigned char c) { return c > 0x20 && c < 0x7f; });
}

bool same(std::string_view a, std::string_view lower) {
    return std::equal(a.begin(), a.end(), lower.begin(), lower.end(),
                      [](unsigned char x, unsigned char y) { return std::tolower(x) == y; });
}

// 0, or the status of what is wrong with a field. A body is never wanted, and two ways to say its length are how
// requests are smuggled.
int faultOf(std::string_view line) {
    const auto colon = line.find(':');
    if (colon == std::string_view::npos || !isToken(line.substr(0, colon)))
        return 400;
    const auto name = line.substr(0, colon);
    auto value = line.substr(colon + 1);
    value.remove_prefix(std::min(value.find_first_not_of(" \t"), value.size()));
    value = value.substr(0, value.find_last_not_of(" \t") + 1);
    if (same(name, "transfer-encoding") || (same(name, "content-length") && value != "0"))
        return 413;
    const auto isControl = [](unsigned char c) { return (c < 0x20 && c != '\t') || c == 0x7f; };
    return std::ranges::any_of(value, isControl) ? 400 : 0;
}

std::variant<LookRequest, Refusal> firstLine(std::string_view line) {
    const auto one = line.find(' ');
    const auto two = line.rfind(' ');
    if (one == std::string_view::npos || two == one)
        return Refusal{400};
    const auto method = line.substr(0, one), target = line.substr(one + 1, two - one - 1), form = line.substr(two + 1);
    if (!isToken(method) || !isTarget(target))
        return Refusal{400};
    if (form != "HTTP/1.1" && form != "HTTP/1.0")
        return Refusal{form.starts_with("HTTP/") ? 505 : 400};
    if (method != "GET" && method != "HEAD")
        return Refusal{405};
    return LookRequest{method == "GET", std::string{target}};
}

} // namespace

std::optional<std::variant<LookRequest, Refusal>> requestIn(std::string_view received) {
    constexpr std::string_view ending = "\r\n\r\n", lineEnd = "\r\n";
    const auto end = received.substr(0, greatestHead).find(ending);
    if (end == std::string_view::npos) {
        if (received.size() >= greatestHead)
            return Refusal{431};
        return std::nullopt;
    }
    auto head = received.substr(0, end);
    const auto cut = std::min(head.find(lineEnd), head.size());
    auto request = firstLine(head.substr(0, cut));
    if (std::holds_alternative<Refusal>(request))
        return request;
    for (head.remove_prefix(cut); !head.empty();) {
        head.remove_prefix(lineEnd.size());
        const auto line = head.substr(0, head.find(lineEnd));
        if (const int fault = faultOf(line))
            return Refusal{fault};
        head.remove_prefix(line.size());
    }
    return request;
}

} // namespace panside
