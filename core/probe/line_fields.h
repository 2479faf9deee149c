#pragma once
// One probe line, already freed of its end and its checksum, taken apart into its fields. Pure; nothing is allocated
// but for a name with a backslash in it.
#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace panside {

// The three ways in which probes write a line; the probe lines' contract stands in the manual.
enum class Encoding : std::uint8_t { columns, pairs, json };
std::string_view nameOf(Encoding encoding);

// Why a line is not believed. Data: refusalText() gives the English words.
enum class Refusal : std::uint8_t {
    none,
    tooLong, // no line end within longestLine bytes
    notText, // bytes that are no 7-bit ASCII text: noise, or a wrong speed
    checksumWrong,
    checksumMissing, // the probe file demands one
    malformed,       // not of the encoding
    unrecognised,    // of no encoding
    decimalComma,    // numbers with a comma: which comma separates cannot be told
    cutOff,          // no checksum, and its head or tail is missing, as far as can be told
    nameTwice,       // two fields of one name: two lines run together
    tooManyFields,
    otherShape // another number of columns than the port's lines had: which number is which cannot be told
};
inline constexpr std::size_t refusalCount = 12;
std::string_view refusalText(Refusal refusal);

// A channel as it stood in the line. Views live as long as the line.
struct Field {
    std::string_view name;        // of a pair or an object's member; empty in columns, which are counted from 1
    std::string_view text;        // what stood there, without quotes
    std::optional<double> number; // nullopt: empty, nan, a word, anything that is no number: no reading in this line
};

class LineFields {
public:
    static constexpr std::size_t most = 64;

    // Takes the line apart; Refusal::none, and fields() are those of the line, or why not.
    Refusal split(std::string_view line, Encoding encoding);
    struct Recognised {
        std::optional<Encoding> encoding; // the one that the line is surely of; nullopt for none,
        Refusal why;                      // and then this says why
    };
    static Recognised recognise(std::string_view line);
    std::span<const Field> fields() const { return {fields_.data(), count_}; }

private:
    Refusal columns(std::string_view line);
    Refusal pairs(std::string_view line);
    Refusal json(std::string_view line);
    Refusal splitAt(std::string_view line, char separator);
    Refusal splitAtBlanks(std::string_view line);
    Refusal add(std::string_view name, std::string_view text);
    Refusal addNamed(std::string_view name, std::string_view text);
    std::string_view unescaped(std::string_view raw);

    std::array<Field, most> fields_{};
    std::size_t count_ = 0;
    std::array<std::string, most> names_{}; // names that had a backslash, spelled out
    std::size_t namesUsed_ = 0;
};

} // namespace panside
