#pragma once
#include "core/boil/boil.h"

#include <span>
#include <stdexcept>
#include <vector>

namespace panside {

// Facts could not be kept: the disk is full, gone or read-only. What was to be kept is still in memory.
class NotKept : public std::runtime_error {
    using std::runtime_error::runtime_error;
};

// Where a session keeps its facts. The journal on disk is one; a rehearsal has none.
class Keeping {
public:
    Keeping() = default;
    Keeping(const Keeping&) = delete;
    Keeping& operator=(const Keeping&) = delete;
    virtual ~Keeping() = default;

    // What follows belongs to a new shift.
    virtual void beginShift() = 0;
    // On return all of them are on the disk, under these numbers. Throws NotKept; then none of them is.
    virtual std::vector<FactId> append(std::span<const Fact> facts) = 0;
    // On return the fact counts as never entered. Throws NotKept.
    virtual void withdraw(FactId id, Instant at) = 0;
};

} // namespace panside
