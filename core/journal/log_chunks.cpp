#include "core/journal/log_chunks.h"

#include <algorithm>

namespace panside {
namespace {

constexpr std::size_t chunkSize = 1U << 18;
// No row is as long as a piece: where none ends in one, it is over the limit, and all that was read is said to be.
static_assert(bytesARow < chunkSize);

// Where the last row that is whole ends (after its line end); npos: nowhere. A line end within quotes ends no row.
std::size_t lastRowEnd(const std::string& text) {
    if (text.find('"') == std::string::npos)
        return text.rfind('\n');
    std::size_t end = std::string::npos;
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        quoted ^= text[i] == '"';
        if (text[i] == '\n' && !quoted)
            end = i;
    }
    return end;
}

} // namespace

bool LogChunks::fill() {
    const auto before = text_.size();
    text_.resize(before + chunkSize);
    log_.read(text_.data() + before, chunkSize);
    const auto got = static_cast<std::size_t>(log_.gcount());
    text_.resize(before + got);
    bytes_ += got;
    return got == chunkSize;
}

std::optional<ReadLog> LogChunks::next() {
    if (ended_)
        return std::nullopt;
    std::string rest;
    if (log_ && fill()) {
        auto end = lastRowEnd(text_);
        if (end == std::string::npos) // a quote that never closes, or no line end at all
            end = text_.rfind('\n');
        if (end != std::string::npos) {
            rest = text_.substr(end + 1);
            text_.resize(end + 1);
        }
    }
    const bool last = !log_ && rest.empty();
    if (text_.empty() && !first_ && !last)
        return std::nullopt;
    const auto lines = static_cast<std::size_t>(std::ranges::count(text_, '\n'));
    if (!first_)
        text_.insert(0, "\n").insert(0, logHeader);
    ReadLog read = readLog(text_, limits_);
    const auto tooLong = [](const Fault& fault) { return fault.slip == Slip::rowLength; };
    ended_ = std::ranges::any_of(read.faults, tooLong);
    // A piece without a row is no fault as long as there is one in another.
    if (any_ || !last)
        std::erase_if(read.faults, [](const Fault& fault) { return fault.slip == Slip::empty; });
    any_ = any_ || !read.facts.empty() || !read.faults.empty();
    ended_ = ended_ || last;
    if (!first_) {
        for (auto* faults : {&read.faults, &read.warnings})
            for (Fault& fault : *faults)
                fault.line += fault.line == 0 ? 0 : linesBefore_ - 1;
        for (std::uint32_t& line : read.lines)
            line += static_cast<std::uint32_t>(linesBefore_ - 1);
    }
    linesBefore_ += lines;
    first_ = false;
    text_ = std::move(rest);
    return read;
}

} // namespace panside
