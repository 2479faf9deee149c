#include "core/probe/line_fields.h"

#include "core/probe/json_line.h"
#include "core/quantity/enum_count.h"
#include "core/quantity/unit.h"
#include "core/words/trimmed.h"

#include <algorithm>

namespace panside {
namespace {

static_assert(hasCount<Refusal, refusalCount>());

constexpr std::string_view encodingNames[] = {"columns", "pairs", "json"};

constexpr bool isBlank(char c) { return c == ' ' || c == '\t'; }
constexpr bool isDigit(char c) { return c >= '0' && c <= '9'; }
constexpr bool isLetter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_'; }
constexpr bool separatesPairs(char c) { return isBlank(c) || c == ',' || c == ';'; }

std::size_t skipBlanks(std::string_view text, std::size_t at) {
    while (at < text.size() && isBlank(text[at]))
        ++at;
    return at;
}

// 103,42: digits, one comma, digits, perhaps a sign before them.
bool isDecimalComma(std::string_view token) {
    if (!token.empty() && (token.front() == '-' || token.front() == '+'))
        token.remove_prefix(1);
    const auto comma = token.find(',');
    if (comma == std::string_view::npos || comma == 0 || comma + 1 == token.size())
        return false;
    return std::all_of(token.begin(), token.begin() + static_cast<std::ptrdiff_t>(comma), isDigit) &&
           std::all_of(token.begin() + static_cast<std::ptrdiff_t>(comma) + 1, token.end(), isDigit);
}

// "103,42;318,5" and "103,42 318,5": commas that belong to numbers, not between them.
bool writesDecimalCommas(std::string_view line) {
    bool any = false;
    for (std::size_t at = 0; at < line.size();) {
        while (at < line.size() && (isBlank(line[at]) || line[at] == ';'))
            ++at;
        const auto begin = at;
        while (at < line.size() && !isBlank(line[at]) && line[at] != ';')
            ++at;
        if (begin == at)
            break;
        const auto token = line.substr(begin, at - begin);
        if (isDecimalComma(token))
            any = true;
        else if (token.find(',') != std::string_view::npos || !numberIn(token))
            return false;
    }
    return any;
}

// A column that names itself is a pair: the line is of the other kind. A time of day (21:04:05) is a plain word.
bool looksLikePair(std::string_view column) {
    return !column.empty() && isLetter(column.front()) && column.find(':') != std::string_view::npos;
}

} // namespace

std::string_view nameOf(Encoding encoding) { return encodingNames[static_cast<std::size_t>(encoding)]; }

std::string_view refusalText(Refusal refusal) {
    switch (refusal) {
    case Refusal::none:
        return "";
    case Refusal::tooLong:
        return "no line end came";
    case Refusal::notText:
        return "not text: noise on the line, or another speed than the probe's";
    case Refusal::checksumWrong:
        return "the checksum does not fit";
    case Refusal::checksumMissing:
        return "no checksum, and the probe file demands one";
    case Refusal::malformed:
        return "cut off or garbled";
    case Refusal::unrecognised:
        return "neither columns, nor pairs, nor a JSON object";
    case Refusal::decimalComma:
        return "numbers are written with a comma; have the probe write points";
    case Refusal::cutOff:
        return "joined midway, or with a different number of columns than the line before";
    case Refusal::nameTwice:
        return "one name is there twice";
    case Refusal::tooManyFields:
        return "more than 64 fields";
    case Refusal::otherShape:
        return "a different number of columns than this port's lines had, so which is which is not known: look at the "
               "instrument, then at the probes' set-up";
    }
    return "";
}

Refusal LineFields::split(std::string_view line, Encoding encoding) {
    count_ = 0;
    namesUsed_ = 0;
    Refusal refusal = Refusal::none;
    switch (encoding) {
    case Encoding::columns:
        refusal = columns(line);
        break;
    case Encoding::pairs:
        refusal = pairs(line);
        break;
    case Encoding::json:
        refusal = json(line);
        break;
    }
    if (refusal != Refusal::none)
        count_ = 0;
    return refusal;
}

LineFields::Recognised LineFields::recognise(std::string_view line) {
    LineFields fields;
    Refusal why = Refusal::unrecognised;
    for (const Encoding encoding : {Encoding::json, Encoding::pairs, Encoding::columns}) {
        const Refusal refusal = fields.split(line, encoding);
        // Words alone make no columns: they are a greeting, or a heading.
        const auto isNumber = [](const Field& field) { return field.number.has_value(); };
        if (refusal == Refusal::none &&
            (encoding != Encoding::columns || std::ranges::any_of(fields.fields(), isNumber)))
            return {encoding, Refusal::none};
        if (refusal != Refusal::none && refusal != Refusal::malformed)
            why = refusal;
    }
    return {std::nullopt, why};
}

Refusal LineFields::add(std::string_view name, std::string_view text) {
    if (count_ == most)
        return Refusal::tooManyFields;
    fields_[count_++] = Field{name, text, numberIn(text)};
    return Refusal::none;
}

Refusal LineFields::addNamed(std::string_view name, std::string_view text) {
    for (std::size_t i = 0; i < count_; ++i)
        if (fields_[i].name == name)
            return Refusal::nameTwice;
    return add(name, text);
}

Refusal LineFields::columns(std::string_view line) {
    bool comma = false, semicolon = false, blank = false;
    for (const char c : line) {
        if (c == '=' || c == '{' || c == '}' || c == '"')
            return Refusal::malformed;
        comma |= c == ',';
        semicolon |= c == ';';
        blank |= isBlank(c);
    }
    if (comma && (semicolon || blank) && writesDecimalCommas(line))
        return Refusal::decimalComma;
    const Refusal refusal = semicolon                                   ? splitAt(line, ';')
                            : comma                                     ? splitAt(line, ',')
                            : line.find('\t') != std::string_view::npos ? splitAt(line, '\t')
                                                                        : splitAtBlanks(line);
    if (refusal == Refusal::none && std::ranges::any_of(fields(), [](const Field& f) { return looksLikePair(f.text); }))
        return Refusal::malformed;
    return refusal;
}

Refusal LineFields::splitAt(std::string_view line, char separator) {
    while (true) {
        const auto end = line.find(separator);
        if (const Refusal refusal = add({}, trimmed(line.substr(0, end))); refusal != Refusal::none)
            return refusal;
        if (end == std::string_view::npos)
            return Refusal::none;
        line.remove_prefix(end + 1);
    }
}

Refusal LineFields::splitAtBlanks(std::string_view line) {
    for (std::size_t at = skipBlanks(line, 0); at < line.size(); at = skipBlanks(line, at)) {
        const auto begin = at;
        while (at < line.size() && !isBlank(line[at]))
            ++at;
        if (const Refusal refusal = add({}, line.substr(begin, at - begin)); refusal != Refusal::none)
            return refusal;
    }
    return Refusal::none;
}

// name=value, name: value, name = value; a value may be empty, also with the next pair after a blank ("syrup=
// stack=318").
Refusal LineFields::pairs(std::string_view line) {
    const auto nameEnd = [&](std::size_t at) {
        while (at < line.size() && !separatesPairs(line[at]) && line[at] != '=' && line[at] != ':')
            ++at;
        return at;
    };
    const auto binds = [&](std::size_t at) { return at < line.size() && (line[at] == '=' || line[at] == ':'); };
    for (std::size_t at = 0; at < line.size();) {
        if (separatesPairs(line[at])) {
            ++at;
            continue;
        }
        const auto end = nameEnd(at);
        const auto name = line.substr(at, end - at);
        at = skipBlanks(line, end);
        if (name.empty() || !binds(at) || name.find_first_of("{}\"[]") != std::string_view::npos)
            return Refusal::malformed;
        if (line[at] == ':' && !isLetter(name.front()))
            return Refusal::malformed;
        ++at;
        const auto value = skipBlanks(line, at);
        auto valueEnd = value;
        while (valueEnd < line.size() && !separatesPairs(line[valueEnd]))
            ++valueEnd;
        // After a blank, what binds a value of its own is the next name, and this value is empty.
        if (value > at && value < line.size() && isLetter(line[value]) && binds(skipBlanks(line, nameEnd(value))))
            valueEnd = value;
        if (const Refusal refusal = addNamed(name, line.substr(value, valueEnd - value)); refusal != Refusal::none)
            return refusal;
        at = valueEnd;
    }
    return count_ > 0 ? Refusal::none : Refusal::malformed;
}

Refusal LineFields::json(std::string_view line) {
    JsonLine object{line};
    while (const auto member = object.next()) {
        const auto name = member->nameEscaped ? unescaped(member->name) : member->name;
        // What lies in an object or a list of its own is no channel: passed over.
        if (member->nested)
            continue;
        if (const Refusal refusal = addNamed(name, member->text); refusal != Refusal::none)
            return refusal;
    }
    return object.whole() ? Refusal::none : Refusal::malformed;
}

std::string_view LineFields::unescaped(std::string_view raw) {
    if (namesUsed_ == most)
        return raw;
    return names_[namesUsed_++] = jsonUnescaped(raw);
}

} // namespace panside
