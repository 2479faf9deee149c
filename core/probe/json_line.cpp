#include "core/probe/json_line.h"

#include <charconv>

namespace panside {

std::optional<JsonLine::Member> JsonLine::next() {
    if (state_ == State::ended || state_ == State::broken)
        return std::nullopt;
    skipBlanks();
    if (state_ == State::begin && !skip('{'))
        return broken();
    skipBlanks();
    if (skip('}')) {
        skipBlanks();
        state_ = at_ == line_.size() ? State::ended : State::broken;
        return std::nullopt;
    }
    if (state_ == State::inside && !skip(','))
        return broken();
    state_ = State::inside;
    skipBlanks();
    Member member{};
    const auto name = string(member.nameEscaped);
    skipBlanks();
    if (!name || !skip(':'))
        return broken();
    member.name = *name;
    skipBlanks();
    if (at_ == line_.size())
        return broken();
    if (const char c = line_[at_]; c == '{' || c == '[') {
        member.nested = true;
        if (!skipNested())
            return broken();
    } else if (c == '"') {
        bool escaped = false;
        const auto text = string(escaped);
        if (!text)
            return broken();
        member.text = *text;
    } else {
        member.text = bare();
    }
    skipBlanks();
    if (at_ == line_.size() || (line_[at_] != ',' && line_[at_] != '}'))
        return broken();
    return member;
}

std::optional<JsonLine::Member> JsonLine::broken() {
    state_ = State::broken;
    return std::nullopt;
}

void JsonLine::skipBlanks() {
    while (at_ < line_.size() && (line_[at_] == ' ' || line_[at_] == '\t'))
        ++at_;
}

bool JsonLine::skip(char c) {
    if (at_ == line_.size() || line_[at_] != c)
        return false;
    ++at_;
    return true;
}

std::optional<std::string_view> JsonLine::string(bool& escaped) {
    escaped = false;
    if (!skip('"'))
        return std::nullopt;
    const auto begin = at_;
    while (at_ < line_.size() && line_[at_] != '"') {
        if (line_[at_] == '\\') {
            escaped = true;
            ++at_;
        }
        ++at_;
    }
    if (at_ >= line_.size())
        return std::nullopt;
    return line_.substr(begin, at_++ - begin);
}

bool JsonLine::skipNested() {
    std::size_t depth = 0;
    bool escaped = false;
    while (at_ < line_.size()) {
        const char c = line_[at_];
        if (c == '"') {
            if (!string(escaped))
                return false;
            continue;
        }
        ++at_;
        if (c == '{' || c == '[')
            ++depth;
        else if ((c == '}' || c == ']') && --depth == 0)
            return true;
    }
    return false;
}

std::string_view JsonLine::bare() {
    const auto begin = at_;
    while (at_ < line_.size() && std::string_view{" \t,}]{[\":"}.find(line_[at_]) == std::string_view::npos)
        ++at_;
    return line_.substr(begin, at_ - begin);
}

std::string jsonUnescaped(std::string_view raw) {
    std::string plain;
    for (std::size_t i = 0; i < raw.size(); ++i) {
        if (raw[i] != '\\' || i + 1 == raw.size()) {
            plain += raw[i];
            continue;
        }
        const char c = raw[++i];
        if (c == 'u' && i + 4 < raw.size()) {
            unsigned code = 0;
            const auto* first = raw.data() + i + 1;
            const auto [end, error] = std::from_chars(first, first + 4, code, 16);
            plain += error == std::errc{} && end == first + 4 && code < 0x80 ? static_cast<char>(code) : '?';
            i += 4;
        } else {
            constexpr std::string_view letters = "nrtbf", meant = "\n\r\t\b\f";
            const auto found = letters.find(c);
            plain += found == std::string_view::npos ? c : meant[found];
        }
    }
    return plain;
}

} // namespace panside
