#pragma once
// The head of a request, as far as the look in answers any: GET and HEAD of a path, no body (RFC 9112, section 2 and
// 3).
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace panside {

inline constexpr std::size_t greatestHead = std::size_t{16} * 1024; // bytes, with the empty line that ends it

struct LookRequest {
    bool bodyWanted; // GET; without: HEAD
    std::string path;
    bool operator==(const LookRequest&) const = default;
};
// An HTTP status that says what is wrong: 400, 405, 413, 431, 505.
struct Refusal {
    int status;
    bool operator==(const Refusal&) const = default;
};

// What was received so far; nothing: the head goes on.
std::optional<std::variant<LookRequest, Refusal>> requestIn(std::string_view received);

} // namespace panside
