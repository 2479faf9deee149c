#include "core/boil/detail.h"

#include "core/boil/shift_log.h"

namespace panside {
namespace {

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t'))
        text.remove_prefix(1);
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t'))
        text.remove_suffix(1);
    return text;
}

// Reads a quoted value at the front of `text` and takes it off; nullopt where the quote does not close.
std::optional<std::string> quotedIn(std::string_view& text) {
    std::string value;
    for (std::size_t i = 1; i < text.size(); ++i) {
        if (text[i] != '"') {
            value += text[i];
        } else if (i + 1 < text.size() && text[i + 1] == '"') {
            value += text[i++];
        } else {
            text.remove_prefix(i + 1);
            return value;
        }
    }
    return std::nullopt;
}

void appendQuoted(std::string& out, std::string_view value) {
    out += '"';
    for (const char c : value) {
        if (c == '"')
            out += '"';
        out += c;
    }
    out += '"';
}

} // namespace

std::optional<std::string> Detail::read(std::string_view text) {
    while (!(text = trimmed(text)).empty()) {
        const auto equals = text.find('=');
        const auto semicolon = text.find(';');
        if (semicolon == 0) {
            text.remove_prefix(1);
            continue;
        }
        const std::string_view whole = trimmed(text.substr(0, semicolon));
        const std::string_view key = trimmed(text.substr(0, equals));
        if (equals == std::string_view::npos || equals > semicolon || key.empty())
            return std::string{whole};
        for (const Pair& pair : pairs_)
            if (pair.key == key)
                return std::string{whole};
        text = trimmed(text.substr(equals + 1));
        if (!text.empty() && text.front() == '"') {
            auto value = quotedIn(text);
            text = trimmed(text);
            if (!value || (!text.empty() && text.front() != ';'))
                return std::string{whole};
            pairs_.push_back({key, std::move(*value)});
        } else {
            const auto end = text.find(';');
            pairs_.push_back({key, std::string{trimmed(text.substr(0, end))}});
            text = end == std::string_view::npos ? std::string_view{} : text.substr(end);
        }
    }
    return std::nullopt;
}

std::optional<std::string> Detail::use(std::string_view key) {
    for (Pair& pair : pairs_)
        if (pair.key == key) {
            pair.taken = true;
            return pair.value;
        }
    return std::nullopt;
}

std::string Detail::rest() const {
    std::string out;
    for (const Pair& pair : pairs_)
        if (!pair.taken)
            appendPair(out, pair.key, pair.value);
    return out;
}

void appendPair(std::string& detail, std::string_view key, std::string_view value) {
    if (!detail.empty())
        detail += ';';
    detail.append(key);
    detail += '=';
    const bool plain =
        value.find(';') == std::string_view::npos && value == trimmed(value) && (value.empty() || value.front() != '"');
    if (plain)
        detail.append(value);
    else
        appendQuoted(detail, value);
}

NoteDetail noteIn(std::string_view detail) {
    NoteDetail note;
    if (!detail.empty() && detail.front() == '"') {
        std::string_view rest = detail;
        if (auto text = quotedIn(rest); text && (rest.empty() || rest.front() == ';')) {
            Detail pairs;
            if (!pairs.read(rest)) {
                note.by = pairs.use("by").value_or("");
                note.entered = pairs.use("entered").value_or("");
                if (pairs.rest().empty()) {
                    note.text = std::move(*text);
                    return note;
                }
                note = {};
            }
        }
    }
    // From the end, each key once: the text before them stays as it was typed.
    while (true) {
        const auto cut = detail.rfind(';');
        const std::string_view last = trimmed(cut == std::string_view::npos ? detail : detail.substr(cut + 1));
        if (note.by.empty() && last.starts_with("by=") && last.size() > 3)
            note.by = trimmed(last.substr(3));
        else if (note.entered.empty() && last.starts_with("entered=") && instantIn(trimmed(last.substr(8))))
            note.entered = trimmed(last.substr(8));
        else
            break;
        detail = cut == std::string_view::npos ? std::string_view{} : detail.substr(0, cut);
    }
    note.text = detail;
    return note;
}

std::string noteDetail(const NoteDetail& note) {
    const auto with = [&note](std::string text) {
        if (!note.by.empty())
            appendPair(text, "by", note.by);
        if (!note.entered.empty())
            appendPair(text, "entered", note.entered);
        return text;
    };
    std::string plain = with(note.text);
    const NoteDetail back = noteIn(plain);
    if (back.text == note.text && back.by == note.by && back.entered == note.entered)
        return plain;
    std::string quoted;
    appendQuoted(quoted, note.text);
    return with(std::move(quoted));
}

} // namespace panside
