#pragma once
// One flat JSON object in one line (RFC 8259), member by member, without allocating. A general reader costs several
// times a line's whole budget. Two things that probes do are taken beyond the standard: a bare word such as nan, and no
// value.
#include <optional>
#include <string>
#include <string_view>

namespace panside {

class JsonLine {
public:
    explicit JsonLine(std::string_view line) : line_{line} {}

    struct Member {
        std::string_view name; // as written, between the quotes
        bool nameEscaped;      // a backslash stands in it: jsonUnescaped() spells it out
        std::string_view text; // a number, a word, a string's inside; empty for a nested value
        bool nested;           // an object or a list, passed over
    };
    // The next member; nullopt after the last one, and where the line is no JSON object.
    std::optional<Member> next();
    // After next() gave nullopt: was the line one whole object and nothing after it?
    bool whole() const { return state_ == State::ended; }

private:
    enum class State { begin, inside, ended, broken };
    std::optional<Member> broken();
    void skipBlanks();
    bool skip(char c);
    std::optional<std::string_view> string(bool& escaped);
    bool skipNested();
    std::string_view bare();

    std::string_view line_;
    std::size_t at_ = 0;
    State state_ = State::begin;
};

// The inside of a JSON string, its backslashes spelled out; a \u past ASCII becomes '?' (names here are ASCII).
std::string jsonUnescaped(std::string_view raw);

} // namespace panside
