#pragma once
#include "core/boil/shift_log.h"

#include <cstdint>
#include <iosfwd>
#include <optional>
#include <string>

namespace panside {

// Reads a log piece by piece, cut between rows, so that a log of any length needs little memory. Rows are by time
// within a piece only.
class LogChunks {
public:
    explicit LogChunks(std::istream& log) : log_{log} {}
    // Faults and warnings carry the lines of the whole log. nullopt at the end.
    std::optional<ReadLog> next();
    std::uint64_t bytes() const { return bytes_; }

private:
    bool fill();
    std::istream& log_;
    std::string text_; // what is read and not yet given; after the first piece it begins with the header
    std::uint64_t bytes_ = 0;
    std::size_t linesBefore_ = 0;
    bool first_ = true;
};

} // namespace panside
