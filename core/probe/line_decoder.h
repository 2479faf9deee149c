#pragma once
// Probe lines from the bytes of a serial line: a pure state machine, no port, no clock. However the bytes are cut into
// pieces, the lines are the same; nothing is ever given that did not stand in a line.
#include "core/probe/line_fields.h"

#include <array>
#include <cstdint>
#include <functional>
#include <string>

namespace panside {

struct LineRules {
    std::optional<Encoding> encoding = {}; // nullopt: recognised from the first lines
    bool checksumDemanded = false;         // every line must end in *HH
    std::size_t leastColumns = 0;          // fewer are not the line that the columns were named after
};

// A line as it came. Views live until the sink returns.
struct ProbeLine {
    std::string_view text; // as sent, without its end, cut at longestLine; may hold any byte when refused
    Refusal refusal = Refusal::none;
    std::optional<Encoding> encoding = {};
    bool checksummed = false;
    std::span<const Field> fields = {}; // none when refused
};

// For people to look at: what is not ASCII as a point.
std::string withoutControls(std::string_view text);

struct LineCounts {
    std::uint64_t good = 0;
    std::array<std::uint64_t, refusalCount> refused{}; // by cause; the one of `none` stays 0
    std::array<std::string, refusalCount> sample{};    // the last line refused for it, what is not ASCII as a point
};

class LineDecoder {
public:
    static constexpr std::size_t longestLine = 4096; // bytes; more without a line end are one refused line
    using Sink = std::function<void(const ProbeLine&)>;

    explicit LineDecoder(LineRules rules = {});
    // Every line that ends in these bytes goes to the sink, good or refused. Empty lines are passed over.
    void feed(std::string_view bytes, const Sink& sink);
    // The port was opened anew: what is unfinished is forgotten, the shape of its lines is not. `midway`: the first
    // bytes may be the tail of a line.
    void restart(bool midway = true);

    const LineCounts& counts() const { return counts_; }
    std::optional<Encoding> encoding() const { return encoding_; }
    // Most of what comes is no text: the probe very likely speaks at another speed.
    bool looksLikeWrongSpeed() const;
    // Text comes, but no line ends: the probe ends its lines in CR alone, or not at all.
    bool looksUnended() const;

private:
    void finish(std::string_view raw, const Sink& sink);
    Refusal judge(std::string_view raw, ProbeLine& line);
    Refusal judgeFields(std::string_view text, ProbeLine& line);
    Refusal judgeShape(const ProbeLine& line);
    void refuse(ProbeLine& line, Refusal refusal);
    std::uint32_t remember(std::string_view bytes); // how many of them are no text

    LineRules rules_;
    std::optional<Encoding> encoding_;
    LineFields fields_;
    LineCounts counts_;
    std::string pending_;   // the beginning of a line whose end has not come
    bool overlong_ = false; // the line is refused already: wait for its end
    bool midway_ = true;
    int strays_ = 0;          // lines on end that were refused but are whole ones of another encoding
    std::size_t columns_ = 0; // of the last line believed
    std::size_t columnsSeen_ = 0;
    int alike_ = 0;                            // lines on end that were believed with so many columns
    std::uint32_t recent_ = 0, recentOdd_ = 0; // bytes of late, and those that are no text
};

} // namespace panside
