#include "core/probe/line_decoder.h"

#include "core/words/trimmed.h"

#include <algorithm>

namespace panside {
namespace {

constexpr int straysToSwitch = 3; // lines of another encoding on end before it is taken up
constexpr int alikeToSettle = 3;  // lines with as many columns on end: this is the port's shape from then on
constexpr std::size_t longForALine = 256;
constexpr std::uint32_t memory = 512; // bytes over which a wrong speed is judged
constexpr std::uint32_t leastToJudge = 32;

constexpr bool isOdd(char c) { return !((c >= 0x20 && c < 0x7F) || c == '\t'); }

std::uint32_t oddIn(std::string_view text) { return static_cast<std::uint32_t>(std::ranges::count_if(text, isOdd)); }

std::string printable(std::string_view text) {
    constexpr std::size_t enough = 80;
    std::string shown{text.substr(0, enough)};
    std::replace_if(shown.begin(), shown.end(), isOdd, '.');
    return shown;
}

int hexDigit(char c) {
    if (c >= '0' && c <= '9')
        return c - '0';
    const char lower = static_cast<char>(c | 0x20);
    return lower >= 'a' && lower <= 'f' ? lower - 'a' + 10 : -1;
}

enum class Checksum { absent, right, wrong };

// *HH at the end: the XOR of all characters before the star, as in NMEA 0183. Cuts it off when it is right.
Checksum takeChecksum(std::string_view& text) {
    if (text.empty() || text.back() == '}')
        return Checksum::absent; // a star inside a JSON string is none
    const auto star = text.rfind('*');
    if (star == std::string_view::npos)
        return Checksum::absent;
    if (text.size() - star != 3)
        return Checksum::wrong;
    const int high = hexDigit(text[star + 1]), low = hexDigit(text[star + 2]);
    unsigned char sum = 0;
    for (const char c : text.substr(0, star))
        sum = static_cast<unsigned char>(sum ^ static_cast<unsigned char>(c));
    if (high < 0 || low < 0 || sum != high * 16 + low)
        return Checksum::wrong;
    text = text.substr(0, star);
    return Checksum::right;
}

} // namespace

std::string withoutControls(std::string_view text) {
    std::string shown{text};
    std::ranges::replace_if(
        shown, [](char c) { return c < 0x20 || c == 0x7F; }, '.');
    return shown;
}

LineDecoder::LineDecoder(LineRules rules) : rules_{rules}, encoding_{rules.encoding} { pending_.reserve(longestLine); }

void LineDecoder::restart(bool midway) {
    pending_.clear();
    overlong_ = false;
    midway_ = midway;
    if (alike_ < alikeToSettle)
        columns_ = columnsSeen_ = 0;
    recent_ = recentOdd_ = 0;
}

void LineDecoder::feed(std::string_view bytes, const Sink& sink) {
    while (!bytes.empty()) {
        const auto end = bytes.find('\n');
        const auto piece = bytes.substr(0, end);
        if (end != std::string_view::npos && pending_.empty() && !overlong_ && piece.size() <= longestLine) {
            finish(piece, sink); // the usual case: the whole line is here, and nothing is copied
        } else {
            if (!overlong_) {
                const auto room = longestLine - pending_.size();
                pending_.append(piece.substr(0, room));
                if (piece.size() > room) {
                    overlong_ = true;
                    ProbeLine line{.text = pending_};
                    refuse(line, Refusal::tooLong);
                    sink(line);
                    pending_.clear();
                }
            }
            if (end != std::string_view::npos) {
                if (!overlong_)
                    finish(pending_, sink);
                pending_.clear();
                overlong_ = false;
            }
        }
        if (end == std::string_view::npos)
            return;
        bytes.remove_prefix(end + 1);
    }
}

void LineDecoder::finish(std::string_view raw, const Sink& sink) {
    while (!raw.empty() && raw.back() == '\r')
        raw.remove_suffix(1);
    if (raw.find_first_not_of(" \t") == std::string_view::npos) {
        midway_ = false; // an end was seen: the next line is whole
        return;
    }
    ProbeLine line{.text = raw};
    const Refusal refusal = judge(raw, line);
    midway_ = false;
    if (refusal != Refusal::none) {
        refuse(line, refusal);
    } else {
        ++counts_.good;
        line.fields = fields_.fields();
    }
    sink(line);
}

void LineDecoder::refuse(ProbeLine& line, Refusal refusal) {
    line.refusal = refusal;
    ++counts_.refused[static_cast<std::size_t>(refusal)];
    counts_.sample[static_cast<std::size_t>(refusal)] = printable(line.text);
    if (refusal == Refusal::tooLong)
        remember(line.text);
}

std::uint32_t LineDecoder::remember(std::string_view bytes) {
    const auto odd = oddIn(bytes);
    if (recent_ >= memory) {
        recent_ /= 2;
        recentOdd_ /= 2;
    }
    recent_ += static_cast<std::uint32_t>(bytes.size());
    recentOdd_ += odd;
    return odd;
}

Refusal LineDecoder::judge(std::string_view raw, ProbeLine& line) {
    if (remember(raw) > 0)
        return Refusal::notText;

    auto text = raw.substr(0, raw.find_last_not_of(" \t") + 1);
    switch (takeChecksum(text)) {
    case Checksum::wrong:
        return Refusal::checksumWrong;
    case Checksum::absent:
        if (rules_.checksumDemanded)
            return Refusal::checksumMissing;
        break;
    case Checksum::right:
        line.checksummed = true;
        break;
    }
    return judgeFields(trimmed(text), line);
}

Refusal LineDecoder::judgeFields(std::string_view text, ProbeLine& line) {
    if (!encoding_) {
        const auto recognised = LineFields::recognise(text);
        if (!recognised.encoding)
            return recognised.why;
        encoding_ = recognised.encoding;
    }
    auto refusal = fields_.split(text, *encoding_);
    // A greeting may have been taken for columns; lines that are surely of another kind put it right.
    if (refusal == Refusal::malformed && !rules_.encoding) {
        const auto other = LineFields::recognise(text).encoding;
        strays_ = other ? strays_ + 1 : 0;
        if (strays_ >= straysToSwitch) {
            encoding_ = other;
            columns_ = columnsSeen_ = 0;
            alike_ = 0;
            refusal = fields_.split(text, *encoding_);
        }
    }
    if (refusal != Refusal::none)
        return refusal;
    strays_ = 0;
    line.encoding = encoding_;
    return judgeShape(line);
}

// A line that lost its head still reads well: 3.42 of 103.42, pan=98 of flue_pan=98. So the first one after a port was
// opened into the middle of a line is not believed without a checksum; a JSON object shows by itself that it is whole.
// A column has no name either: it is believed when there are as many of them as in the last line believed, or the one
// before; and once the port's shape is settled, only then: a logger that leaves out a column of a probe that fell off
// moves all the others up.
Refusal LineDecoder::judgeShape(const ProbeLine& line) {
    if (line.encoding == Encoding::json)
        return Refusal::none;
    if (line.encoding == Encoding::pairs)
        return midway_ && !line.checksummed ? Refusal::cutOff : Refusal::none;
    const auto columns = fields_.fields().size();
    if (columns < rules_.leastColumns)
        return Refusal::otherShape;
    if (alike_ >= alikeToSettle) {
        if (columns != columns_)
            return Refusal::otherShape;
        return midway_ && !line.checksummed ? Refusal::cutOff : Refusal::none;
    }
    const bool like = columns == columns_ || columns == columnsSeen_;
    const bool first = columnsSeen_ == 0 && !midway_;
    columnsSeen_ = columns;
    if (!like && !first && !line.checksummed)
        return Refusal::cutOff;
    alike_ = columns == columns_ ? alike_ + 1 : 1;
    columns_ = columns;
    return Refusal::none;
}

bool LineDecoder::looksUnended() const {
    const auto returns = std::ranges::count(pending_, '\r');
    return !looksLikeWrongSpeed() && (overlong_ || pending_.size() >= longForALine || returns > 1);
}

bool LineDecoder::looksLikeWrongSpeed() const {
    const auto all = recent_ + static_cast<std::uint32_t>(pending_.size());
    const auto odd = recentOdd_ + oddIn(pending_);
    return all >= leastToJudge && odd * 5 > all;
}

} // namespace panside
