#pragma once
#include "core/boil/log_limits.h"
#include "core/journal/log_source.h"

#include <cstdint>
#include <istream>
#include <optional>
#include <string>

namespace panside {

// Reads a log piece by piece, cut between rows, so that a log of any length needs little memory. Rows are by time
// within a piece only.
class LogChunks : public LogSource {
public:
    explicit LogChunks(std::istream& log) : log_{log} {}
    std::optional<ReadLog> next() override;
    std::uint64_t bytes() const override { return bytes_; }
    bool broken() const override { return log_.bad(); }

private:
    bool fill();
    std::istream& log_;
    std::string text_; // what is read and not yet given; after the first piece it begins with the header
    std::uint64_t bytes_ = 0;
    std::size_t linesBefore_ = 0;
    bool first_ = true, any_ = false, ended_ = false; // any_: a row or a fault was met
    LogLimits limits_;                                // of all pieces together
};

} // namespace panside
