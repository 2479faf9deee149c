#pragma once
// Where an import reads from: a shift's facts piece by piece, so that a log of any length needs little memory.
#include "core/boil/shift_log.h"

#include <cstdint>
#include <optional>

namespace panside {

class LogSource {
public:
    LogSource() = default;
    LogSource(const LogSource&) = delete;
    LogSource& operator=(const LogSource&) = delete;
    virtual ~LogSource() = default;
    // Rows are by time within a piece only; faults and warnings carry the lines of the whole file. nullopt at the end.
    virtual std::optional<ReadLog> next() = 0;
    virtual std::uint64_t bytes() const = 0; // read so far
    // The file could not be read to its end: a stick was pulled, a disk failed. What came is only a part.
    virtual bool broken() const = 0;
};

} // namespace panside
