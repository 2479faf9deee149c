#pragma once
// The `detail` field of the shift log: key=value pairs separated by `;`. A value that holds a `;`, begins with a quote
// or has blanks at its ends is written in double quotes, those inside it doubled (as RFC 4180 does with a field).
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace panside {

class Detail {
public:
    // What could not be read as a pair, if anything.
    std::optional<std::string> read(std::string_view text);
    // The value of a key, which then counts as used; nullopt where there is none.
    std::optional<std::string> use(std::string_view key);
    // The pairs not taken, as they would be written.
    std::string rest() const;

private:
    struct Pair {
        std::string_view key;
        std::string value;
        bool taken = false;
    };
    std::vector<Pair> pairs_;
};

// Appends `key=value` to a detail text, with the `;` it needs.
void appendPair(std::string& detail, std::string_view key, std::string_view value);

// A note is free text that may end in `;by=` and `;entered=` (or be nothing but them).
struct NoteDetail {
    std::string text, by, entered;
};
NoteDetail noteIn(std::string_view detail);
std::string noteDetail(const NoteDetail& note);

} // namespace panside
