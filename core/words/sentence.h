#pragma once
// What a person is told, as data: an English text with %1, %2 ... and the parts that stand there. The command line says
// it as it is; a screen says the same in another language, by the text (ui/words/said.h).
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace panside {

struct Sentence {
    std::string_view text = {}; // a literal
    std::vector<std::string> parts = {};
    bool oneOf = false; // the parts are alternatives, and stand together at %1: "a, b or c"
    // Sentences that stand in it, after the parts: where there is one part, the first of them at %2.
    std::vector<Sentence> inner = {};
    bool operator==(const Sentence&) const = default;
};
// A literal that stands in `say` must be there in French (tests/ui/words/french_test.cpp).
inline Sentence say(std::string_view text, std::vector<std::string> parts = {}) { return {text, std::move(parts)}; }
inline Sentence sayWith(Sentence sentence, std::vector<Sentence> inner) {
    sentence.inner = std::move(inner);
    return sentence;
}
// Words that are the same in every language, as they stand in a file.
inline Sentence asWritten(std::string words) { return {"%1", {std::move(words)}}; }
inline Sentence sayOneOf(std::vector<std::string> words, std::string_view text = "%1") {
    return {text, std::move(words), true};
}

std::string english(const Sentence& sentence);
// A text with its parts in their places, all at one go: a part may itself contain a per cent sign and a digit.
std::string filled(std::string_view text, const std::vector<std::string>& parts);

} // namespace panside
