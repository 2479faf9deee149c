#include "core/words/sentence.h"

namespace panside {
namespace {

std::string listed(const std::vector<std::string>& words) {
    std::string list;
    for (std::size_t i = 0; i < words.size(); ++i)
        list += (i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + words[i];
    return list;
}

} // namespace

std::string filled(std::string_view text, const std::vector<std::string>& parts) {
    std::string whole;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const std::size_t part =
            text[i] == '%' && i + 1 < text.size() ? static_cast<std::size_t>(text[i + 1] - '1') : parts.size();
        if (part < parts.size()) {
            whole += parts[part];
            ++i;
        } else {
            whole += text[i];
        }
    }
    return whole;
}

std::string english(const Sentence& sentence) {
    std::vector<std::string> parts = sentence.oneOf ? std::vector{listed(sentence.parts)} : sentence.parts;
    for (const Sentence& inner : sentence.inner)
        parts.push_back(english(inner));
    return filled(sentence.text, parts);
}

} // namespace panside
